package coldwright.bench;

import coldwright.figure.Exhibit;

/** Hears of a run while it goes on; called on a thread of the bench, so return at once. */
public interface RunListener {
    /** Hears nothing. */
    RunListener NONE = new RunListener() {};

    /** All of it is compiled, with those above; from here on it runs. */
    default void compiled() {}

    /**
     * The snippet printed something.
     *
     * @param text what, a part at a time
     */
    default void printed(String text) {}

    /**
     * The snippet drew a figure or a drawing.
     *
     * @param exhibit what it drew
     */
    default void onFigure(Exhibit exhibit) {}

    /**
     * Snippets above have to run first.
     *
     * @param index which of them runs now, from 0
     * @param count how many there are
     */
    default void above(int index, int count) {}
}
