package coldwright.figure;

import java.util.List;

/** One set of data in a figure. */
public sealed interface Series {
    /**
     * What the legend calls it.
     *
     * @return its name, unique in its figure
     */
    String name();

    /**
     * How many points it has.
     *
     * @return the count
     */
    int size();

    /**
     * A line through points.
     *
     * @param name what the legend calls it
     * @param x where each point stands
     * @param y its value
     */
    record Curve(String name, NumberColumn x, NumberColumn y) implements Series {
        /** Checks that all have the same size. */
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
     * @param name what the legend calls them
     * @param x where each point stands
     * @param y its value
     */
    record Dots(String name, NumberColumn x, NumberColumn y) implements Series {
        /** Checks that all have the same size. */
        public Dots {
            Series.sameSize(name, x, y);
        }

        @Override
        public int size() {
            return x.size();
        }
    }

    /**
     * A band between a low and a high line: what the science leaves open.
     *
     * @param name what the legend calls it
     * @param x where each pair stands
     * @param low the lower line
     * @param high the upper line
     */
    record Band(String name, NumberColumn x, NumberColumn low, NumberColumn high)
            implements Series {
        /** Checks that all have the same size. */
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
     * Bars, one for each word.
     *
     * @param name what the legend calls them
     * @param words what stands under each bar
     * @param values how high each is
     */
    record Bars(String name, List<String> words, NumberColumn values) implements Series {
        /** Checks and copies what is given. */
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
