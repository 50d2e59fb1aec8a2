package coldwright.figure;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** One set of data in a figure. */
public sealed interface Series {
    /** {@return the name in the legend, unique within the figure} */
    String name();

    /** {@return the x values of the points; of bars, their indexes} */
    NumberColumn x();

    /** {@return the y values, in one column or, of a band, two} */
    List<NumberColumn> columns();

    /** {@return the same series with other numbers} */
    Series map(DoubleUnaryOperator x, DoubleUnaryOperator y);

    /** {@return the number of points} */
    default int size() {
        return columns().get(0).size();
    }

    /**
     * A line through points.
     *
     * @param name the name in the legend
     * @param x the x values of the points
     * @param y their y values
     */
    record Curve(String name, NumberColumn x, NumberColumn y) implements Series {
        public Curve {
            Series.sameSize(name, x, y);
        }

        @Override
        public List<NumberColumn> columns() {
            return List.of(y);
        }

        @Override
        public Series map(DoubleUnaryOperator toX, DoubleUnaryOperator toY) {
            return new Curve(name, x.map(toX), y.map(toY));
        }
    }

    /**
     * Single points, such as measured ones.
     *
     * @param name the name in the legend
     * @param x the x values of the points
     * @param y their y values
     */
    record Dots(String name, NumberColumn x, NumberColumn y) implements Series {
        public Dots {
            Series.sameSize(name, x, y);
        }

        @Override
        public List<NumberColumn> columns() {
            return List.of(y);
        }

        @Override
        public Series map(DoubleUnaryOperator toX, DoubleUnaryOperator toY) {
            return new Dots(name, x.map(toX), y.map(toY));
        }
    }

    /**
     * A band between a low and a high line: the range of uncertainty.
     *
     * @param name the name in the legend
     * @param x the x values
     * @param low the lower line
     * @param high the upper line
     */
    record Band(String name, NumberColumn x, NumberColumn low, NumberColumn high)
            implements Series {
        public Band {
            Series.sameSize(name, x, low);
            Series.sameSize(name, x, high);
        }

        @Override
        public List<NumberColumn> columns() {
            return List.of(low, high);
        }

        @Override
        public Series map(DoubleUnaryOperator toX, DoubleUnaryOperator toY) {
            return new Band(name, x.map(toX), low.map(toY), high.map(toY));
        }
    }

    /**
     * Labelled bars.
     *
     * @param name the name in the legend
     * @param words the label under each bar
     * @param values the height of each bar
     */
    record Bars(String name, List<String> words, NumberColumn values) implements Series {
        public Bars {
            words = List.copyOf(words);
            if (words.size() != values.size()) {
                throw new IllegalArgumentException(
                        "the bars \"%s\" have %d words and %d values; they must be as many"
                                .formatted(name, words.size(), values.size()));
            }
        }

        @Override
        public NumberColumn x() {
            return NumberColumn.of(IntStream.range(0, words.size()).asDoubleStream().toArray());
        }

        @Override
        public List<NumberColumn> columns() {
            return List.of(values);
        }

        @Override
        public Series map(DoubleUnaryOperator toX, DoubleUnaryOperator toY) {
            return new Bars(name, words, values.map(toY));
        }
    }

    /**
     * A heat map: cells coloured by a value, on a grid of x and y values at even distances.
     *
     * @param name the quantity of the values with its unit, such as {@code ice, %}
     * @param x the x value of each cell's middle, row by row from the lowest y
     * @param y the y value of each cell's middle
     * @param values the value of each cell
     */
    record HeatMap(String name, NumberColumn x, NumberColumn y, NumberColumn values)
            implements Series {
        public HeatMap {
            Series.sameSize(name, x, y);
            Series.sameSize(name, x, values);
            if (x.distinct().size() * y.distinct().size() != x.size()
                    || x.distinct().size() < 2
                    || y.distinct().size() < 2) {
                throw new IllegalArgumentException(
                        "the heat map \"%s\" has %d cells, which aren't a grid of two columns and rows or more"
                                .formatted(name, x.size()));
            }
        }

        @Override
        public List<NumberColumn> columns() {
            return List.of(y);
        }

        @Override
        public Series map(DoubleUnaryOperator toX, DoubleUnaryOperator toY) {
            return new HeatMap(name, x.map(toX), y.map(toY), values);
        }

        /** {@return the least and the largest value} */
        public DoubleSummaryStatistics range() {
            return DoubleStream.of(values.toArray()).filter(Double::isFinite).summaryStatistics();
        }

        /** {@return the value of the cell with a middle; NaN if there is none} */
        public double valueAt(double xMiddle, double yMiddle) {
            return IntStream.range(0, x.size())
                    .filter(i -> x.at(i) == xMiddle && y.at(i) == yMiddle)
                    .mapToDouble(values::at)
                    .findFirst()
                    .orElse(Double.NaN);
        }

        /** {@return its name with the least and the largest value, such as {@code ice, %: 3–82}} */
        public String caption() {
            double width = range().getMax() - range().getMin();
            return "%s: %s–%s"
                    .formatted(
                            name.strip(),
                            TypesetNumber.plain(range().getMin(), width),
                            TypesetNumber.plain(range().getMax(), width));
        }

        /** {@return the outer edges of the first and the last cell in a direction} */
        public static NumberColumn edges(NumberColumn middles) {
            NumberColumn all = middles.distinct();
            double half = (all.at(1) - all.at(0)) / 2;
            return NumberColumn.of(all.at(0) - half, all.at(all.size() - 1) + half);
        }
    }

    /**
     * A histogram: how many values are in each of some bins of the same width.
     *
     * @param name the name in the legend
     * @param from the lower end of the first bin, on the x axis
     * @param to the upper end of the last bin
     * @param counts the number of values in each bin
     */
    record Histogram(String name, double from, double to, NumberColumn counts) implements Series {
        public Histogram {
            if (!(from < to && Double.isFinite(to - from)) || counts.size() == 0) {
                throw new IllegalArgumentException(
                        "the histogram \"%s\" has %d bins from %s to %s; it needs one or more, and its first end must be the lower one"
                                .formatted(name, counts.size(), from, to));
            }
        }

        @Override
        public NumberColumn x() {
            double half = (to - from) / counts.size() / 2;
            return counts.size() == 1
                    ? NumberColumn.of(from + half)
                    : NumberColumn.spaced(from + half, to - half, counts.size());
        }

        @Override
        public List<NumberColumn> columns() {
            return List.of(counts);
        }

        @Override
        public Series map(DoubleUnaryOperator toX, DoubleUnaryOperator toY) {
            return new Histogram(name, toX.applyAsDouble(from), toX.applyAsDouble(to), counts);
        }
    }

    /**
     * A box plot of single values: least, lower quartile, median, upper quartile and largest.
     *
     * @param name the label under the box
     * @param values the values, on the y axis
     */
    record BoxPlot(String name, NumberColumn values) implements Series {
        @Override
        public NumberColumn x() {
            return values.map(value -> 0);
        }

        @Override
        public List<NumberColumn> columns() {
            return List.of(values);
        }

        @Override
        public Series map(DoubleUnaryOperator toX, DoubleUnaryOperator toY) {
            return new BoxPlot(name, values.map(toY));
        }

        /**
         * {@return a quantile of the values, linear between them: definition 7 of R. J. Hyndman and
         * Y. Fan, "Sample quantiles in statistical packages", The American Statistician 50, 1996,
         * which spreadsheets use}
         *
         * @param share 0 the least, 0.5 the median, 1 the largest
         */
        public double quantile(double share) {
            double[] sorted =
                    DoubleStream.of(values.toArray()).filter(Double::isFinite).sorted().toArray();
            double at = (sorted.length - 1) * share;
            int low = (int) at;
            return sorted.length == 0
                    ? Double.NaN
                    : sorted[low]
                            + (at - low)
                                    * (sorted[Math.min(low + 1, sorted.length - 1)] - sorted[low]);
        }
    }

    private static void sameSize(String name, NumberColumn x, NumberColumn y) {
        if (x.size() != y.size()) {
            throw new IllegalArgumentException(
                    "the series \"%s\" has %d x values and %d y values; they must be as many"
                            .formatted(name, x.size(), y.size()));
        }
    }
}
