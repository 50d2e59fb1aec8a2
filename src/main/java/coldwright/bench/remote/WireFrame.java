package coldwright.bench.remote;

import coldwright.figure.wire.MalformedWireException;
import coldwright.figure.wire.WireReader;

import java.io.DataInput;
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
    public static WireFrame read(DataInput in, int mostBytes) throws IOException {
        WireReader wire = new WireReader(OrderBatch.LIMITS, in);
        if (wire.whole() != OPENING) {
            throw new MalformedWireException("what came on the figure stream is no frame");
        }
        Kind kind = KINDS[wire.code("an unknown frame", KINDS.length)];
        return new WireFrame(kind, wire.bytes("bytes in a frame", mostBytes));
    }
}
