package coldwright.science;

import java.util.function.DoubleUnaryOperator;

/**
 * An uncertain value: the best figure with the lowest and the highest that its sources allow.
 *
 * @param low lowest, in the unit of whatever gives the band
 * @param middle best figure
 * @param high highest
 */
public record Band(double low, double middle, double high) {
    public Band {
        if (!(low <= middle && middle <= high)) {
            throw new IllegalArgumentException(
                    "the band %s to %s with %s in the middle isn't in order; it must rise from low to high"
                            .formatted(
                                    Require.format(low),
                                    Require.format(high),
                                    Require.format(middle)));
        }
    }

    /**
     * A band without spread.
     *
     * @param value the value
     * @return low, middle and high all the same
     */
    public static Band exactly(double value) {
        return new Band(value, value, value);
    }

    /**
     * The band times a factor.
     *
     * @param factor zero or more
     * @return every value times the factor
     */
    public Band times(double factor) {
        Require.notNegative("factor", factor, "");
        return new Band(low * factor, middle * factor, high * factor);
    }

    /**
     * Another quantity that depends on this one, rising or falling throughout.
     *
     * @param change gives it for a value of this band
     */
    public Band map(DoubleUnaryOperator change) {
        double a = change.applyAsDouble(low);
        double b = change.applyAsDouble(high);
        return new Band(Math.min(a, b), change.applyAsDouble(middle), Math.max(a, b));
    }

    /**
     * Two bands added, as if their errors went the same way.
     *
     * @param other another band of the same unit
     * @return lowest with lowest, middle with middle, highest with highest
     */
    public Band plus(Band other) {
        return new Band(low + other.low, middle + other.middle, high + other.high);
    }

    /**
     * Whether a value is in the band.
     *
     * @param value the value
     * @return true from low to high
     */
    public boolean holds(double value) {
        return value >= low && value <= high;
    }

    @Override
    public String toString() {
        return "%s (%s to %s)".formatted(rounded(middle), rounded(low), rounded(high));
    }

    private static String rounded(double value) {
        if (value == 0 || !Double.isFinite(value)) {
            return Require.format(value);
        }
        double unit = Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - 2);
        return Require.format(Math.round(value / unit) * unit);
    }
}
