package coldwright.bench.complete;

import coldwright.bench.compile.MaskedSource;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A function after {@code ->} that is still being written. Java loses sight of its parameter within
 * a call that is not closed yet, so the beginning of that call is left away.
 */
final class UnfinishedLambda {
    private static final Pattern PARAMETERS =
            Pattern.compile("(?:\\(([^()]*)\\)|([\\p{L}_$][\\p{L}\\p{N}_$]*))\\s*->");

    private UnfinishedLambda() {}

    /**
     * The parameters of all lambdas that are still being written.
     *
     * @param statement the beginning of a statement
     * @return their names, outermost first
     */
    static List<String> parameters(String statement) {
        String masked = MaskedSource.of(statement);
        List<Integer> open = MaskedSource.openBrackets(masked);
        List<String> names = new ArrayList<>();
        Matcher lambda = PARAMETERS.matcher(masked);
        while (lambda.find()) {
            if (MaskedSource.openBrackets(masked.substring(0, lambda.start()))
                    .equals(before(lambda.start(), open))) {
                String all = lambda.group(1) == null ? lambda.group(2) : lambda.group(1);
                for (String one : all.split(",")) {
                    names.add(one.strip().replaceFirst("^.*\\s", ""));
                }
            }
        }
        names.removeIf(String::isEmpty);
        return names;
    }

    /**
     * Leaves away the calls within a lambda that are still open.
     *
     * @param statement the beginning of a statement
     * @return the beginning without them; empty if there is no such lambda or no such call
     */
    static Optional<String> withoutOpenCalls(String statement) {
        String masked = MaskedSource.of(statement);
        List<Integer> open = MaskedSource.openBrackets(masked);
        if (open.isEmpty() || masked.charAt(open.get(open.size() - 1)) != '(') {
            return Optional.empty();
        }
        int call = open.get(open.size() - 1);
        int arrow = masked.lastIndexOf("->", call);
        if (arrow < 0
                || !MaskedSource.openBrackets(masked.substring(0, arrow))
                        .equals(before(arrow, open))) {
            return Optional.empty();
        }
        int start =
                IntStream.of(
                                arrow + 2,
                                masked.lastIndexOf(';', call) + 1,
                                masked.lastIndexOf('{', call) + 1,
                                masked.lastIndexOf('}', call) + 1)
                        .max()
                        .getAsInt();
        int end = afterLastComma(masked, call + 1);
        return Optional.of(statement.substring(0, start) + " " + statement.substring(end).strip());
    }

    private static List<Integer> before(int place, List<Integer> open) {
        return open.stream().filter(one -> one < place).toList();
    }

    private static int afterLastComma(String masked, int from) {
        int depth = 0;
        int last = from;
        for (int i = from; i < masked.length(); i++) {
            depth += "([{".indexOf(masked.charAt(i)) >= 0 ? 1 : 0;
            depth -= ")]}".indexOf(masked.charAt(i)) >= 0 ? 1 : 0;
            if (depth == 0 && masked.charAt(i) == ',') {
                last = i + 1;
            }
        }
        return last;
    }
}
