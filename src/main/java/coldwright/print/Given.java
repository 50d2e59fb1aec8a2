package coldwright.print;

import coldwright.figure.Exhibit;

import java.util.List;

/**
 * What a snippet gave when it was run.
 *
 * @param printed what it printed
 * @param value what its last expression gave, as text; empty if nothing
 * @param trouble why it did not end well, one sentence; empty if it did
 * @param exhibits what it drew, in order
 */
public record Given(String printed, String value, String trouble, List<Exhibit> exhibits) {
    /** A snippet that was not run. */
    public static final Given NOTHING = new Given("", "", "", List.of());

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
    public static Given ran(String printed, String value, String type, List<Exhibit> exhibits) {
        return new Given(printed, type.endsWith(PRINTING) ? "" : value, "", exhibits);
    }

    /**
     * A snippet that did not end well.
     *
     * @param printed what it printed
     * @param trouble why, one sentence
     * @param exhibits what it drew, in order
     * @return what it gave
     */
    public static Given failed(String printed, String trouble, List<Exhibit> exhibits) {
        return new Given(printed, "", trouble, exhibits);
    }

    public Given {
        exhibits = List.copyOf(exhibits);
    }
}
