package coldwright.bench.remote;

import java.io.DataInputStream;
import java.io.IOException;

/**
 * One piece of what the bench's process sends on its own account, beside the answers: text printed,
 * a figure drawn, the word that a batch is over.
 *
 * @param kind what it carries
 * @param load its bytes
 */
public record WireFrame(Kind kind, byte[] load) {
    /** What a frame carries. */
    public enum Kind {
        /** Printed text, UTF-8; a character may be split between two frames. */
        PRINTED,
        /** More was printed than is wanted. */
        CUT,
        /** A figure in its wire form. */
        FIGURE,
        /** The end of a batch: its number, 4 bytes. */
        END
    }

    /** Marks the start of each frame. */
    static final int OPENING = 0x43424546;

    private static final Kind[] KINDS = Kind.values();

    /**
     * Receives a frame; what comes in is not trusted.
     *
     * @param in where from
     * @param mostBytes longest load taken
     * @return the frame
     * @throws IOException if the other side is gone, or what came is no frame
     */
    public static WireFrame read(DataInputStream in, int mostBytes) throws IOException {
        int opening = in.readInt();
        int kind = in.readUnsignedByte();
        int length = in.readInt();
        if (opening != OPENING || kind >= KINDS.length || length < 0 || length > mostBytes) {
            throw new MalformedFrameException("what came on the figure stream is no frame");
        }
        byte[] load = in.readNBytes(length);
        if (load.length < length) {
            throw new IOException("the bench went away within a frame");
        }
        return new WireFrame(KINDS[kind], load);
    }

    /** What came in was never written by an honest bench. */
    public static final class MalformedFrameException extends IOException {
        private static final long serialVersionUID = 1;

        /**
         * Says what was wrong.
         *
         * @param message what was wrong
         */
        public MalformedFrameException(String message) {
            super(message);
        }
    }
}
