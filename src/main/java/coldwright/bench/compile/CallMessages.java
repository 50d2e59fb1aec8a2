package coldwright.bench.compile;

import coldwright.source.JavaSource;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Messages for calls with unsuitable arguments. */
final class CallMessages {
    private static final Pattern REQUIRED = Pattern.compile("required:\\s*(.+)");
    private static final Pattern FOUND = Pattern.compile("found:\\s*(.+)");
    private static final Pattern FOUND_FOR =
            Pattern.compile("no suitable \\w+ found for [\\w$]+\\((.*)\\)");
    private static final Pattern CANDIDATE =
            Pattern.compile("(?:method|constructor) \\S*?\\((\\S*)\\) is not applicable");
    private static final Pattern DECIMAL_COMMA =
            Pattern.compile("(?<![\\w.,])(\\d+,\\d+)(?![\\w.]|,\\d)");
    private static final Pattern TWO_VALUES =
            Pattern.compile("\\A\\s*([^,()]+),\\s*(-?\\d[\\d.]*)\\s*\\)");
    private static final Pattern CALLED = Pattern.compile("([\\p{L}_$][\\w$]*)\\s*\\(\\s*$");
    private static final Set<String> NUMBERS = Set.of("double", "int", "long", "float");
    private static final int MOST_WAYS = 3;
    private static final Set<String> CODES = Set.of("cant.apply.symbol", "cant.apply.symbols");

    private CallMessages() {}

    static Optional<CompileProblem> of(CompilerDiagnostic compilerDiagnostic) {
        if (CODES.contains(compilerDiagnostic.code())) {
            return Optional.of(
                    decimalComma(compilerDiagnostic)
                            .orElseGet(
                                    () ->
                                            compilerDiagnostic.complaint(
                                                    compilerDiagnostic
                                                                    .code()
                                                                    .equals("cant.apply.symbol")
                                                            ? oneWay(compilerDiagnostic)
                                                            : severalWays(compilerDiagnostic))));
        }
        return swapped(compilerDiagnostic);
    }

    /** A decimal comma makes two arguments of one number. */
    private static Optional<CompileProblem> decimalComma(CompilerDiagnostic compilerDiagnostic) {
        String statement = JavaSource.of(compilerDiagnostic.statement()).masked();
        int from = compilerDiagnostic.end() - compilerDiagnostic.statementStart();
        Matcher comma = DECIMAL_COMMA.matcher(statement);
        return comma.find(Math.min(from, statement.length()))
                ? Optional.of(
                        compilerDiagnostic.complaint(
                                TypoMessages.decimalPoint(comma.group(1)),
                                comma.start(1),
                                comma.end(1)))
                : Optional.empty();
    }

    /** An object in place of a number, followed by the number. */
    private static Optional<CompileProblem> swapped(CompilerDiagnostic compilerDiagnostic) {
        Matcher called = CALLED.matcher(compilerDiagnostic.before());
        String rest = compilerDiagnostic.text().substring(compilerDiagnostic.start());
        Matcher values = TWO_VALUES.matcher(rest);
        boolean needsNumber =
                NUMBERS.stream()
                        .anyMatch(
                                type ->
                                        compilerDiagnostic
                                                .firstLine()
                                                .endsWith("cannot be converted to " + type));
        if (!needsNumber || !called.find() || !values.find()) {
            return Optional.empty();
        }
        return Optional.of(
                compilerDiagnostic.complaint(
                        "`%s` takes these two in the other order: `%s(%s, %s)`"
                                .formatted(
                                        called.group(1),
                                        called.group(1),
                                        values.group(2),
                                        values.group(1).strip())));
    }

    private static String oneWay(CompilerDiagnostic compilerDiagnostic) {
        String required = compilerDiagnostic.inMessage(REQUIRED, 1);
        String found = compilerDiagnostic.inMessage(FOUND, 1);
        if (compilerDiagnostic.message().contains("varargs mismatch")) {
            return "`%s` takes as many %s as you like, but not %s"
                    .formatted(
                            compilerDiagnostic.lastName(),
                            SemanticMessages.simple(required).replace("[]", ""),
                            values(found));
        }
        if (found.equals("no arguments")) {
            return "`%s` takes %s, but nothing stands between its brackets"
                    .formatted(compilerDiagnostic.lastName(), values(required));
        }
        return "`%s` takes %s, not %s"
                .formatted(compilerDiagnostic.lastName(), values(required), values(found));
    }

    private static String severalWays(CompilerDiagnostic compilerDiagnostic) {
        Set<String> ways = new LinkedHashSet<>();
        Matcher candidate = CANDIDATE.matcher(compilerDiagnostic.message());
        while (candidate.find()) {
            ways.add("(" + types(candidate.group(1)) + ")");
        }
        String found = compilerDiagnostic.inMessage(FOUND_FOR, 1);
        if (ways.isEmpty() || ways.size() > MOST_WAYS || found.isEmpty()) {
            return "`%s` can't be called with these values; check how many there are and of what kind"
                    .formatted(compilerDiagnostic.lastName());
        }
        return "`%s` takes %s, not (%s)"
                .formatted(compilerDiagnostic.lastName(), String.join(" or ", ways), types(found));
    }

    private static String types(String list) {
        if (list.equals("no arguments")) {
            return "";
        }
        List<String> types = new ArrayList<>();
        for (String one : list.split(",(?![^<]*>)")) {
            types.add(SemanticMessages.simple(one.strip()).replace("...", "…"));
        }
        return String.join(", ", types);
    }

    private static String values(String list) {
        if (list.isEmpty() || list.equals("no arguments")) {
            return "nothing between its brackets";
        }
        int count = list.split(",(?![^<]*>)").length;
        return "%d %s (%s)".formatted(count, count == 1 ? "value" : "values", types(list));
    }
}
