package coldwright.figure;

import static coldwright.figure.FigureDescription.text;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Describes a drawing in words: its first and last moment, computed from the pieces. */
public final class DrawingDescription {
    private DrawingDescription() {}

    /** The sentences after the title. */
    static List<String> sentences(Drawing drawing) {
        Drawing.Field field = drawing.field();
        String size =
                text(
                        "field",
                        TypesetNumber.plain(field.width(), field.width()),
                        TypesetNumber.plain(field.height(), field.height()),
                        field.unit());
        int last = drawing.moments().size() - 1;
        return last < 0
                ? List.of(size, text("nothing"))
                : last == 0
                        ? List.of(size, describe(drawing, 0))
                        : List.of(size, describe(drawing, 0), describe(drawing, last));
    }

    private static String describe(Drawing drawing, int index) {
        Drawing.Moment moment = drawing.moments().get(index);
        List<String> parts = new ArrayList<>();
        if (!moment.label().isBlank()) {
            parts.add(moment.label());
        }
        Map<Tint.Role, DoubleSummaryStatistics> diameters = new EnumMap<>(Tint.Role.class);
        DoubleSummaryStatistics warmth = new DoubleSummaryStatistics();
        for (Piece piece : moment.pieces()) {
            if (piece instanceof Piece.Disc disc) {
                of(disc.tint(), diameters).accept(2 * disc.radius());
            } else if (piece instanceof Piece.Outline outline) {
                of(outline.tint(), diameters).accept(2 * Math.sqrt(area(outline) / Math.PI));
            } else if (piece instanceof Piece.Band band
                    && band.upper().role() == Tint.Role.WARMTH) {
                warmth.accept(band.upper().temperatureC());
                warmth.accept(band.lower().temperatureC());
            }
        }
        diameters.forEach(
                (role, all) ->
                        parts.add(
                                text(
                                        all.getCount() == 1 ? "piece" : "pieces",
                                        all.getCount(),
                                        text("Role." + role.name()),
                                        TypesetNumber.plain(all.getAverage(), all.getAverage()),
                                        drawing.field().unit())));
        if (warmth.getCount() > 0) {
            double wide = Math.max(warmth.getMax() - warmth.getMin(), 1);
            parts.add(
                    text(
                            "temperatures",
                            TypesetNumber.plain(warmth.getMin(), wide),
                            TypesetNumber.plain(warmth.getMax(), wide)));
        }
        String when = drawing.moments().size() > 1 ? when(drawing, index) + ": " : "";
        return when + (parts.isEmpty() ? text("moment.nothing") : String.join("; ", parts));
    }

    private static DoubleSummaryStatistics of(
            Tint tint, Map<Tint.Role, DoubleSummaryStatistics> diameters) {
        return diameters.computeIfAbsent(tint.role(), role -> new DoubleSummaryStatistics());
    }

    private static String when(Drawing drawing, int index) {
        Drawing.Moment moment = drawing.moments().get(index);
        String order = text(index == 0 ? "moment.first" : "moment.last");
        return moment.unit().isBlank() ? order : order + ", " + time(drawing, index);
    }

    /**
     * {@return the time of one moment of a drawing, from 0, such as {@code 7 d}, as precise as the
     * intervals between moments; empty if time has no unit}
     */
    public static String time(Drawing drawing, int index) {
        List<Drawing.Moment> moments = drawing.moments();
        double last = moments.get(moments.size() - 1).time();
        double width = last - moments.get(0).time();
        Drawing.Moment moment = moments.get(index);
        String number = TypesetNumber.plain(moment.time(), width > 0 ? width : Math.abs(last));
        return moment.unit().isBlank() ? "" : number + " " + moment.unit();
    }

    private static double area(Piece.Outline outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            int next = (i + 1) % outline.size();
            twice +=
                    outline.x().at(i) * outline.y().at(next)
                            - outline.x().at(next) * outline.y().at(i);
        }
        return Math.abs(twice) / 2;
    }
}
