package coldwright.figure;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
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

    private static void sameSize(String name, NumberColumn x, NumberColumn y) {
        if (x.size() != y.size()) {
            throw new IllegalArgumentException(
                    "the series \"%s\" has %d x values and %d y values; they must be as many"
                            .formatted(name, x.size(), y.size()));
        }
    }
}
