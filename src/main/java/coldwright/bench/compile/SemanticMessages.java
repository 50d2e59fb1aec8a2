package coldwright.bench.compile;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Messages for text that is valid Java syntax but has the wrong meaning. */
final class SemanticMessages {
    private static final Pattern CONVERTED =
            Pattern.compile("(\\S+) cannot be converted to (\\S+)");
    private static final Pattern LOSSY = Pattern.compile("lossy conversion from (\\S+) to (\\S+)");
    private static final Pattern FOUND = Pattern.compile("found:\\s*(.+)");
    private static final Pattern FIRST_TYPE = Pattern.compile("first type:\\s*(\\S+)");
    private static final Pattern SECOND_TYPE = Pattern.compile("second type:\\s*(\\S+)");
    private static final Pattern OPERATOR = Pattern.compile("operator '([^']+)'");
    private static final Pattern VARIABLE = Pattern.compile("variable (\\S+)");
    private static final Pattern EXCEPTION = Pattern.compile("exception (\\S+?);");
    private static final Pattern MADE = Pattern.compile("new\\s+([\\w.]+)");
    private static final Pattern PUT_INTO =
            Pattern.compile("(?:^|[^=!<>])\\b([\\p{L}_$][\\w$]*)\\s*=\\s*[^=]*$", Pattern.DOTALL);
    private static final Pattern CALLED = Pattern.compile("([\\p{L}_$][\\w$]*)\\s*\\([^()]*$");
    private static final Set<String> PRINTS = Set.of("print", "println", "printf");

    private SemanticMessages() {}

    static Optional<String> of(CompilerDiagnostic error, SimilarNames near) {
        return switch (error.code()) {
            case "cant.resolve", "cant.resolve.location" ->
                    Optional.of(unknown(error.lastName(), error.owner(), false, near));
            case "cant.resolve.args",
                    "cant.resolve.location.args",
                    "cant.resolve.location.args.params" ->
                    Optional.of(unknown(error.lastName(), error.owner(), true, near));
            case "doesnt.exist" -> Optional.of(noPackage(error, near));
            case "prob.found.req", "incompatible.types" -> Optional.of(wrongType(error));
            case "operator.cant.be.applied", "operator.cant.be.applied.1", "incomparable.types" ->
                    Optional.of(operator(error));
            case "already.defined" -> text("already-defined", error.inMessage(VARIABLE, 1));
            case "cant.deref" -> text("type.primitive", error.owner());
            case "unreported.exception.need.to.catch.or.throw" ->
                    text("exception", simple(error.inMessage(EXCEPTION, 1)));
            case "abstract.cant.be.instantiated" -> text("type.abstract", madeWithNew(error));
            case "type.found.req", "unexpected.type" -> Optional.of(unexpected(error));
            default ->
                    ErrorText.has("error." + error.code())
                            ? text("error." + error.code(), error.source(), error.lastName())
                            : Optional.empty();
        };
    }

    private static Optional<String> text(String key, Object... values) {
        return Optional.of(ErrorText.of(key, values));
    }

    /** A name that nothing declares. */
    static String unknown(String name, String owner, boolean method, SimilarNames near) {
        String call = name + (method ? "()" : "");
        if (method && owner.isEmpty() && PRINTS.contains(name)) {
            return ErrorText.of("symbol.near", call, "System.out." + call);
        }
        if (method && near.isType(name, owner)) {
            return ErrorText.of("symbol.type", name);
        }
        Optional<String> parentheses =
                method || owner.isEmpty() ? Optional.empty() : near.parentheses(name, owner);
        if (parentheses.isPresent()) {
            String called = owner + "." + name + parentheses.get();
            return parentheses.get().equals("()")
                    ? ErrorText.of("method.parentheses", name, called)
                    : ErrorText.of("method.reference", name, called, owner);
        }
        Optional<String> nearest =
                near.nearestTo(name, owner).map(one -> method ? one + "()" : one);
        if (owner.isEmpty()) {
            return nearest.map(one -> ErrorText.of("symbol.near", call, one))
                    .orElseGet(() -> ErrorText.of("symbol", call));
        }
        return nearest.map(one -> ErrorText.of("member.near", owner, call, one))
                .orElseGet(() -> ErrorText.of("member", owner, call));
    }

    private static String noPackage(CompilerDiagnostic error, SimilarNames near) {
        String name = error.owner().isEmpty() ? error.lastName() : error.owner();
        return error.before().strip().startsWith("import")
                ? ErrorText.of("import", error.source().strip())
                : unknown(name, "", false, near);
    }

    private static String wrongType(CompilerDiagnostic error) {
        if (error.message().contains("unexpected return value")) {
            return ErrorText.of("type.void");
        }
        if (error.message().contains("missing return value")) {
            return ErrorText.of("type.return");
        }
        String lossyTo = error.inMessage(LOSSY, 2);
        String from = lossyTo.isEmpty() ? error.inMessage(CONVERTED, 1) : error.inMessage(LOSSY, 1);
        String to = lossyTo.isEmpty() ? error.inMessage(CONVERTED, 2) : lossyTo;
        if (to.isEmpty()) {
            return ErrorText.of("type.other", error.firstLine());
        }
        if (to.equals("boolean") && error.source().matches("(?s)[^=]*[^=!<>]=[^=].*")) {
            return ErrorText.of("type.assign");
        }
        Matcher called = CALLED.matcher(error.before());
        if (called.find()) {
            return ErrorText.of("type.argument", called.group(1), kind(to), kind(from));
        }
        Matcher into = PUT_INTO.matcher(error.before());
        String given = lossyTo.isEmpty() ? kind(from) : ErrorText.of("kind.decimals");
        return into.find()
                ? ErrorText.of("type.variable", into.group(1), kind(to), given)
                : ErrorText.of("type.needed", kind(to), given);
    }

    private static String operator(CompilerDiagnostic error) {
        String symbol = error.inMessage(OPERATOR, 1);
        String first = error.inMessage(FIRST_TYPE, 1);
        String second = error.inMessage(SECOND_TYPE, 1);
        if (second.isEmpty()) {
            return ErrorText.of("type.compare");
        }
        return first.equals("boolean") && symbol.matches("[<>]=?")
                ? ErrorText.of("type.chain")
                : ErrorText.of("type.operator", symbol, kind(first), kind(second));
    }

    private static String unexpected(CompilerDiagnostic error) {
        if (error.before().endsWith("<") || error.before().endsWith(", ")) {
            return ErrorText.of("type.generic");
        }
        String found = error.inMessage(FOUND, 1);
        return ErrorText.of("type.unexpected", found.isEmpty() ? "value" : found);
    }

    private static String madeWithNew(CompilerDiagnostic error) {
        Matcher made = MADE.matcher(error.source());
        return made.find() ? made.group(1) : error.lastName();
    }

    private static String kind(String type) {
        return ErrorText.or("kind." + simple(type), "kind.other", simple(type));
    }

    static String simple(String type) {
        return type.replaceAll("[\\w.]+\\.(?=\\w)", "");
    }
}
