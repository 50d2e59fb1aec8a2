package coldwright.lesson;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * A number in a snippet that the page also shows as a slider: {@code double sugar = 120; // dial 0
 * to 300 step 5 g}.
 *
 * @param variable the declared variable's name
 * @param start where the number's text begins, characters from the snippet's start
 * @param end where it ends, exclusive
 * @param value the number as written
 * @param least the slider's lower end
 * @param most its upper end
 * @param step distance between positions, more than zero
 * @param unit the unit shown beside it; may be empty
 */
public record Dial(
        String variable,
        int start,
        int end,
        double value,
        double least,
        double most,
        double step,
        String unit) {
    private static final int MOST_PLACES = 6;

    /** The dials of a snippet, in order. An invalid dial comment is ignored. */
    public static List<Dial> in(String code) {
        return DialReader.read(code, line -> line, new FaultList(""));
    }

    /** The position nearest to a value: a whole number of steps from the lower end, or an end. */
    public double nearest(double wanted) {
        double notches = Math.rint((wanted - least) / step);
        double exact = Math.max(least, Math.min(most, least + notches * step));
        return BigDecimal.valueOf(exact)
                .setScale(MOST_PLACES, RoundingMode.HALF_EVEN)
                .doubleValue();
    }

    /** The snippet that it was read from, with another number in its place. */
    public String written(String code, double newValue) {
        return code.substring(0, start) + plain(newValue) + code.substring(end);
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < Integer.MAX_VALUE
                ? Long.toString((long) value)
                : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
