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

    public Given {
        exhibits = List.copyOf(exhibits);
    }
}
