package coldwright.paint.style;

/** The range of an axis: lower and upper end, in its unit. */
public record ValueSpan(double from, double to) {
    /** The largest value drawn: beyond it differences of doubles overflow. */
    public static final double FARTHEST = 1e300;

    /** The smallest relative difference of two doubles that can be shown reliably. */
    private static final double FINEST = 1e-9;

    public ValueSpan {
        if (!(from < to) || to - from == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(
                    "the span runs from %s to %s; its first end must be the lower one"
                            .formatted(from, to));
        }
    }

    /** A span that contains both values and is wide enough to be drawn, even if they are equal. */
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

    public double width() {
        return to - from;
    }

    /** The value at a share of the span, 0 at the lower end and 1 at the upper. */
    public double at(double share) {
        return from + width() * share;
    }

    /** The share of the span at which a value is. */
    public double shareOf(double value) {
        return (value - from) / width();
    }

    /** Whether a value is within the span or at its ends. */
    public boolean contains(double value) {
        return value >= from && value <= to;
    }
}
