package coldwright.figure;

import java.util.List;

/** One set of data in a figure. */
public sealed interface Series {
    /** {@return the name in the legend, unique within the figure} */
    String name();

    /** {@return the number of points} */
    int size();

    /**
     * A line through points.
     *
     * @param name the name in the legend
     * @param x the x values of the points
     * @param y their y values
     */
    record Curve(String name, NumberColumn x, NumberColumn y) implements Series {
        /** Validates that the sizes are equal. */
        public Curve {
            Series.sameSize(name, x, y);
        }

        @Override
        public int size() {
            return x.size();
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
        /** Validates that the sizes are equal. */
        public Dots {
            Series.sameSize(name, x, y);
        }

        @Override
        public int size() {
            return x.size();
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
        /** Validates that the sizes are equal. */
        public Band {
            Series.sameSize(name, x, low);
            Series.sameSize(name, x, high);
        }

        @Override
        public int size() {
            return x.size();
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
        public int size() {
            return words.size();
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
