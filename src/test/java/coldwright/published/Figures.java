package coldwright.published;

import coldwright.science.Require;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as the report prints them, rounded so that the last bit of a machine does not show. */
final class Figures {
    /** Smaller errors are rounding. */
    private static final double NOTHING = 1e-6;

    private Figures() {}

    static String short2(double value) {
        return Math.abs(value) < NOTHING ? "0" : digits(value, 2);
    }

    static String short3(double value) {
        return Math.abs(value) < NOTHING ? "0" : digits(value, 3);
    }

    /** A published value, which has no more digits than six. */
    static String plain(double value) {
        return Require.format(value);
    }

    private static String digits(double value, int digits) {
        return Double.isFinite(value)
                ? Require.format(
                        BigDecimal.valueOf(value).round(new MathContext(digits)).doubleValue())
                : Require.format(value);
    }
}
