package coldwright.lesson;

import java.util.function.Function;

/**
 * A number in the text that is checked against the calculator: {@code about −2.6<!-- =
 * base.initialFreezingPointC() --> °C}.
 *
 * @param line its line in the file, from 1
 * @param written the number as shown, such as {@code −2.6}
 * @param expression Java to evaluate
 * @param tolerance allowed difference
 */
public record VerifiedNumber(int line, String written, String expression, double tolerance)
        implements LessonClaim {
    /** Relative tolerance for binary fractions: 2.65 is a hair more than 2.6 and 0.05. */
    private static final double HAIR = 1e-9;

    /** A number that is verified to half a unit of its last digit. */
    static VerifiedNumber toItsLastDigit(int line, String written, String expression) {
        int point = written.indexOf('.');
        int decimals = point < 0 ? 0 : written.length() - point - 1;
        return new VerifiedNumber(line, written, expression, 0.5 * Math.pow(10, -decimals));
    }

    /** The number as written. */
    public double value() {
        return NumberParser.parse(written);
    }

    /** Whether a number agrees with the text. */
    public boolean passes(double given) {
        return Math.abs(given - value()) <= tolerance + HAIR * Math.max(1, Math.abs(value()));
    }

    @Override
    public <T> T match(
            Function<CheckExpectation.Value, T> value,
            Function<CheckExpectation.True, T> truth,
            Function<VerifiedNumber, T> number) {
        return number.apply(this);
    }
}
