package coldwright.figure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Describes a drawing in words: its first and last moment, computed from the pieces. */
final class DrawingDescription {
    private DrawingDescription() {}

    static String describe(Drawing drawing) {
        if (!drawing.writtenText().isBlank()) {
            return drawing.writtenText();
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(drawing.title());
        Drawing.Field field = drawing.field();
        sentences.add(
                "A field of %s by %s %s"
                        .formatted(
                                TypesetNumber.plain(field.width(), field.width()),
                                TypesetNumber.plain(field.height(), field.height()),
                                field.unit()));
        List<Drawing.Moment> moments = drawing.moments();
        if (moments.isEmpty()) {
            sentences.add("Nothing is drawn yet");
        } else {
            sentences.add(describe(drawing, 0));
        }
        if (moments.size() > 1) {
            sentences.add(describe(drawing, moments.size() - 1));
        }
        StringBuilder text = new StringBuilder();
        for (String sentence : sentences) {
            if (!sentence.isBlank()) {
                String end = sentence.strip().matches("(?s).*[.!?…]") ? "" : ".";
                text.append(text.isEmpty() ? "" : " ").append(sentence.strip()).append(end);
            }
        }
        return text.toString();
    }

    private static String describe(Drawing drawing, int index) {
        Drawing.Moment moment = drawing.moments().get(index);
        List<String> parts = new ArrayList<>();
        if (!moment.label().isBlank()) {
            parts.add(moment.label());
        }
        Map<Tint.Role, PieceGroup> kins = new EnumMap<>(Tint.Role.class);
        double coldest = Double.POSITIVE_INFINITY;
        double warmest = Double.NEGATIVE_INFINITY;
        for (Piece piece : moment.pieces()) {
            if (piece instanceof Piece.Disc disc) {
                count(kins, disc.tint(), 2 * disc.radius());
            } else if (piece instanceof Piece.Outline outline) {
                count(kins, outline.tint(), 2 * Math.sqrt(area(outline) / Math.PI));
            } else if (piece instanceof Piece.Band band
                    && band.upper().role() == Tint.Role.WARMTH) {
                double one = band.upper().temperatureC();
                double other = band.lower().temperatureC();
                coldest = Math.min(coldest, Math.min(one, other));
                warmest = Math.max(warmest, Math.max(one, other));
            }
        }
        kins.forEach(
                (role, pieceGroup) -> parts.add(pieceGroup.describe(role, drawing.field().unit())));
        if (coldest <= warmest) {
            double wide = Math.max(warmest - coldest, 1);
            parts.add(
                    "temperatures from %s to %s °C"
                            .formatted(
                                    TypesetNumber.plain(coldest, wide),
                                    TypesetNumber.plain(warmest, wide)));
        }
        String when = drawing.moments().size() > 1 ? when(drawing, index) + ": " : "";
        String what = parts.isEmpty() ? "nothing" : String.join("; ", parts);
        return when + what;
    }

    private static String when(Drawing drawing, int index) {
        Drawing.Moment moment = drawing.moments().get(index);
        String order = index == 0 ? "First" : "Last";
        return moment.unit().isBlank() ? order : order + ", " + time(drawing, index);
    }

    /** The time of a moment, as precise as the intervals between moments. */
    static String time(Drawing drawing, int index) {
        List<Drawing.Moment> moments = drawing.moments();
        double last = moments.get(moments.size() - 1).time();
        double width = last - moments.get(0).time();
        Drawing.Moment moment = moments.get(index);
        String number = TypesetNumber.plain(moment.time(), width > 0 ? width : Math.abs(last));
        return moment.unit().isBlank() ? "" : number + " " + moment.unit();
    }

    private static void count(Map<Tint.Role, PieceGroup> kins, Tint tint, double diameter) {
        kins.computeIfAbsent(tint.role(), role -> new PieceGroup()).add(diameter);
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

    /** Pieces of one kind: their number and sizes. */
    private static final class PieceGroup {
        private int count;
        private double sum;

        void add(double diameter) {
            count++;
            sum += diameter;
        }

        String describe(Tint.Role role, String unit) {
            String name = role.name().toLowerCase(Locale.ROOT).replace('_', ' ');
            double mean = sum / count;
            return "%d %s of %s, on average %s %s across"
                    .formatted(
                            count,
                            count == 1 ? "piece" : "pieces",
                            name,
                            TypesetNumber.plain(mean, mean),
                            unit);
        }
    }
}
