package coldwright.bench;

import coldwright.figure.Figure;

/** Hears of a run while it goes on; called on a thread of the bench, so return at once. */
public interface RunWatcher {
    /** Hears nothing. */
    RunWatcher NONE = new RunWatcher() {};

    /**
     * The snippet printed something.
     *
     * @param text what, a part at a time
     */
    default void printed(String text) {}

    /**
     * The snippet drew a figure.
     *
     * @param figure what it drew
     */
    default void drew(Figure figure) {}

    /**
     * Snippets above have to run first.
     *
     * @param index which of them runs now, from 0
     * @param count how many there are
     */
    default void above(int index, int count) {}
}
