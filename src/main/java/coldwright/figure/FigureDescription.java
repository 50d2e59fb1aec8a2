package coldwright.figure;

import coldwright.words.Words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

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

    /** A text of this package in the language shown. */
    static String text(String key, Object... values) {
        return Words.of("figure").shown(key, values);
    }

    /**
     * {@return a description of a figure or a drawing: the author's own text if it has one, else
     * sentences computed from the data}
     */
    public static String describe(Exhibit exhibit) {
        if (!exhibit.writtenText().isBlank()) {
            return exhibit.writtenText();
        }
        List<String> sentences = new ArrayList<>(List.of(exhibit.title()));
        if (exhibit instanceof Figure figure) {
            addSentences(figure, sentences);
        } else if (exhibit instanceof Drawing drawing) {
            sentences.addAll(DrawingDescription.sentences(drawing));
        } else {
            throw new AssertionError(exhibit.getClass());
        }
        return sentences.stream()
                .map(String::strip)
                .filter(sentence -> !sentence.isEmpty())
                .map(sentence -> sentence.matches("(?s).*[.!?…]") ? sentence : sentence + ".")
                .collect(Collectors.joining(" "));
    }

    private static void addSentences(Figure figure, List<String> sentences) {
        sentences.add(axes(figure));
        if (figure.series().isEmpty()) {
            sentences.add(text("nothing"));
        }
        for (Series series : figure.series()) {
            String text = describe(series, figure);
            sentences.add(series.name().isBlank() ? capital(text) : series.name() + ": " + text);
        }
        sentences.addAll(CurveCrossings.describe(figure));
        for (ReferenceLine mark : figure.marks()) {
            sentences.add(marked(mark, figure));
        }
    }

    /**
     * {@return a description of one curve on a figure's axes, such as {@code falls from 0 to −3.4
     * °C as sucrose rises from 0 to 40 %}}
     */
    public static String course(Series.Curve curve, Figure figure) {
        return CurveShape.of(curve.x(), curve.y(), figure).describe();
    }

    private static String axes(Figure figure) {
        String y = axis(figure.y());
        String x = axis(figure.x());
        return x.isEmpty() || y.isEmpty() ? capital(x + y) : text("axes", capital(y), x);
    }

    private static String axis(Axis axis) {
        return axis.unit().isBlank() ? axis.label() : axis.label() + " (" + axis.unit() + ")";
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private static String describe(Series series, Figure figure) {
        if (series instanceof Series.Curve curve) {
            return CurveShape.of(curve.x(), curve.y(), figure).describe();
        } else if (series instanceof Series.Dots dots) {
            return points(dots, figure);
        } else if (series instanceof Series.Band band) {
            return band(band, figure);
        } else if (series instanceof Series.Bars bars) {
            return bars(bars, figure.y());
        } else if (series instanceof Series.HeatMap map) {
            return heatMap(map, figure);
        } else if (series instanceof Series.Histogram histogram) {
            return histogram(histogram, figure.x());
        } else if (series instanceof Series.BoxPlot box) {
            return boxPlot(box, figure.y());
        }
        throw new AssertionError(series.getClass());
    }

    private static String points(Series.Dots dots, Figure figure) {
        CurveShape shape = CurveShape.of(dots.x(), dots.y(), figure);
        return switch (shape.size()) {
            case 0 -> text("points.none");
            case 1 -> text("points.one", shape.point(0));
            default ->
                    text(
                            "points",
                            shape.size(),
                            shape.xNumber(shape.xRange().getMin()),
                            figure.x().with(shape.xNumber(shape.xRange().getMax())),
                            shape.yNumber(shape.yRange().getMin()),
                            figure.y().with(shape.yNumber(shape.yRange().getMax())));
        };
    }

    private static String band(Series.Band band, Figure figure) {
        CurveShape low = CurveShape.of(band.x(), band.low(), figure);
        CurveShape high = CurveShape.of(band.x(), band.high(), figure);
        if (low.size() == 0 || high.size() == 0) {
            return text("band.none");
        }
        int last = low.size() - 1;
        return text(
                "band",
                low.yNumber(low.y().at(0)),
                high.y(0),
                low.x(0),
                low.yNumber(low.y().at(last)),
                high.y(high.size() - 1),
                low.x(last));
    }

    private static String bars(Series.Bars bars, Axis axis) {
        int[] drawn =
                IntStream.range(0, bars.size())
                        .filter(i -> Double.isFinite(bars.values().at(i)))
                        .toArray();
        DoubleSummaryStatistics range =
                IntStream.of(drawn).mapToDouble(bars.values()::at).summaryStatistics();
        double width = Math.max(Math.abs(range.getMin()), Math.abs(range.getMax())) / 5;
        boolean all = drawn.length < MANY_BARS;
        List<String> values = new ArrayList<>();
        for (int i : drawn) {
            double value = bars.values().at(i);
            if (all || value == range.getMin() || value == range.getMax()) {
                values.add(bars.words().get(i) + " " + TypesetNumber.plain(value, width));
            }
        }
        String described = axis.with(String.join(text("bars.between"), values));
        return values.isEmpty()
                ? text("bars.none")
                : all ? described : text("bars.many", drawn.length, described);
    }

    private static String heatMap(Series.HeatMap map, Figure figure) {
        List<Integer> order =
                IntStream.range(0, map.size())
                        .filter(i -> Double.isFinite(map.values().at(i)))
                        .boxed()
                        .sorted(Comparator.comparingDouble(map.values()::at))
                        .toList();
        if (order.isEmpty()) {
            return text("map.none");
        }
        int columns = map.x().distinct().size();
        return text(
                "map",
                columns,
                map.size() / columns,
                cell(map, order.get(0), figure),
                cell(map, order.get(order.size() - 1), figure));
    }

    private static String cell(Series.HeatMap map, int i, Figure figure) {
        CurveShape middles = CurveShape.of(map.x(), map.y(), figure);
        return text(
                "map.cell",
                TypesetNumber.plain(
                        map.values().at(i), map.range().getMax() - map.range().getMin()),
                middles.x(i),
                middles.y(i));
    }

    private static String histogram(Series.Histogram histogram, Axis axis) {
        double[] counts = histogram.counts().toArray();
        double most = Arrays.stream(counts).max().orElse(0);
        int fullest =
                IntStream.range(0, counts.length)
                        .filter(i -> counts[i] == most)
                        .findFirst()
                        .orElse(0);
        double width = (histogram.to() - histogram.from()) / counts.length;
        double from = histogram.from() + fullest * width;
        return text(
                "histogram",
                Arrays.stream(counts).sum(),
                counts.length,
                TypesetNumber.plain(histogram.from(), width),
                axis.with(TypesetNumber.plain(histogram.to(), width)),
                most,
                TypesetNumber.plain(from, width),
                axis.with(TypesetNumber.plain(from + width, width)));
    }

    private static String boxPlot(Series.BoxPlot box, Axis axis) {
        double width = box.quantile(1) - box.quantile(0);
        return box.size() == 0
                ? text("box.none")
                : text(
                        "box",
                        box.size(),
                        TypesetNumber.plain(box.quantile(0), width),
                        axis.with(TypesetNumber.plain(box.quantile(1), width)),
                        TypesetNumber.plain(box.quantile(0.5), width),
                        TypesetNumber.plain(box.quantile(0.25), width),
                        TypesetNumber.plain(box.quantile(0.75), width));
    }

    private static String marked(ReferenceLine mark, Figure figure) {
        Axis axis = mark.across() == ReferenceLine.Across.X ? figure.x() : figure.y();
        String at = TypesetNumber.plain(mark.at(), Math.abs(mark.at()));
        String name = mark.label().isBlank() ? axis.label() : mark.label();
        return text("marked", name, axis.with(at));
    }
}
