package coldwright.bench;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Several expressions tried in one snippet, for the compiler takes nearly as long over one line as
 * over twenty.
 *
 * <pre>{@code
 * Run run = ... bench.run(above, Together.snippet(List.of("heat", "heat > 10")), RunWatcher.NONE)
 * Together.read(run.printed()) // what each gave, in order
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
     * What one expression gave.
     *
     * @param threw whether it threw an exception instead
     * @param type the simple name of the type of what it gave; empty if it threw or gave null
     * @param text what it gave, every digit of it, on one line; or the exception's message
     */
    public record Evaluation(boolean threw, String type, String text) {}

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
     * @return what each gave, in order; fewer than were tried if the run ended before its end
     */
    public static List<Evaluation> read(String printed) {
        return printed.lines()
                .filter(line -> line.startsWith(MARK))
                .map(ExpressionEvaluator::given)
                .toList();
    }

    private static Evaluation given(String line) {
        int part = Math.max(line.indexOf(PART), MARK.length());
        String type = line.substring(MARK.length(), part);
        String text = line.substring(Math.min(part + 1, line.length()));
        return type.equals(THREW)
                ? new Evaluation(true, "", text)
                : new Evaluation(false, type, text);
    }
}
