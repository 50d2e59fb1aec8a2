package coldwright.figure;

import coldwright.figure.wire.WireLimits;
import coldwright.figure.wire.WireReader;
import coldwright.figure.wire.WireWriter;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;

/**
 * The wire format of an exhibit: a byte for its kind, then a figure as {@link FigureCodec} writes
 * it, or a drawing.
 */
public final class ExhibitCodec {
    /** The longest text is 16 kB of UTF-8. */
    static final WireLimits LIMITS = new WireLimits("figure", "shown", 16_384);

    private static final int FIGURE = 0;
    private static final int DRAWING = 1;

    private ExhibitCodec() {}

    /**
     * Writes a figure or a drawing.
     *
     * @throws IOException if the stream fails, or a limit is exceeded; a part may have been written
     *     already
     */
    public static void write(Exhibit exhibit, DataOutput out) throws IOException {
        if (exhibit instanceof Figure figure) {
            out.writeByte(FIGURE);
            FigureCodec.write(figure, out);
        } else if (exhibit instanceof Drawing drawing) {
            out.writeByte(DRAWING);
            DrawingCodec.write(drawing, new WireWriter(LIMITS, out));
        } else {
            throw new AssertionError(exhibit.getClass());
        }
    }

    /**
     * Reads a figure or a drawing from an untrusted stream.
     *
     * @param pointLimit maximum points, over all series or over all pieces of all moments
     * @throws IOException if the stream fails or ends early, is neither, or exceeds a limit; the
     *     message is one sentence
     */
    public static Exhibit read(DataInput in, int pointLimit) throws IOException {
        WireReader wire = new WireReader(LIMITS, in);
        return wire.whole(
                () -> {
                    int kind = in.readUnsignedByte();
                    return switch (kind) {
                        case FIGURE -> FigureCodec.read(wire, pointLimit);
                        case DRAWING -> DrawingCodec.read(wire, pointLimit);
                        default ->
                                throw new IllegalArgumentException(
                                        "this is neither figure nor drawing, but of kind " + kind);
                    };
                });
    }

    /** {@return the points that count towards the limit, of all series, pieces and moments} */
    public static long points(Exhibit exhibit) {
        if (exhibit instanceof Figure figure) {
            return figure.series().stream().mapToLong(Series::size).sum();
        }
        if (exhibit instanceof Drawing drawing) {
            return drawing.size();
        }
        throw new AssertionError(exhibit.getClass());
    }
}
