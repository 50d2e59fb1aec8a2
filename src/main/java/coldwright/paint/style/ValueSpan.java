package coldwright.paint.style;

/**
 * From where to where an axis runs.
 *
 * @param from the lower end, in the axis' unit
 * @param to the upper end
 */
public record ValueSpan(double from, double to) {
    /** Where drawing ends: beyond it differences of doubles overflow. */
    public static final double FARTHEST = 1e300;

    /** The part of a value that its double can still be trusted to tell apart on a screen. */
    private static final double FINEST = 1e-9;

    /** Checks what is given. */
    public ValueSpan {
        if (!(from < to) || to - from == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(
                    "the span runs from %s to %s; its first end must be the lower one"
                            .formatted(from, to));
        }
    }

    /** A span that holds both values and is wide enough to be drawn, even if they are the same. */
    public static ValueSpan around(double a, double b) {
        double low = Math.max(-FARTHEST, Math.min(a, b));
        double high = Math.min(FARTHEST, Math.max(a, b));
        double least = FINEST * Math.max(Math.abs(low), Math.abs(high));
        if (high - low > least) {
            return new ValueSpan(low, high);
        }
        double half = low == 0 && high == 0 ? 1 : Math.max(Math.abs(low) * 0.1, Double.MIN_NORMAL);
        return new ValueSpan(low - half, high + half);
    }

    /**
     * How wide it is.
     *
     * @return the upper end less the lower
     */
    public double width() {
        return to - from;
    }

    /** The value at a share of the way, 0 at the lower end and 1 at the upper. */
    double at(double share) {
        return from + width() * share;
    }

    /** The share of the way at which a value lies. */
    public double shareOf(double value) {
        return (value - from) / width();
    }

    /**
     * Whether a value lies in it, its ends included.
     *
     * @param value in the axis' unit
     * @return true if so
     */
    public boolean contains(double value) {
        return value >= from && value <= to;
    }
}
