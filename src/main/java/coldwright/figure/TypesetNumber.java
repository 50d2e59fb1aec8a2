package coldwright.figure;

import coldwright.words.Words;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Formats numbers as in a book: with a real minus sign, thin spaces in long numbers, and the
 * decimal mark of the language shown.
 */
public final class TypesetNumber {
    private static final char MINUS = '\u2212';
    private static final char THIN_SPACE = '\u2009';
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /** From this value on, a number is written with a power of ten. */
    private static final double LARGE = 1e7;

    /** With more decimals than this, a number is written with a power of ten. */
    private static final int MOST_DECIMALS = 6;

    private TypesetNumber() {}

    /**
     * {@return a number with the decimals that a step needs, such as {@code −2.50} for a step of
     * 0.05}
     *
     * @param step the smallest difference to show, above 0
     */
    public static String of(double value, double step) {
        return of(value, step, Math.abs(value));
    }

    /**
     * {@return one number of a list, such as {@code 0.5·10⁹}; if any is large or the step is small,
     * all get the same power of ten}
     *
     * @param step the smallest difference to show, above 0
     * @param largest the largest absolute value of the list
     */
    public static String of(double value, double step, double largest) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "–" : value > 0 ? "∞" : MINUS + "∞";
        }
        int decimals = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
        boolean power = largest >= LARGE || decimals > MOST_DECIMALS;
        if (!power || value == 0) {
            return plain(BigDecimal.valueOf(value), value == 0 && power ? 0 : decimals);
        }
        return withPower(value, step, (int) Math.floor(Math.log10(largest) + 1e-9));
    }

    /**
     * {@return a number such that steps of about a twentieth of its group's width differ, such as
     * {@code −3.4} among numbers from 0 to −5}
     */
    public static String among(double value, double width) {
        double wide = Double.isFinite(width) && width > 0 ? width : Math.abs(value);
        return of(value, wide > 0 && Double.isFinite(wide) ? wide / 20 : 1);
    }

    /**
     * {@return a number for a sentence, as {@link #among} but without trailing zeros, such as
     * {@code 0} or {@code −3.4}}
     */
    public static String plain(double value, double width) {
        return among(value, width)
                .replaceFirst("([.,]\\d*?)0+(?=·|$)", "$1")
                .replaceFirst("[.,](?=·|$)", "");
    }

    private static String withPower(double value, double step, int power) {
        int decimals = (int) Math.ceil(power - Math.log10(step) - 1e-9);
        BigDecimal mantissa = BigDecimal.valueOf(value).scaleByPowerOfTen(-power);
        StringBuilder text =
                new StringBuilder(plain(mantissa, Math.max(0, Math.min(MOST_DECIMALS, decimals))));
        text.append("·10").append(power < 0 ? "⁻" : "");
        for (char digit : Integer.toString(Math.abs(power)).toCharArray()) {
            text.append(RAISED.charAt(digit - '0'));
        }
        return text.toString();
    }

    private static String plain(BigDecimal value, int decimals) {
        BigDecimal rounded = value.setScale(decimals, RoundingMode.HALF_UP);
        String digits = rounded.abs().toPlainString();
        int point = digits.indexOf('.');
        int whole = point < 0 ? digits.length() : point;
        StringBuilder text = new StringBuilder(digits.length() + 4);
        if (rounded.signum() < 0) {
            text.append(MINUS);
        }
        for (int i = 0; i < digits.length(); i++) {
            if (whole > 4 && i > 0 && i < whole && (whole - i) % 3 == 0) {
                text.append(THIN_SPACE);
            }
            text.append(i == point ? Words.decimalMark() : digits.charAt(i));
        }
        return text.toString();
    }
}
