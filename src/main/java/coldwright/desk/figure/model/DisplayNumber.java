package coldwright.desk.figure.model;

import coldwright.words.Words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Numbers formatted for the page: a true minus, no needless zeros, the unit behind. */
public final class DisplayNumber {
    private static final char MINUS = '−';
    private static final char NO_BREAK_SPACE = '\u00A0';
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)");

    private DisplayNumber() {}

    /** A number with at most six significant digits, such as {@code −1.47}. */
    public static String of(double value) {
        return Words.written(Words.shown(), Words.number(value));
    }

    /** A number with its unit, if any, such as {@code −1.47 °C}, without line breaks. */
    public static String of(double value, String unit) {
        return unit.isEmpty() ? of(value) : of(value) + NO_BREAK_SPACE + unit;
    }

    /** A number in the digits that its tolerance justifies, {@code −1.472} for 0.03; all for 0. */
    public static String toTolerance(double value, double tolerance) {
        if (!Double.isFinite(value) || !(tolerance > 0)) {
            return of(value);
        }
        int places = Math.max(0, 1 - (int) Math.floor(Math.log10(tolerance)));
        return of(new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN).doubleValue());
    }

    /** A number with three significant digits, such as {@code 4.23}. */
    public static String rounded(double value) {
        return Double.isFinite(value) && value != 0
                ? of(new BigDecimal(value, new MathContext(3)).doubleValue())
                : of(value);
    }

    /** Parses a number as people type it, with point or comma and any minus; empty if none. */
    public static OptionalDouble read(String text) {
        String plain =
                text.strip()
                        .replace(',', '.')
                        .replace(MINUS, '-')
                        .replace('–', '-')
                        .replaceAll("^([-+])\\s+", "$1");
        return NUMBER.matcher(plain).matches()
                ? OptionalDouble.of(Double.parseDouble(plain))
                : OptionalDouble.empty();
    }
}
