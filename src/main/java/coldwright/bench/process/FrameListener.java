package coldwright.bench.process;

import java.io.IOException;

/** Receives the output of a batch on the reading thread: return at once. */
public interface FrameListener {
    /**
     * Text was printed.
     *
     * @param utf8 its bytes; a character may be split between two calls
     */
    default void printed(byte[] utf8) {}

    /** The output exceeded the limit. */
    default void cut() {}

    /**
     * A figure was drawn.
     *
     * @param figure its wire form, not yet trusted
     * @throws IOException if it is malformed: then the process is killed
     */
    default void onFigure(byte[] figure) throws IOException {}
}
