package coldwright.desk.model;

import coldwright.figure.Axis;
import coldwright.figure.Figure;
import coldwright.figure.Numbers;
import coldwright.figure.Series;

import java.util.ArrayList;
import java.util.List;

/** A figure in words, for those who can't see it. */
public final class SpokenFigure {
    private SpokenFigure() {}

    /**
     * Says what a figure shows.
     *
     * @param figure the figure
     * @return the author's own words if there are any, else sentences computed from the data
     */
    public static String of(Figure figure) {
        if (!figure.writtenText().isBlank()) {
            return figure.writtenText();
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(figure.title() + ".");
        figure.series().forEach(series -> sentences.add(sentence(figure, series)));
        figure.marks()
                .forEach(
                        mark ->
                                sentences.add(
                                        "A line marks %s at %s."
                                                .formatted(
                                                        mark.label(),
                                                        PageNumber.of(
                                                                mark.at(),
                                                                axisOf(figure, mark).unit()))));
        return String.join(" ", sentences);
    }

    private static Axis axisOf(Figure figure, coldwright.figure.Mark mark) {
        return mark.across() == coldwright.figure.Mark.Across.X ? figure.x() : figure.y();
    }

    private static String sentence(Figure figure, Series series) {
        if (series instanceof Series.Curve curve) {
            return course(figure, curve.name(), curve.x(), curve.y());
        }
        if (series instanceof Series.Dots dots) {
            return course(figure, dots.name(), dots.x(), dots.y());
        }
        if (series instanceof Series.Band band) {
            return course(figure, band.name() + ", lower edge", band.x(), band.low())
                    + " "
                    + course(figure, band.name() + ", upper edge", band.x(), band.high());
        }
        if (series instanceof Series.Bars bars) {
            List<String> each = new ArrayList<>();
            for (int i = 0; i < bars.size(); i++) {
                each.add(
                        bars.words().get(i)
                                + " "
                                + PageNumber.of(bars.values().at(i), figure.y().unit()));
            }
            return "%s: %s.".formatted(bars.name(), String.join(", ", each));
        }
        throw new AssertionError(series);
    }

    private static String course(Figure figure, String name, Numbers x, Numbers y) {
        int first = 0;
        while (first < y.size() && !Double.isFinite(y.at(first))) {
            first++;
        }
        int last = y.size() - 1;
        while (last > first && !Double.isFinite(y.at(last))) {
            last--;
        }
        if (first >= y.size()) {
            return "%s has no values.".formatted(name);
        }
        double from = y.at(first);
        double to = y.at(last);
        String verb = to > from ? "rises" : to < from ? "falls" : "goes";
        return "%s: %s %s from %s to %s as %s goes from %s to %s."
                .formatted(
                        name,
                        figure.y().label().isEmpty() ? "it" : figure.y().label(),
                        verb,
                        PageNumber.of(rounded(from), figure.y().unit()),
                        PageNumber.of(rounded(to), figure.y().unit()),
                        figure.x().label().isEmpty() ? "the level axis" : figure.x().label(),
                        PageNumber.of(rounded(x.at(first)), figure.x().unit()),
                        PageNumber.of(rounded(x.at(last)), figure.x().unit()));
    }

    /** Three digits are enough to hear. */
    private static double rounded(double value) {
        if (value == 0 || !Double.isFinite(value)) {
            return value;
        }
        return new java.math.BigDecimal(value).round(new java.math.MathContext(3)).doubleValue();
    }
}
