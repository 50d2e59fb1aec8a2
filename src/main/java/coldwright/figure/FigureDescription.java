package coldwright.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;

/**
 * Alternative text for a figure, computed from the data.
 *
 * <pre>
 * Sucrose against ice. Freezing point (°C) against sucrose (% by mass).
 * sucrose: falls from 0 to −3.4 °C as sucrose rises from 0 to 40 % by mass.
 * </pre>
 */
public final class FigureDescription {
    /** From this number of bars on, only the highest and the lowest are described. */
    private static final int MANY_BARS = 12;

    private FigureDescription() {}

    /**
     * {@return a description of a figure or a drawing: the author's own text if it has one, else
     * sentences computed from the data}
     */
    public static String describe(Exhibit exhibit) {
        if (exhibit instanceof Figure figure) {
            return describe(figure);
        }
        if (exhibit instanceof Drawing drawing) {
            return DrawingDescription.describe(drawing);
        }
        throw new AssertionError(exhibit.getClass());
    }

    /**
     * {@return the time of one moment of a drawing, such as {@code 7 d}, as precise as the
     * intervals between moments; empty if time has no unit}
     *
     * @param moment which moment, from 0
     */
    public static String time(Drawing drawing, int moment) {
        return DrawingDescription.time(drawing, moment);
    }

    /** {@return a description: the author's own text if there is one, else one from the data} */
    public static String describe(Figure figure) {
        if (!figure.writtenText().isBlank()) {
            return figure.writtenText();
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(figure.title());
        sentences.add(axes(figure));
        if (figure.series().isEmpty()) {
            sentences.add("Nothing is drawn yet");
        }
        for (Series series : figure.series()) {
            sentences.add(named(series, describe(series, figure)));
        }
        sentences.addAll(CurveCrossings.describe(figure));
        for (ReferenceLine mark : figure.marks()) {
            sentences.add(marked(mark, figure));
        }
        StringJoiner text = new StringJoiner(" ");
        for (String sentence : sentences) {
            if (!sentence.isBlank()) {
                String end = sentence.strip().matches("(?s).*[.!?…]") ? "" : ".";
                text.add(sentence.strip() + end);
            }
        }
        return text.toString();
    }

    /**
     * {@return a description of one curve on a figure's axes, such as {@code falls from 0 to −3.4
     * °C as sucrose rises from 0 to 40 %}}
     */
    public static String course(Series.Curve curve, Figure figure) {
        return CurveShape.of(curve.x(), curve.y()).describe(figure);
    }

    private static String axes(Figure figure) {
        String y = axis(figure.y());
        String x = axis(figure.x());
        if (x.isEmpty() || y.isEmpty()) {
            return capital(x + y);
        }
        return capital(y) + " against " + x;
    }

    private static String axis(Axis axis) {
        return axis.unit().isBlank() ? axis.label() : axis.label() + " (" + axis.unit() + ")";
    }

    private static String capital(String text) {
        if (text.isEmpty()) {
            return text;
        }
        int first = text.offsetByCodePoints(0, 1);
        return text.substring(0, first).toUpperCase(java.util.Locale.ROOT) + text.substring(first);
    }

    private static String named(Series series, String text) {
        return series.name().isBlank() ? capital(text) : series.name() + ": " + text;
    }

    private static String describe(Series series, Figure figure) {
        if (series instanceof Series.Curve curve) {
            return CurveShape.of(curve.x(), curve.y()).describe(figure);
        } else if (series instanceof Series.Dots dots) {
            return points(dots, figure);
        } else if (series instanceof Series.Band band) {
            return band(band, figure);
        } else if (series instanceof Series.Bars bars) {
            return bars(bars, figure.y());
        }
        throw new AssertionError(series.getClass());
    }

    private static String points(Series.Dots dots, Figure figure) {
        CurveShape curveShape = CurveShape.of(dots.x(), dots.y());
        String count =
                curveShape.size() == 1 ? "one point" : "%d points".formatted(curveShape.size());
        return curveShape.size() == 0
                ? "no points"
                : curveShape.size() == 1
                        ? "%s, %s at %s"
                                .formatted(
                                        count,
                                        curveShape.y(0, figure.y()),
                                        curveShape.x(0, figure.x()))
                        : "%s, from %s to %s, between %s and %s"
                                .formatted(
                                        count,
                                        curveShape.xNumber(curveShape.leftmost()),
                                        curveShape.x(curveShape.rightmost(), figure.x()),
                                        curveShape.yNumber(curveShape.lowest()),
                                        curveShape.y(curveShape.highest(), figure.y()));
    }

    private static String band(Series.Band band, Figure figure) {
        CurveShape low = CurveShape.of(band.x(), band.low());
        CurveShape high = CurveShape.of(band.x(), band.high());
        if (low.size() == 0 || high.size() == 0) {
            return "a band without points";
        }
        return "a band, from %s–%s at %s to %s–%s at %s"
                .formatted(
                        low.yNumber(0),
                        high.y(0, figure.y()),
                        low.x(0, figure.x()),
                        low.yNumber(low.size() - 1),
                        high.y(high.size() - 1, figure.y()),
                        low.x(low.size() - 1, figure.x()));
    }

    private static String bars(Series.Bars bars, Axis axis) {
        List<Integer> drawn = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < bars.size(); i++) {
            double value = bars.values().at(i);
            if (Double.isFinite(value)) {
                drawn.add(i);
                least = Math.min(least, value);
                most = Math.max(most, value);
            }
        }
        if (drawn.isEmpty()) {
            return "no bars";
        }
        double width = Math.max(Math.abs(least), Math.abs(most)) / 5;
        StringJoiner told = new StringJoiner(", ");
        for (int i : drawn) {
            double value = bars.values().at(i);
            if (drawn.size() < MANY_BARS || value == least || value == most) {
                told.add(bars.words().get(i) + " " + TypesetNumber.plain(value, width));
            }
        }
        String unit = axis.unit().isBlank() ? "" : " " + axis.unit();
        String all = told + unit;
        return drawn.size() < MANY_BARS ? all : drawn.size() + " bars, of these " + all;
    }

    private static String marked(ReferenceLine mark, Figure figure) {
        Axis axis = mark.across() == ReferenceLine.Across.X ? figure.x() : figure.y();
        String at = TypesetNumber.plain(mark.at(), Math.abs(mark.at()));
        String unit = axis.unit().isBlank() ? "" : " " + axis.unit();
        String name = mark.label().isBlank() ? axis.label() : mark.label();
        return "Marked: " + name + " at " + at + unit;
    }
}
