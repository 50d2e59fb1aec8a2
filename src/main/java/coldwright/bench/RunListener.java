package coldwright.bench;

import coldwright.figure.Exhibit;

/** Receives events of a run. Called on a thread of the bench, so return at once. */
public interface RunListener {
    /** Ignores all events. */
    RunListener NONE = new RunListener() {};

    /** All snippets are compiled; the run starts now. */
    default void compiled() {}

    /**
     * The snippet printed text.
     *
     * @param text one part of the output
     */
    default void printed(String text) {}

    /** The snippet drew a figure or a drawing. */
    default void onFigure(Exhibit exhibit) {}

    /**
     * A snippet above is running first.
     *
     * @param index its index, from 0
     * @param count how many there are
     */
    default void above(int index, int count) {}
}
