package coldwright.bench.remote;

import coldwright.figure.wire.MalformedWireException;
import coldwright.figure.wire.WireReader;

import java.io.DataInput;
import java.io.IOException;

/**
 * A message that the bench's process sends besides replies: printed text, a figure, or the end of a
 * batch.
 *
 * @param load its bytes
 */
public record WireFrame(Kind kind, byte[] load) {
    /** The content of a frame. */
    public enum Kind {
        /** Printed text, UTF-8; a character may be split between two frames. */
        PRINTED,
        /** The output exceeded the limit. */
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
     * Receives a frame; input isn't trusted.
     *
     * @param mostBytes maximum payload
     * @throws IOException if the other side is gone or the input isn't a frame
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
