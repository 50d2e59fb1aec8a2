package coldwright.figure;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The wire form of a drawing, behind the byte that {@link ExhibitCodec} writes.
 *
 * <pre>
 * "CWD", version            4 bytes
 * title                     text
 * field                     width, height, unit
 * scale bar                 length, label
 * ground                    a byte: its role
 * warmth                    a byte: 0 none, 1 followed by coldest and warmest
 * moments                   count, then for each: time, unit, label, count of pieces, pieces
 * alternative text          text
 * sources                   count, then texts
 * </pre>
 *
 * Counts, texts and numbers are as in {@link FigureCodec}.
 */
final class DrawingCodec {
    static final int VERSION = 1;

    /** The most moments that a drawing may carry. */
    static final int MOST_MOMENTS = 400;

    private static final int[] OPENING = {'C', 'W', 'D', VERSION};

    private DrawingCodec() {}

    static void write(Drawing drawing, DataOutput out) throws IOException {
        for (int b : OPENING) {
            out.writeByte(b);
        }
        WireFields.writeText("title", drawing.title(), out);
        out.writeDouble(drawing.field().width());
        out.writeDouble(drawing.field().height());
        WireFields.writeText("unit", drawing.field().unit(), out);
        out.writeDouble(drawing.bar().length());
        WireFields.writeText("scale bar", drawing.bar().label(), out);
        PieceCodec.write(drawing.ground(), out);
        out.writeByte(drawing.warmth().isPresent() ? 1 : 0);
        if (drawing.warmth().isPresent()) {
            out.writeDouble(drawing.warmth().get().coldestC());
            out.writeDouble(drawing.warmth().get().warmestC());
        }
        WireFields.writeCount("moments", drawing.moments().size(), MOST_MOMENTS, out);
        for (Drawing.Moment moment : drawing.moments()) {
            write(moment, out);
        }
        WireFields.writeText("alternative text", drawing.writtenText(), out);
        WireFields.writeCount("sources", drawing.sources().size(), FigureCodec.MOST_SOURCES, out);
        for (String source : drawing.sources()) {
            WireFields.writeText("source", source, out);
        }
    }

    private static void write(Drawing.Moment moment, DataOutput out) throws IOException {
        out.writeDouble(moment.time());
        WireFields.writeText("unit", moment.unit(), out);
        WireFields.writeText("moment's label", moment.label(), out);
        out.writeInt(moment.pieces().size());
        for (Piece piece : moment.pieces()) {
            PieceCodec.write(piece, out);
        }
    }

    static Drawing read(DataInput in, int pointLimit) throws IOException {
        for (int i = 0; i < OPENING.length; i++) {
            int b = in.readUnsignedByte();
            if (b != OPENING[i]) {
                throw new IOException(
                        i < OPENING.length - 1
                                ? "this is no drawing: it does not begin as one"
                                : "the drawing is of version %d; this program reads version %d"
                                        .formatted(b, VERSION));
            }
        }
        String title = WireFields.readText("title", in);
        double width = in.readDouble();
        double height = in.readDouble();
        Drawing.Field field = new Drawing.Field(width, height, WireFields.readText("unit", in));
        double length = in.readDouble();
        Drawing.ScaleBar scaleBar =
                new Drawing.ScaleBar(length, WireFields.readText("scale bar", in));
        Tint.Role ground = PieceCodec.readRole(in);
        Optional<Drawing.TemperatureScale> warmth = readWarmth(in);
        int count = WireFields.readCount("moments", MOST_MOMENTS, in);
        List<Drawing.Moment> moments = new ArrayList<>(count);
        int pointsLeft = pointLimit;
        for (int i = 0; i < count; i++) {
            Drawing.Moment moment = readMoment(in, pointsLeft);
            pointsLeft -= moment.size();
            moments.add(moment);
        }
        String writtenText = WireFields.readText("alternative text", in);
        int sourceCount = WireFields.readCount("sources", FigureCodec.MOST_SOURCES, in);
        List<String> sources = new ArrayList<>(sourceCount);
        for (int i = 0; i < sourceCount; i++) {
            sources.add(WireFields.readText("source", in));
        }
        return new Drawing(title, field, scaleBar, ground, warmth, moments, writtenText, sources);
    }

    private static Optional<Drawing.TemperatureScale> readWarmth(DataInput in) throws IOException {
        int there = in.readUnsignedByte();
        if (there > 1) {
            throw new IOException("the figure has a scale that can't be read, code " + there);
        }
        return there == 0
                ? Optional.empty()
                : Optional.of(new Drawing.TemperatureScale(in.readDouble(), in.readDouble()));
    }

    private static Drawing.Moment readMoment(DataInput in, int pointLimit) throws IOException {
        double time = in.readDouble();
        String unit = WireFields.readText("unit", in);
        String label = WireFields.readText("moment's label", in);
        int count = WireFields.readCount("pieces", pointLimit, in);
        // grows with what arrives, so that a false count can't take memory
        List<Piece> pieces = new ArrayList<>();
        int pointsLeft = pointLimit;
        for (int i = 0; i < count; i++) {
            Piece piece = PieceCodec.read(in, pointsLeft);
            pointsLeft -= piece.size();
            if (pointsLeft < 0) {
                throw new IOException(
                        "the figure has more points than the %d that are shown"
                                .formatted(pointLimit));
            }
            pieces.add(piece);
        }
        return new Drawing.Moment(time, unit, label, pieces);
    }
}
