package coldwright.figure;

import coldwright.figure.wire.WireReader;
import coldwright.figure.wire.WireWriter;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The wire format of a figure, in which it leaves the bench.
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
 * Counts, texts and numbers are as in {@link coldwright.figure.wire}. Input isn't trusted.
 */
public final class FigureCodec {
    /** The version that this class writes, and the only one it reads. */
    public static final int VERSION = 1;

    /** Maximum series of a figure. */
    public static final int MOST_SERIES = 64;

    /** Maximum marks of a figure. */
    public static final int MOST_MARKS = 64;

    /** Maximum sources of a figure. */
    public static final int MOST_SOURCES = 64;

    private static final int[] OPENING = {'C', 'W', 'F', VERSION};

    private static final int MARK_ON_X = 0;
    private static final int MARK_ON_Y = 1;

    private FigureCodec() {}

    /**
     * Writes a figure.
     *
     * @throws IOException if the stream fails, or the figure exceeds a limit; a part may have been
     *     written already
     */
    public static void write(Figure figure, DataOutput out) throws IOException {
        write(figure, new WireWriter(ExhibitCodec.LIMITS, out));
    }

    private static void write(Figure figure, WireWriter out) throws IOException {
        out.opening(OPENING);
        out.text("title", figure.title());
        writeAxis(figure.x(), out);
        writeAxis(figure.y(), out);
        out.list("series", figure.series(), MOST_SERIES, one -> SeriesCodec.write(one, out));
        out.list(
                "marks",
                figure.marks(),
                MOST_MARKS,
                mark -> {
                    out.code(mark.across() == ReferenceLine.Across.X ? MARK_ON_X : MARK_ON_Y);
                    out.text("mark", mark.label());
                    out.number(mark.at());
                });
        out.text("alternative text", figure.writtenText());
        out.list("sources", figure.sources(), MOST_SOURCES, one -> out.text("source", one));
    }

    /**
     * Reads a figure from an untrusted stream.
     *
     * @param pointLimit maximum points, over all series together
     * @throws IOException if the stream fails or ends early, isn't a figure, or exceeds a limit;
     *     the message is one sentence
     */
    public static Figure read(DataInput in, int pointLimit) throws IOException {
        WireReader wire = new WireReader(ExhibitCodec.LIMITS, in);
        return wire.whole(() -> read(wire, pointLimit));
    }

    static Figure read(WireReader in, int pointLimit) throws IOException {
        in.opening("figure", OPENING);
        String title = in.text("title");
        Axis x = readAxis(in);
        Axis y = readAxis(in);
        int[] pointsLeft = {pointLimit};
        List<Series> series =
                in.list(
                        "series",
                        MOST_SERIES,
                        () -> {
                            Series one = SeriesCodec.read(in, pointsLeft[0]);
                            pointsLeft[0] -= one.size();
                            return one;
                        });
        List<ReferenceLine> marks = in.list("marks", MOST_MARKS, () -> readMark(in));
        String writtenText = in.text("alternative text");
        List<String> sources = in.list("sources", MOST_SOURCES, () -> in.text("source"));
        return new Figure(title, x, y, series, marks, writtenText, sources);
    }

    private static ReferenceLine readMark(WireReader in) throws IOException {
        int axis = in.code("a mark on an unknown axis", 2);
        ReferenceLine.Across across =
                axis == MARK_ON_X ? ReferenceLine.Across.X : ReferenceLine.Across.Y;
        return new ReferenceLine(in.text("mark"), across, in.number());
    }

    private static void writeAxis(Axis axis, WireWriter out) throws IOException {
        out.text("axis label", axis.label());
        out.text("unit", axis.unit());
        out.code((axis.from().isPresent() ? 1 : 0) + (axis.to().isPresent() ? 2 : 0));
        if (axis.from().isPresent()) {
            out.number(axis.from().getAsDouble());
        }
        if (axis.to().isPresent()) {
            out.number(axis.to().getAsDouble());
        }
    }

    private static Axis readAxis(WireReader in) throws IOException {
        String label = in.text("axis label");
        String unit = in.text("unit");
        int fixed = in.code("an axis whose ends can't be read", 4);
        OptionalDouble from = end((fixed & 1) != 0, in);
        OptionalDouble to = end((fixed & 2) != 0, in);
        return new Axis(label, unit, from, to);
    }

    private static OptionalDouble end(boolean fixed, WireReader in) throws IOException {
        return fixed ? OptionalDouble.of(in.number()) : OptionalDouble.empty();
    }
}
