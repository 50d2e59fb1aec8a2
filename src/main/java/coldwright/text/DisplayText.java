package coldwright.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Set;

/** Formats numbers and sentences for paper, window and terminal. */
public final class DisplayText {
    private static final double HOURS_FROM_MINUTES = 120;

    private static final Set<String> NUMBERS =
            Set.of(
                    "double", "float", "long", "int", "short", "byte", "Double", "Float", "Long",
                    "Integer", "Short", "Byte");

    private DisplayText() {}

    /** A number with so many decimals and a true minus, never before zero. */
    public static String decimals(int places, double value) {
        String text = String.format(Locale.ROOT, "%." + places + "f", value);
        String plain = text.matches("-0(\\.0+)?") ? text.substring(1) : text;
        return plain.replace('-', '−');
    }

    /** A number with at most six significant digits and a true minus, such as {@code −2.64}. */
    public static String number(double value) {
        if (Double.isNaN(value)) {
            return "not a number";
        }
        if (Double.isInfinite(value)) {
            return value > 0 ? "infinite" : "−infinite";
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded =
                BigDecimal.valueOf(Math.abs(value)).round(new MathContext(6)).stripTrailingZeros();
        boolean plain = Math.abs(value) >= 1e-4 && Math.abs(value) < 1e12;
        String text = plain ? rounded.toPlainString() : rounded.toString();
        return value < 0 ? "−" + text : text;
    }

    /**
     * The result of a snippet, by the name of its type. A number keeps all its digits and gets a
     * true minus; text that looks like a number is unchanged.
     */
    public static String result(String value, String type) {
        return NUMBERS.contains(type) && value.startsWith("-") ? "−" + value.substring(1) : value;
    }

    /** A duration in minutes below two hours, else hours to a tenth; {@code never} if infinite. */
    public static String minutes(double minutes) {
        return minutes(minutes, "never");
    }

    /** As {@link #minutes(double)}, with another text for an infinite duration. */
    public static String minutes(double minutes, String never) {
        if (!Double.isFinite(minutes)) {
            return never;
        }
        return minutes < HOURS_FROM_MINUTES
                ? decimals(0, minutes) + " min"
                : decimals(1, minutes / 60) + " h";
    }

    /** Adds a capital and a full stop to words such as {@code cold enough}. */
    public static String sentence(String words) {
        if (words.isEmpty()) {
            return words;
        }
        String capital = Character.toUpperCase(words.charAt(0)) + words.substring(1);
        return capital.matches("(?s).*[.!?]") ? capital : capital + ".";
    }
}
