package coldwright.print;

import coldwright.figure.Exhibit;
import coldwright.text.DisplayText;

import java.util.List;
import java.util.Optional;

/**
 * What a snippet gave when it was run.
 *
 * @param printed what it printed
 * @param value what its last expression gave, as text; empty if nothing
 * @param trouble why it did not end well, one sentence; empty if it did
 * @param exhibits what it drew, in order
 * @param solved what the author's solution gave in its place, if it was run
 */
public record SnippetOutput(
        String printed,
        String value,
        String trouble,
        List<Exhibit> exhibits,
        Optional<SnippetOutput> solved) {
    /** A snippet that was not run. */
    public static final SnippetOutput NOTHING =
            new SnippetOutput("", "", "", List.of(), Optional.empty());

    /** The type of a line that printed; what it gives is of no interest. */
    private static final String PRINTING = "PrintStream";

    /**
     * A snippet that ran to its end.
     *
     * @param printed what it printed
     * @param value what its last expression gave, as text
     * @param type that expression's type
     * @param exhibits what it drew, in order
     * @return what it gave, without a value if its last line only printed
     */
    public static SnippetOutput ran(
            String printed, String value, String type, List<Exhibit> exhibits) {
        return new SnippetOutput(
                printed,
                type.endsWith(PRINTING) ? "" : DisplayText.result(value, type),
                "",
                exhibits,
                Optional.empty());
    }

    /**
     * A snippet that did not end well.
     *
     * @param printed what it printed
     * @param trouble why, one sentence
     * @param exhibits what it drew, in order
     * @return what it gave
     */
    public static SnippetOutput failed(String printed, String trouble, List<Exhibit> exhibits) {
        return new SnippetOutput(printed, "", trouble, exhibits, Optional.empty());
    }

    /**
     * The same with what the author's solution gave.
     *
     * @param solution what it gave
     * @return with it
     */
    public SnippetOutput with(SnippetOutput solution) {
        return new SnippetOutput(printed, value, trouble, exhibits, Optional.of(solution));
    }

    /** What it printed and gave, a line each; empty if nothing. */
    String words() {
        return (printed.stripTrailing() + "\n" + value).strip();
    }

    /** Whether it ran and only said what things are: of that, nothing is to be written down. */
    boolean silent() {
        return words().isEmpty() && exhibits.isEmpty() && trouble.isEmpty();
    }

    /** Copies what is given. */
    public SnippetOutput {
        exhibits = List.copyOf(exhibits);
    }
}
