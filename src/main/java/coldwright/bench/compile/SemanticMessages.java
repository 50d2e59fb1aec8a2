package coldwright.bench.compile;

import java.util.Map;
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
    private static final Pattern PUT_INTO =
            Pattern.compile("(?:^|[^=!<>])\\b([\\p{L}_$][\\w$]*)\\s*=\\s*[^=]*$", Pattern.DOTALL);
    private static final Pattern CALLED = Pattern.compile("([\\p{L}_$][\\w$]*)\\s*\\([^()]*$");
    private static final Map<String, String> KINDS =
            Map.ofEntries(
                    Map.entry("String", "text"),
                    Map.entry("double", "a number"),
                    Map.entry("float", "a number"),
                    Map.entry("Double", "a number"),
                    Map.entry("int", "a whole number"),
                    Map.entry("long", "a whole number"),
                    Map.entry("Integer", "a whole number"),
                    Map.entry("DoubleUnaryOperator", "a function like `x -> 2 * x`"),
                    Map.entry("boolean", "true or false"),
                    Map.entry("Boolean", "true or false"),
                    Map.entry("char", "one character"));
    private static final Set<String> PRINTS = Set.of("print", "println", "printf");
    private static final Map<String, String> PLURALS =
            Map.of(
                    "a number", "numbers",
                    "a whole number", "whole numbers",
                    "one character", "single characters");

    private SemanticMessages() {}

    static Optional<String> of(CompilerDiagnostic compilerDiagnostic, SimilarNames near) {
        switch (compilerDiagnostic.code()) {
            case "cant.resolve":
            case "cant.resolve.location":
                return Optional.of(
                        unknown(
                                compilerDiagnostic.lastName(),
                                compilerDiagnostic.owner(),
                                false,
                                near));
            case "cant.resolve.args":
            case "cant.resolve.location.args":
            case "cant.resolve.location.args.params":
                return Optional.of(
                        unknown(
                                compilerDiagnostic.lastName(),
                                compilerDiagnostic.owner(),
                                true,
                                near));
            case "doesnt.exist":
                return Optional.of(noPackage(compilerDiagnostic, near));
            case "prob.found.req":
            case "incompatible.types":
                return Optional.of(wrongKind(compilerDiagnostic));
            case "operator.cant.be.applied":
            case "operator.cant.be.applied.1":
            case "incomparable.types":
                return Optional.of(operator(compilerDiagnostic));
            case "missing.ret.stmt":
                return Optional.of(
                        "this method promises a value but can end without `return`; add one at its end");
            case "already.defined":
                return Optional.of(
                        "`%s` is declared twice; leave the type away to change it, or take another name"
                                .formatted(compilerDiagnostic.inMessage(VARIABLE, 1)));
            case "var.might.not.have.been.initialized":
                return Optional.of(
                        "`%s` has no value yet; give it one where it is declared"
                                .formatted(compilerDiagnostic.lastName()));
            case "cant.deref":
                return Optional.of(cantDeref(compilerDiagnostic));
            case "array.req.but.found":
                return Optional.of("`[…]` works on arrays only; this is none");
            case "unreported.exception.need.to.catch.or.throw":
                return Optional.of(
                        "this may fail with %s; put it into `try { … } catch (Exception e) { … }`"
                                .formatted(simple(compilerDiagnostic.inMessage(EXCEPTION, 1))));
            case "cant.ref.non.effectively.final.var":
                return Optional.of(
                        "`%s` changes, so a function after `->` can't use it; copy it into a new variable first"
                                .formatted(compilerDiagnostic.lastName()));
            case "cant.infer.local.var.type":
                return Optional.of(
                        "`var` needs a value to know the type from; write `var name = …;`");
            case "abstract.cant.be.instantiated":
                return Optional.of(
                        "`%s` can't be made with `new`; it only says what others can do"
                                .formatted(madeWithNew(compilerDiagnostic)));
            case "cant.assign.val.to.var":
            case "cant.assign.val.to.final.var":
                return Optional.of(
                        "`%s` is fixed and can't be changed; take a name of your own"
                                .formatted(compilerDiagnostic.lastName()));
            case "break.outside.switch.loop":
            case "cont.outside.loop":
                return Optional.of("this works only within a loop");
            case "report.access":
                return Optional.of(
                        "`%s` is not for use from outside"
                                .formatted(compilerDiagnostic.lastName()));
            case "type.found.req":
            case "unexpected.type":
                return Optional.of(unexpected(compilerDiagnostic));
            case "void.not.allowed.here":
            case "illegal.initializer.for.type":
                return Optional.of("this gives no value that could be used here");
            case "ret.outside.meth":
                return Optional.of("`return` works only within a method");
            case "unreachable.stmt":
                return Optional.of("this is never reached; take it out or move it up");
            default:
                return Optional.empty();
        }
    }

    /** A name that nothing declares. */
    static String unknown(String name, String owner, boolean method, SimilarNames near) {
        String call = method ? "()" : "";
        if (method && owner.isEmpty() && PRINTS.contains(name)) {
            return "`%s()` is not known here; did you mean `System.out.%s()`?"
                    .formatted(name, name);
        }
        if (method && near.isType(name, owner)) {
            return "`%s` is a type and can't be called; look what stands after `%s.`, or write `new %s(…)`"
                    .formatted(name, name, name);
        }
        Optional<String> brackets =
                method || owner.isEmpty() ? Optional.empty() : near.brackets(name, owner);
        if (brackets.isPresent()) {
            String called = owner + "." + name + brackets.get();
            return brackets.get().equals("()")
                    ? "`%s` is called with brackets: `%s`".formatted(name, called)
                    : "`%s` is called with brackets, `%s`; to hand it over, write `%s::%s`"
                            .formatted(name, called, owner, name);
        }
        Optional<String> nearest = near.nearestTo(name, owner);
        String what =
                owner.isEmpty()
                        ? "`%s%s` is not known here".formatted(name, call)
                        : "`%s` has no `%s%s`".formatted(owner, name, call);
        if (nearest.isPresent()) {
            return what + "; did you mean `" + nearest.get() + call + "`?";
        }
        return owner.isEmpty()
                ? what + "; is it spelled right, and declared above?"
                : what + "; is it spelled right?";
    }

    private static String noPackage(CompilerDiagnostic compilerDiagnostic, SimilarNames near) {
        String name =
                compilerDiagnostic.owner().isEmpty()
                        ? compilerDiagnostic.lastName()
                        : compilerDiagnostic.owner();
        if (compilerDiagnostic.before().strip().startsWith("import")) {
            return "there is nothing called `%s` to import"
                    .formatted(compilerDiagnostic.source().strip());
        }
        return unknown(name, "", false, near);
    }

    private static String wrongKind(CompilerDiagnostic compilerDiagnostic) {
        if (compilerDiagnostic.message().contains("unexpected return value")) {
            return "a `void` method gives no value back; name its type instead of `void`";
        }
        if (compilerDiagnostic.message().contains("missing return value")) {
            return "`return` lacks its value";
        }
        String lossyTo = compilerDiagnostic.inMessage(LOSSY, 2);
        String from =
                lossyTo.isEmpty()
                        ? compilerDiagnostic.inMessage(CONVERTED, 1)
                        : compilerDiagnostic.inMessage(LOSSY, 1);
        String to = lossyTo.isEmpty() ? compilerDiagnostic.inMessage(CONVERTED, 2) : lossyTo;
        if (to.isEmpty()) {
            return "this is of another kind than is needed here: " + compilerDiagnostic.firstLine();
        }
        if (to.equals("boolean")
                && compilerDiagnostic.source().matches("(?s)[^=]*[^=!<>]=[^=].*")) {
            return "a single `=` puts a value in; to compare, write `==`";
        }
        Matcher called = CALLED.matcher(compilerDiagnostic.before());
        if (called.find()) {
            return "`%s` needs %s here, not %s".formatted(called.group(1), kind(to), kind(from));
        }
        Matcher into = PUT_INTO.matcher(compilerDiagnostic.before());
        String what = lossyTo.isEmpty() ? kind(from) : "a number with decimals";
        if (into.find()) {
            return "%s can't be put into `%s`, which holds %s"
                    .formatted(what, into.group(1), plural(to));
        }
        return "%s is needed here, not %s".formatted(kind(to), what);
    }

    private static String operator(CompilerDiagnostic compilerDiagnostic) {
        String sign = compilerDiagnostic.inMessage(OPERATOR, 1);
        String first = compilerDiagnostic.inMessage(FIRST_TYPE, 1);
        String second = compilerDiagnostic.inMessage(SECOND_TYPE, 1);
        if (second.isEmpty()) {
            return "these two can't be compared: they are of different kinds";
        }
        if (first.equals("boolean") && sign.matches("[<>]=?")) {
            return "two comparisons are joined with `&&`: `a < b && b < c`";
        }
        return "`%s` does not work between %s and %s".formatted(sign, kind(first), kind(second));
    }

    private static String cantDeref(CompilerDiagnostic compilerDiagnostic) {
        String owner = compilerDiagnostic.owner();
        return "`%s` is a plain number; nothing can stand after it with a point".formatted(owner);
    }

    private static String unexpected(CompilerDiagnostic compilerDiagnostic) {
        String found = compilerDiagnostic.inMessage(FOUND, 1);
        if (compilerDiagnostic.before().endsWith("<")
                || compilerDiagnostic.before().endsWith(", ")) {
            return "between `<` and `>` stands a class: `Double` for `double`, `Integer` for `int`";
        }
        return "a variable is needed here, not a %s".formatted(found.isEmpty() ? "value" : found);
    }

    private static String madeWithNew(CompilerDiagnostic compilerDiagnostic) {
        Matcher made = Pattern.compile("new\\s+([\\w.]+)").matcher(compilerDiagnostic.source());
        return made.find() ? made.group(1) : compilerDiagnostic.lastName();
    }

    private static String kind(String type) {
        String simple = simple(type);
        return KINDS.getOrDefault(simple, (simple.matches("[AEIOaeio].*") ? "an " : "a ") + simple);
    }

    private static String plural(String type) {
        String kind = kind(type);
        return PLURALS.getOrDefault(kind, kind);
    }

    static String simple(String type) {
        return type.replaceAll("[\\w.]+\\.(?=\\w)", "");
    }
}
