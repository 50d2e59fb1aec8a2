package coldwright.lesson;

/**
 * A number in the text that the calculator must bear out: {@code about −2.6<!-- =
 * base.initialFreezingPointC() --> °C}.
 *
 * @param line where it stands in the file, from 1
 * @param written the number as its reader sees it, such as {@code −2.6}
 * @param expression Java that must give it
 * @param tolerance how far off is allowed
 */
public record VerifiedNumber(int line, String written, String expression, double tolerance)
        implements LessonClaim {
    /** So much of a number is lost to binary fractions: 2.65 is a hair more than 2.6 and 0.05. */
    private static final double HAIR = 1e-9;

    /**
     * A number that is held to its own last digit.
     *
     * @param line where it stands in the file, from 1
     * @param written the number as its reader sees it
     * @param expression Java that must give it
     * @return it must agree to half a unit of the last written digit
     */
    static VerifiedNumber toItsLastDigit(int line, String written, String expression) {
        int point = written.indexOf('.');
        int decimals = point < 0 ? 0 : written.length() - point - 1;
        return new VerifiedNumber(line, written, expression, 0.5 * Math.pow(10, -decimals));
    }

    /** The number as written. */
    public double value() {
        return NumberParser.parse(written);
    }

    @Override
    public boolean passes(double given) {
        return Math.abs(given - value()) <= tolerance + HAIR * Math.max(1, Math.abs(value()));
    }
}
