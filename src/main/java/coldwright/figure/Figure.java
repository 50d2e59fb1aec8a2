package coldwright.figure;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * A chart as plain data.
 *
 * <pre>{@code
 * Figure.of("Sugar against ice")
 *       .x("sucrose", "% by mass").y("freezing point", "°C")
 *       .line("sucrose", 0, 40, w -> Mix.of(grams(100 - w, WATER), grams(w, SUCROSE)).initialFreezingPointC())
 *       .source("CRC Handbook of Chemistry and Physics, 102nd ed.")
 * }</pre>
 *
 * Immutable: each call returns a new figure. A figure has either bars, or box plots, or everything
 * else.
 *
 * @param title what it shows
 * @param x the x axis
 * @param y the y axis
 * @param series the data, drawn in this order
 * @param marks reference lines
 * @param writtenText alternative text by the author; empty to have it computed from the data
 * @param sources sources of data or model
 */
public record Figure(
        String title,
        Axis x,
        Axis y,
        List<Series> series,
        List<ReferenceLine> marks,
        String writtenText,
        List<String> sources)
        implements Exhibit {

    /** How many points a function is sampled at. */
    public static final int POINTS_OF_A_FUNCTION = 200;

    public Figure {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(writtenText, "writtenText");
        series = List.copyOf(series);
        marks = List.copyOf(marks);
        sources = List.copyOf(sources);
        Set<String> names = new HashSet<>();
        for (Series one : series) {
            if (!names.add(one.name())) {
                throw new IllegalArgumentException(
                        "the figure \"%s\" has two series called \"%s\"; each needs a name of its own"
                                .formatted(title, one.name()));
            }
        }
        alone(title, series, Series.Bars.class, "bars");
        alone(title, series, Series.BoxPlot.class, "box plots");
    }

    /** An empty figure with a title. */
    public static Figure of(String title) {
        return new Figure(title, Axis.BLANK, Axis.BLANK, List.of(), List.of(), "", List.of());
    }

    /**
     * Names the x axis.
     *
     * @param label its quantity
     * @param unit its unit, may be empty
     */
    public Figure x(String label, String unit) {
        return on(Axis.of(label, unit), y);
    }

    /**
     * Names the y axis.
     *
     * @param label its quantity
     * @param unit its unit, may be empty
     */
    public Figure y(String label, String unit) {
        return on(x, Axis.of(label, unit));
    }

    /**
     * Fixes the ends of the x axis.
     *
     * @param from lower end, in the axis' unit
     * @param to upper end, in the axis' unit
     */
    public Figure xBetween(double from, double to) {
        return on(x.between(from, to), y);
    }

    /**
     * Fixes the ends of the y axis.
     *
     * @param from lower end, in the axis' unit
     * @param to upper end, in the axis' unit
     */
    public Figure yBetween(double from, double to) {
        return on(x, y.between(from, to));
    }

    /**
     * Adds a line through points.
     *
     * @param name the name in the legend
     * @param xs the x values of the points
     * @param ys their y values
     */
    public Figure line(String name, double[] xs, double[] ys) {
        return plus(new Series.Curve(name, NumberColumn.of(xs), NumberColumn.of(ys)));
    }

    /**
     * Adds a line given as a function.
     *
     * @param name the name in the legend
     * @param from where it begins on the x axis
     * @param to where it ends
     * @param function gives the y value at each x value
     */
    public Figure line(String name, double from, double to, DoubleUnaryOperator function) {
        NumberColumn xs = NumberColumn.spaced(from, to, POINTS_OF_A_FUNCTION);
        return plus(new Series.Curve(name, xs, xs.map(function)));
    }

    /**
     * Adds single points.
     *
     * @param name the name in the legend
     * @param xs their x values
     * @param ys their y values
     */
    public Figure points(String name, double[] xs, double[] ys) {
        return plus(new Series.Dots(name, NumberColumn.of(xs), NumberColumn.of(ys)));
    }

    /**
     * Adds a band between two lines given as functions.
     *
     * @param name the name in the legend
     * @param xs the x values
     * @param low gives the lower value at each x value
     * @param high gives the upper value at each x value
     */
    public Figure band(
            String name, double[] xs, DoubleUnaryOperator low, DoubleUnaryOperator high) {
        NumberColumn places = NumberColumn.of(xs);
        return plus(new Series.Band(name, places, places.map(low), places.map(high)));
    }

    /**
     * Adds labelled bars.
     *
     * @param name the name in the legend
     * @param words the label under each bar
     * @param values the height of each bar
     */
    public Figure bars(String name, List<String> words, double[] values) {
        return plus(new Series.Bars(name, words, NumberColumn.of(values)));
    }

    /**
     * Adds a heat map of a function and fits the axes to it.
     *
     * @param name the quantity of the values with its unit, such as {@code ice, %}
     * @param xs the x values of the cells' middles, rising by even steps
     * @param ys their y values, rising by even steps
     * @param function gives the value at an x and a y value
     */
    public Figure heatMap(String name, double[] xs, double[] ys, DoubleBinaryOperator function) {
        int cells = xs.length * ys.length;
        NumberColumn x = NumberColumn.of(range(cells).map(i -> xs[(int) i % xs.length]).toArray());
        NumberColumn y = NumberColumn.of(range(cells).map(i -> ys[(int) i / xs.length]).toArray());
        NumberColumn values =
                NumberColumn.of(
                        range(cells)
                                .map(i -> function.applyAsDouble(x.at((int) i), y.at((int) i)))
                                .toArray());
        Figure with = plus(new Series.HeatMap(name, x, y, values));
        NumberColumn across = Series.HeatMap.edges(x);
        NumberColumn up = Series.HeatMap.edges(y);
        return with.xBetween(across.at(0), across.at(1)).yBetween(up.at(0), up.at(1));
    }

    /**
     * Adds a histogram of values, from the least to the largest.
     *
     * @param name the name in the legend
     * @param values the values, on the x axis; what isn't finite is left out
     * @param bins the number of bins, 1 or more
     */
    public Figure histogram(String name, double[] values, int bins) {
        DoubleSummaryStatistics range =
                DoubleStream.of(values).filter(Double::isFinite).summaryStatistics();
        double more = range.getMin() == range.getMax() ? 0.5 : 0;
        double from = range.getMin() - more;
        double to = range.getMax() + more;
        double[] counts = new double[Math.max(0, bins)];
        for (double value : counts.length == 0 ? new double[0] : values) {
            if (Double.isFinite(value)) {
                counts[(int) Math.min(bins - 1, (value - from) / (to - from) * bins)]++;
            }
        }
        return plus(new Series.Histogram(name, from, to, NumberColumn.of(counts)));
    }

    /**
     * Adds a box plot of values.
     *
     * @param name the label under the box
     * @param values the values, on the y axis
     */
    public Figure boxPlot(String name, double[] values) {
        return plus(new Series.BoxPlot(name, NumberColumn.of(values)));
    }

    /**
     * Adds a vertical line at an x value.
     *
     * @param label what it marks
     * @param at the x value, in its axis' unit
     */
    public Figure markX(String label, double at) {
        return plus(new ReferenceLine(label, ReferenceLine.Across.X, at));
    }

    /**
     * Adds a horizontal line at a y value.
     *
     * @param label what it marks
     * @param at the y value, in its axis' unit
     */
    public Figure markY(String label, double at) {
        return plus(new ReferenceLine(label, ReferenceLine.Across.Y, at));
    }

    /** Adds a source: author, year, title, table. */
    public Figure source(String source) {
        List<String> all = new ArrayList<>(sources);
        all.add(source);
        return new Figure(title, x, y, series, marks, writtenText, all);
    }

    /** Sets the alternative text, in place of the text computed from the data. */
    public Figure text(String text) {
        return new Figure(title, x, y, series, marks, text, sources);
    }

    @Override
    public long size() {
        return series.stream().mapToLong(Series::size).sum();
    }

    /** Adds a series. */
    public Figure plus(Series one) {
        List<Series> all = new ArrayList<>(series);
        all.add(one);
        return new Figure(title, x, y, all, marks, writtenText, sources);
    }

    private Figure plus(ReferenceLine mark) {
        List<ReferenceLine> all = new ArrayList<>(marks);
        all.add(mark);
        return new Figure(title, x, y, series, all, writtenText, sources);
    }

    private static DoubleStream range(int size) {
        return IntStream.range(0, size).asDoubleStream();
    }

    private static void alone(String title, List<Series> all, Class<?> kind, String name) {
        long count = all.stream().filter(kind::isInstance).count();
        if (count > 0 && count < all.size()) {
            throw new IllegalArgumentException(
                    "the figure \"%s\" mixes %s with other data; give each a figure of its own"
                            .formatted(title, name));
        }
    }

    private Figure on(Axis newX, Axis newY) {
        return new Figure(title, newX, newY, series, marks, writtenText, sources);
    }
}
