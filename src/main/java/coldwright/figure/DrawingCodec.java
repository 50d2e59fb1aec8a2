package coldwright.figure;

import coldwright.figure.wire.WireReader;
import coldwright.figure.wire.WireWriter;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * The wire format of a drawing, after the byte that {@link ExhibitCodec} writes.
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
 * Counts, texts and numbers are as in {@link coldwright.figure.wire}.
 */
final class DrawingCodec {
    static final int VERSION = 1;

    /** Maximum moments of a drawing. */
    static final int MOST_MOMENTS = 400;

    private static final int[] OPENING = {'C', 'W', 'D', VERSION};

    private DrawingCodec() {}

    static void write(Drawing drawing, WireWriter out) throws IOException {
        out.opening(OPENING);
        out.text("title", drawing.title());
        out.number(drawing.field().width());
        out.number(drawing.field().height());
        out.text("unit", drawing.field().unit());
        out.number(drawing.bar().length());
        out.text("scale bar", drawing.bar().label());
        PieceCodec.write(drawing.ground(), out);
        out.code(drawing.warmth().isPresent() ? 1 : 0);
        if (drawing.warmth().isPresent()) {
            out.number(drawing.warmth().get().coldestC());
            out.number(drawing.warmth().get().warmestC());
        }
        out.list("moments", drawing.moments(), MOST_MOMENTS, moment -> write(moment, out));
        out.text("alternative text", drawing.writtenText());
        out.list(
                "sources",
                drawing.sources(),
                FigureCodec.MOST_SOURCES,
                one -> out.text("source", one));
    }

    private static void write(Drawing.Moment moment, WireWriter out) throws IOException {
        out.number(moment.time());
        out.text("unit", moment.unit());
        out.text("moment's label", moment.label());
        out.list(
                "pieces",
                moment.pieces(),
                Integer.MAX_VALUE,
                piece -> PieceCodec.write(piece, out));
    }

    static Drawing read(WireReader in, int pointLimit) throws IOException {
        in.opening("drawing", OPENING);
        String title = in.text("title");
        double width = in.number();
        double height = in.number();
        Drawing.Field field = new Drawing.Field(width, height, in.text("unit"));
        double length = in.number();
        Drawing.ScaleBar scaleBar = new Drawing.ScaleBar(length, in.text("scale bar"));
        Tint.Role ground = PieceCodec.readRole(in);
        Optional<Drawing.TemperatureScale> warmth =
                in.code("a scale that can't be read", 2) == 0
                        ? Optional.empty()
                        : Optional.of(new Drawing.TemperatureScale(in.number(), in.number()));
        int[] pointsLeft = {pointLimit};
        List<Drawing.Moment> moments =
                in.list("moments", MOST_MOMENTS, () -> readMoment(in, pointsLeft, pointLimit));
        String writtenText = in.text("alternative text");
        List<String> sources =
                in.list("sources", FigureCodec.MOST_SOURCES, () -> in.text("source"));
        return new Drawing(title, field, scaleBar, ground, warmth, moments, writtenText, sources);
    }

    private static Drawing.Moment readMoment(WireReader in, int[] pointsLeft, int pointLimit)
            throws IOException {
        double time = in.number();
        String unit = in.text("unit");
        String label = in.text("moment's label");
        List<Piece> pieces =
                in.list(
                        "pieces",
                        pointsLeft[0],
                        () -> {
                            Piece piece = PieceCodec.read(in, pointsLeft[0]);
                            pointsLeft[0] -= piece.size();
                            if (pointsLeft[0] < 0) {
                                throw new IllegalArgumentException(
                                        "the figure has more points than the %d that are shown"
                                                .formatted(pointLimit));
                            }
                            return piece;
                        });
        return new Drawing.Moment(time, unit, label, pieces);
    }
}
