package coldwright.bench.process;

import java.io.IOException;

/** Hears what a batch prints and draws, on the reading thread: return at once. */
public interface FrameListener {
    /**
     * Text was printed.
     *
     * @param utf8 its bytes; a character may be split between two calls
     */
    default void printed(byte[] utf8) {}

    /** More was printed than was wanted. */
    default void cut() {}

    /**
     * A figure was drawn.
     *
     * @param figure its wire form, not yet trusted
     * @throws IOException if it is none: then the process is ended
     */
    default void onFigure(byte[] figure) throws IOException {}
}
