package coldwright.figure;

import java.util.Objects;

/**
 * One simple shape of a drawing, in the unit of its field; x increases to the right and y downwards
 * from the upper left corner. Parts outside the field aren't visible.
 */
public sealed interface Piece {
    /** {@return the number of points that count towards a drawing's limit, 1 or more} */
    default int size() {
        return 1;
    }

    /**
     * A disc.
     *
     * @param x its centre, from the left
     * @param y its centre, from the top
     * @param radius its radius, more than zero
     * @param tint its colour
     */
    record Disc(double x, double y, double radius, Tint tint) implements Piece {
        public Disc {
            Objects.requireNonNull(tint, "tint");
            finite("x", x);
            finite("y", y);
            if (!(finite("radius", radius) > 0)) {
                throw new IllegalArgumentException(
                        "radius is %s; it must be more than zero".formatted(radius));
            }
        }
    }

    /**
     * A filled polygon.
     *
     * @param x the x values of its corners, from the left; three corners or more
     * @param y the y values of its corners, from the top
     * @param tint its colour
     */
    record Outline(NumberColumn x, NumberColumn y, Tint tint) implements Piece {
        public Outline {
            Objects.requireNonNull(tint, "tint");
            if (x.size() != y.size() || x.size() < 3) {
                throw new IllegalArgumentException(
                        "an outline has %d x values and %d y values; they must be as many, and three or more"
                                .formatted(x.size(), y.size()));
            }
            for (int i = 0; i < x.size(); i++) {
                finite("x", x.at(i));
                finite("y", y.at(i));
            }
        }

        @Override
        public int size() {
            return x.size();
        }
    }

    /**
     * A horizontal band across the whole field, in one colour or a gradient of temperature.
     *
     * @param from its upper edge, from the top
     * @param to its lower edge, from the top; not above the upper one
     * @param upper its colour at the upper edge
     * @param lower its colour at the lower edge: the same, or another temperature
     */
    record Band(double from, double to, Tint upper, Tint lower) implements Piece {
        public Band {
            boolean alike = upper.role() == lower.role();
            if (!alike) {
                throw new IllegalArgumentException(
                        "a band goes from %s to %s; it can only go from one warmth to another"
                                .formatted(upper.role(), lower.role()));
            }
            if (!(finite("from", from) <= finite("to", to))) {
                throw new IllegalArgumentException(
                        "a band goes from %s to %s; its upper edge must come first"
                                .formatted(from, to));
            }
        }
    }

    /**
     * A short label, at the left edge of the field or beside a point in it.
     *
     * @param x where it begins, from the left
     * @param y its vertical centre, from the top
     * @param text a few words
     */
    record Label(double x, double y, String text) implements Piece {
        public Label {
            Objects.requireNonNull(text, "text");
            finite("x", x);
            finite("y", y);
        }
    }

    private static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "%s is %s; a drawing needs a plain number".formatted(name, value));
        }
        return value;
    }
}
