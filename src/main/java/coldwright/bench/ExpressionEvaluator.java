package coldwright.bench;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Evaluates several expressions in one snippet, because compiling one line takes nearly as long as
 * twenty.
 *
 * <pre>{@code
 * String snippet = ExpressionEvaluator.snippet(List.of("heat", "heat > 10"));
 * bench.run(above, snippet, RunListener.NONE)
 *         .thenApply(run -> ExpressionEvaluator.read(run.printed())); // each result, in order
 * }</pre>
 *
 * <p>If one of them doesn't compile, none runs; then try each separately.
 */
public final class ExpressionEvaluator {
    private static final String MARK = "\u0001";
    private static final char PART = '\u0002';
    private static final String THREW = "\u0003";

    private ExpressionEvaluator() {}

    /**
     * Java that prints the value of each expression. It leaves no traces in the bench's process,
     * because those would cost a new process.
     */
    public static String snippet(List<String> expressions) {
        String results = "{\nObject[] all_ = new Object[" + expressions.size() + "];\n";
        return IntStream.range(0, expressions.size())
                .mapToObj(i -> describe(i, expressions.get(i)))
                .collect(Collectors.joining("", results, "}"));
    }

    /** An expression that is evaluated only if an earlier one, by its index, was false. */
    public static String ifFalse(int index, String expression) {
        return "Boolean.FALSE.equals(all_[" + index + "]) ? (Object) (" + expression + "\n) : null";
    }

    private static String describe(int index, String expression) {
        return """
                try {
                    Object given_ = all_[%i] = (%s
                    );
                    System.out.println("\\n\\u0001"
                            + (given_ == null ? "" : given_.getClass().getSimpleName())
                            + "\\u0002" + String.valueOf(given_).replace('\\n', ' '));
                } catch (Exception failed_) {
                    System.out.println("\\n\\u0001\\u0003\\u0002"
                            + String.valueOf(((Throwable) failed_).getMessage()).replace('\\n', ' '));
                }
                """
                .replace("%i", String.valueOf(index))
                .replace("%s", expression);
    }

    /**
     * Reads the output of such a snippet and ignores anything the expressions print themselves.
     *
     * @return the results in order: value on one line and simple type name, or the exception's
     *     message; fewer than the expressions if the run ended early
     */
    public static List<RunOutcome> read(String printed) {
        return printed.lines()
                .filter(line -> line.startsWith(MARK))
                .map(ExpressionEvaluator::given)
                .toList();
    }

    private static RunOutcome given(String line) {
        int part = Math.max(line.indexOf(PART), MARK.length());
        String type = line.substring(MARK.length(), part);
        String text = line.substring(Math.min(part + 1, line.length()));
        return type.equals(THREW)
                ? new RunOutcome.Threw(new SnippetProblem(0, 0, 0, text, ""))
                : new RunOutcome.Finished(text, type);
    }
}
