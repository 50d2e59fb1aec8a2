package coldwright.figure;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.EOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The wire form of a figure: how it leaves the bench.
 *
 * <pre>
 * "CWF", version            4 bytes
 * title                     text: length in bytes, UTF-8
 * x axis, y axis            label, unit, a byte that says which ends are fixed, those ends
 * series                    count, then for each: kind, name, points
 * marks                     count, then for each: axis, label, value
 * alternative text          text
 * sources                   count, then texts
 * </pre>
 *
 * Counts and lengths are 4-byte integers, numbers 8-byte doubles, high byte first. What comes in is
 * not trusted: a count is held against its limit before anything is read, and memory grows only as
 * data really arrive.
 */
public final class FigureCodec {
    /** The version that this class writes, and the only one that it reads. */
    public static final int VERSION = 1;

    /** The most series that a figure may carry. */
    public static final int MOST_SERIES = 64;

    /** The most marks that a figure may carry. */
    public static final int MOST_MARKS = 64;

    /** The most sources that a figure may carry. */
    public static final int MOST_SOURCES = 64;

    private static final int[] OPENING = {'C', 'W', 'F', VERSION};

    private static final int MARK_ON_X = 0;
    private static final int MARK_ON_Y = 1;

    private FigureCodec() {}

    /**
     * Writes a figure.
     *
     * @param figure what to write
     * @param out where to
     * @throws IOException if the stream fails, or the figure has more series, marks, sources or
     *     longer texts than may be sent; then nothing says that no part of it was written
     */
    public static void write(Figure figure, DataOutput out) throws IOException {
        for (int b : OPENING) {
            out.writeByte(b);
        }
        WireFields.writeText("title", figure.title(), out);
        writeAxis(figure.x(), out);
        writeAxis(figure.y(), out);
        WireFields.writeCount("series", figure.series().size(), MOST_SERIES, out);
        for (Series one : figure.series()) {
            SeriesCodec.write(one, out);
        }
        WireFields.writeCount("marks", figure.marks().size(), MOST_MARKS, out);
        for (ReferenceLine mark : figure.marks()) {
            out.writeByte(mark.across() == ReferenceLine.Across.X ? MARK_ON_X : MARK_ON_Y);
            WireFields.writeText("mark", mark.label(), out);
            out.writeDouble(mark.at());
        }
        WireFields.writeText("alternative text", figure.writtenText(), out);
        WireFields.writeCount("sources", figure.sources().size(), MOST_SOURCES, out);
        for (String source : figure.sources()) {
            WireFields.writeText("source", source, out);
        }
    }

    /**
     * Reads a figure from a stream that may hold anything.
     *
     * @param in where from
     * @param pointLimit the most points, over all series together, that are taken
     * @return the figure
     * @throws IOException in one sentence, if the stream fails or ends early, is no figure, or
     *     holds more than the limits allow
     */
    public static Figure read(DataInput in, int pointLimit) throws IOException {
        try {
            return readAll(in, pointLimit);
        } catch (EOFException e) {
            throw new IOException("the figure breaks off before its end", e);
        } catch (IllegalArgumentException e) {
            throw WireFields.refusal(e);
        }
    }

    private static Figure readAll(DataInput in, int pointLimit) throws IOException {
        for (int i = 0; i < OPENING.length; i++) {
            int b = in.readUnsignedByte();
            if (b != OPENING[i]) {
                throw new IOException(
                        i < OPENING.length - 1
                                ? "this is no figure: it does not begin as one"
                                : "the figure is of version %d; this program reads version %d"
                                        .formatted(b, VERSION));
            }
        }
        String title = WireFields.readText("title", in);
        Axis x = readAxis(in);
        Axis y = readAxis(in);
        int count = WireFields.readCount("series", MOST_SERIES, in);
        List<Series> series = new ArrayList<>(count);
        int pointsLeft = pointLimit;
        for (int i = 0; i < count; i++) {
            Series one = SeriesCodec.read(in, pointsLeft);
            pointsLeft -= one.size();
            series.add(one);
        }
        int markCount = WireFields.readCount("marks", MOST_MARKS, in);
        List<ReferenceLine> marks = new ArrayList<>(markCount);
        for (int i = 0; i < markCount; i++) {
            ReferenceLine.Across across = across(in.readUnsignedByte());
            marks.add(new ReferenceLine(WireFields.readText("mark", in), across, in.readDouble()));
        }
        String writtenText = WireFields.readText("alternative text", in);
        int sourceCount = WireFields.readCount("sources", MOST_SOURCES, in);
        List<String> sources = new ArrayList<>(sourceCount);
        for (int i = 0; i < sourceCount; i++) {
            sources.add(WireFields.readText("source", in));
        }
        return new Figure(title, x, y, series, marks, writtenText, sources);
    }

    private static ReferenceLine.Across across(int code) throws IOException {
        if (code != MARK_ON_X && code != MARK_ON_Y) {
            throw new IOException("the figure has a mark on an unknown axis, number " + code);
        }
        return code == MARK_ON_X ? ReferenceLine.Across.X : ReferenceLine.Across.Y;
    }

    private static void writeAxis(Axis axis, DataOutput out) throws IOException {
        WireFields.writeText("axis label", axis.label(), out);
        WireFields.writeText("unit", axis.unit(), out);
        out.writeByte((axis.from().isPresent() ? 1 : 0) + (axis.to().isPresent() ? 2 : 0));
        if (axis.from().isPresent()) {
            out.writeDouble(axis.from().getAsDouble());
        }
        if (axis.to().isPresent()) {
            out.writeDouble(axis.to().getAsDouble());
        }
    }

    private static Axis readAxis(DataInput in) throws IOException {
        String label = WireFields.readText("axis label", in);
        String unit = WireFields.readText("unit", in);
        int fixed = in.readUnsignedByte();
        if (fixed > 3) {
            throw new IOException(
                    "the figure has an axis whose ends can't be read, code %d".formatted(fixed));
        }
        OptionalDouble from = end((fixed & 1) != 0, in);
        OptionalDouble to = end((fixed & 2) != 0, in);
        return new Axis(label, unit, from, to);
    }

    private static OptionalDouble end(boolean fixed, DataInput in) throws IOException {
        return fixed ? OptionalDouble.of(in.readDouble()) : OptionalDouble.empty();
    }
}
