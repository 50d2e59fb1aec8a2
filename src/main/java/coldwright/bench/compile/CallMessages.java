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
    private static final Pattern NUMBER_NEEDED =
            Pattern.compile("cannot be converted to (?:double|int|long|float)$");
    private static final String NO_ARGUMENTS = "no arguments";
    private static final String COMMA = ",(?![^<]*>)";
    private static final int MOST_WAYS = 3;

    private CallMessages() {}

    static Optional<CompileProblem> of(CompilerDiagnostic error) {
        return switch (error.code()) {
            case "cant.apply.symbol" ->
                    decimalComma(error).or(() -> Optional.of(error.complaint(oneWay(error))));
            case "cant.apply.symbols" ->
                    decimalComma(error).or(() -> Optional.of(error.complaint(severalWays(error))));
            default -> swapped(error);
        };
    }

    /** A decimal comma makes two arguments of one number. */
    private static Optional<CompileProblem> decimalComma(CompilerDiagnostic error) {
        String statement = JavaSource.of(error.statement()).masked();
        int from = error.end() - error.statementStart();
        Matcher comma = DECIMAL_COMMA.matcher(statement);
        return comma.find(Math.min(from, statement.length()))
                ? Optional.of(
                        error.complaint(
                                TypoMessages.decimalPoint(comma.group(1)),
                                comma.start(1),
                                comma.end(1)))
                : Optional.empty();
    }

    /** An object in place of a number, followed by the number. */
    private static Optional<CompileProblem> swapped(CompilerDiagnostic error) {
        Matcher called = CALLED.matcher(error.before());
        Matcher values = TWO_VALUES.matcher(error.text().substring(error.start()));
        return NUMBER_NEEDED.matcher(error.firstLine()).find() && called.find() && values.find()
                ? Optional.of(
                        error.complaint(
                                ErrorText.of(
                                        "call.swapped",
                                        called.group(1),
                                        values.group(2),
                                        values.group(1).strip())))
                : Optional.empty();
    }

    private static String oneWay(CompilerDiagnostic error) {
        String required = error.inMessage(REQUIRED, 1);
        String found = error.inMessage(FOUND, 1);
        if (error.message().contains("varargs mismatch")) {
            String type = SemanticMessages.simple(required).replace("[]", "");
            return ErrorText.of("call.many", error.lastName(), type, values(found));
        }
        return found.equals(NO_ARGUMENTS)
                ? ErrorText.of("call.none", error.lastName(), values(required))
                : ErrorText.of("call.one", error.lastName(), values(required), values(found));
    }

    private static String severalWays(CompilerDiagnostic error) {
        Set<String> ways = new LinkedHashSet<>();
        Matcher candidate = CANDIDATE.matcher(error.message());
        while (candidate.find()) {
            ways.add("(" + types(candidate.group(1)) + ")");
        }
        String found = error.inMessage(FOUND_FOR, 1);
        if (ways.isEmpty() || ways.size() > MOST_WAYS || found.isEmpty()) {
            return ErrorText.of("call.wrong", error.lastName());
        }
        String all = String.join(ErrorText.of("call.or"), ways);
        return ErrorText.of("call.ways", error.lastName(), all, types(found));
    }

    private static String types(String list) {
        if (list.equals(NO_ARGUMENTS)) {
            return "";
        }
        List<String> types = new ArrayList<>();
        for (String one : list.split(COMMA)) {
            types.add(SemanticMessages.simple(one.strip()).replace("...", "…"));
        }
        return String.join(", ", types);
    }

    private static String values(String list) {
        if (list.isEmpty() || list.equals(NO_ARGUMENTS)) {
            return ErrorText.of("call.no-values");
        }
        int count = list.split(COMMA).length;
        return count == 1
                ? ErrorText.of("call.value", types(list))
                : ErrorText.of("call.values", count, types(list));
    }
}
