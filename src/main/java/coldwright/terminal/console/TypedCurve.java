package coldwright.terminal.console;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.figure.Figure;
import coldwright.figure.NumberColumn;
import coldwright.figure.Series;
import coldwright.lesson.ExpectedAnswer;
import coldwright.science.Require;
import coldwright.workbook.work.LearnerAnswer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A few points of a curve, x then y, as typed. */
public record TypedCurve(ExpectedAnswer.Curve axes, List<LearnerAnswer.Point> points) {
    private static final int MOST_POINTS = 20;
    private static final String SIGN = "([+−–-]?\\d{1,9}(?:";
    private static final String PLAIN = SIGN + "\\.\\d{1,9})?)";
    private static final String DECIMAL_COMMA = SIGN + "[.,]\\d{1,9})?)";

    /**
     * Points such as {@code 10 −0.6; 20 −1.3}. With points between them or in their numbers, commas
     * may part the points or the numbers of a point: {@code 10 −0.6, 20 −1.3} and {@code 10, −0.6;
     * 20, −1.3}. Otherwise a comma is decimal.
     */
    private static final List<Pattern> FORMS =
            Stream.of(
                            DECIMAL_COMMA + "\\s+" + DECIMAL_COMMA + "(?:\\s*;\\s*|\\s*$)",
                            PLAIN + "\\s+" + PLAIN + "(?:\\s*[,;]\\s*|\\s*$)",
                            PLAIN + "\\s*,\\s*" + PLAIN + "(?:\\s*;\\s*|\\s*$)",
                            PLAIN + "\\s*,\\s*" + PLAIN + "(?:\\s*,\\s*|\\s*$)")
                    .map(Pattern::compile)
                    .toList();

    /** The expected input, such as {@code points of the curve: sugar in %, then ice in %}. */
    public static String form(ExpectedAnswer.Curve axes) {
        return text("form.curve", named(axes.level()), named(axes.upright()), example(axes));
    }

    /** Two points at half height: they show the form and give no hint. */
    private static String example(ExpectedAnswer.Curve axes) {
        String height = " " + Require.format(at(axes.upright(), 0.5));
        return Require.format(at(axes.level(), 0.25))
                + height
                + "; "
                + Require.format(at(axes.level(), 0.5))
                + height;
    }

    /** A value on a scale, rounded to what can be read off it. */
    private static double at(ExpectedAnswer.Scale scale, double share) {
        double place = scale.from() + share * (scale.to() - scale.from());
        double tenth = unit((scale.to() - scale.from()) / 10);
        return Math.rint(place / tenth) * tenth;
    }

    private static double unit(double width) {
        return Math.pow(10, Math.floor(Math.log10(width)));
    }

    /** Explains in one sentence why {@link #read} does not accept a line. */
    public static String refusal(ExpectedAnswer.Curve axes, String line) {
        Optional<List<LearnerAnswer.Point>> points = points(line);
        return points.isPresent()
                ? text("curve.off-axes", line, reach(axes.level()), reach(axes.upright()))
                : text("curve.unfit", line, MOST_POINTS, example(axes));
    }

    private static String reach(ExpectedAnswer.Scale scale) {
        String to = Require.format(scale.to()) + (scale.unit().isEmpty() ? "" : " " + scale.unit());
        return text("curve.range", scale.label(), Require.format(scale.from()), to);
    }

    private static String named(ExpectedAnswer.Scale scale) {
        return scale.unit().isEmpty()
                ? scale.label()
                : text("curve.unit", scale.label(), scale.unit());
    }

    /** Reads points; empty if a pair is malformed or off the axes. */
    public static Optional<TypedCurve> read(ExpectedAnswer.Curve axes, String line) {
        return points(line)
                .filter(
                        all ->
                                all.stream()
                                        .allMatch(
                                                one ->
                                                        isOn(axes.level(), one.x())
                                                                && isOn(axes.upright(), one.y())))
                .map(all -> new TypedCurve(axes, all));
    }

    private static Optional<List<LearnerAnswer.Point>> points(String line) {
        for (Pattern form : FORMS) {
            List<LearnerAnswer.Point> points = new ArrayList<>();
            Matcher point = form.matcher(line.strip());
            while (point.lookingAt()) {
                points.add(new LearnerAnswer.Point(number(point.group(1)), number(point.group(2))));
                point.region(point.end(), point.regionEnd());
            }
            if (point.regionStart() == point.regionEnd()
                    && !points.isEmpty()
                    && points.size() <= MOST_POINTS) {
                return Optional.of(points);
            }
        }
        return Optional.empty();
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(',', '.').replaceAll("[−–]", "-"));
    }

    private static boolean isOn(ExpectedAnswer.Scale scale, double value) {
        return scale.from() <= value && value <= scale.to();
    }

    /** The points as a saved answer. */
    public LearnerAnswer answer() {
        return new LearnerAnswer.Curve(points);
    }

    public String words() {
        return points.stream()
                .map(point -> words(point.x(), point.y()))
                .collect(Collectors.joining(", "));
    }

    /** The first curve that a run drew. */
    public static Optional<Series.Curve> firstOf(List<Figure> figures) {
        return figures.stream()
                .flatMap(figure -> figure.series().stream())
                .filter(Series.Curve.class::isInstance)
                .map(Series.Curve.class::cast)
                .findFirst();
    }

    /** The values of a computed curve at the points; empty if it ends before all of them. */
    public String beside(Series.Curve curve) {
        return points.stream()
                .map(LearnerAnswer.Point::x)
                .filter(level -> height(curve, level).isPresent())
                .map(level -> words(level, height(curve, level).getAsDouble()))
                .collect(Collectors.joining(", "));
    }

    private String words(double level, double upright) {
        return text(
                "curve.point", describe(level, axes.level()), describe(upright, axes.upright()));
    }

    private static String describe(double value, ExpectedAnswer.Scale scale) {
        double unit = unit((scale.to() - scale.from()) / 1000);
        String number = Require.format(Math.rint(value / unit) * unit);
        return scale.unit().isEmpty() ? number : number + " " + scale.unit();
    }

    private static OptionalDouble height(Series.Curve curve, double level) {
        NumberColumn x = curve.x();
        NumberColumn y = curve.y();
        for (int i = 1; i < x.size(); i++) {
            double share = (level - x.at(i - 1)) / (x.at(i) - x.at(i - 1));
            if (share >= 0 && share <= 1) {
                return OptionalDouble.of(y.at(i - 1) + share * (y.at(i) - y.at(i - 1)));
            }
        }
        return OptionalDouble.empty();
    }
}
