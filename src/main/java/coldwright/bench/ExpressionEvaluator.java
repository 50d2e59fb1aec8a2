package coldwright.bench;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Several expressions tried in one snippet, for the compiler takes nearly as long over one line as
 * over twenty.
 *
 * <pre>{@code
 * String snippet = ExpressionEvaluator.snippet(List.of("heat", "heat > 10"));
 * bench.run(above, snippet, RunListener.NONE)
 *         .thenApply(run -> ExpressionEvaluator.read(run.printed())); // what each gave, in order
 * }</pre>
 *
 * <p>If one of them can't be compiled, none runs; try each by itself then.
 */
public final class ExpressionEvaluator {
    private static final String MARK = "\u0001";
    private static final char PART = '\u0002';
    private static final String THREW = "\u0003";

    private ExpressionEvaluator() {}

    /**
     * Java that prints what each expression gives. It uses nothing that might leave traces in the
     * bench's process, which would cost a new one.
     *
     * @param expressions Java expressions
     * @return one snippet
     */
    public static String snippet(List<String> expressions) {
        return expressions.stream()
                .map(ExpressionEvaluator::describe)
                .collect(Collectors.joining("", "{\n", "}"));
    }

    private static String describe(String expression) {
        return """
                try {
                    Object given_ = (%s
                    );
                    System.out.println("\\n\\u0001"
                            + (given_ == null ? "" : given_.getClass().getSimpleName())
                            + "\\u0002" + String.valueOf(given_).replace('\\n', ' '));
                } catch (Exception failed_) {
                    System.out.println("\\n\\u0001\\u0003\\u0002"
                            + String.valueOf(((Throwable) failed_).getMessage()).replace('\\n', ' '));
                }
                """
                .replace("%s", expression);
    }

    /**
     * Reads what such a snippet printed. What the expressions print themselves is passed over.
     *
     * @param printed all of it
     * @return for each, in order, what it gave, on one line and with the simple name of its type,
     *     or the message of what it threw; fewer than were tried if the run ended before its end
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
