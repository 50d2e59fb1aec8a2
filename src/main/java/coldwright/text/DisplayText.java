package coldwright.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Set;

/** Numbers and remarks as every page writes them, on paper, in the window and in the terminal. */
public final class DisplayText {
    private static final double HOURS_FROM_MINUTES = 120;

    private static final Set<String> NUMBERS =
            Set.of(
                    "double", "float", "long", "int", "short", "byte", "Double", "Float", "Long",
                    "Integer", "Short", "Byte");

    private DisplayText() {}

    /**
     * A number.
     *
     * @param places decimals
     * @param value any number
     * @return with a true minus, and none before nought
     */
    public static String decimals(int places, double value) {
        String text = String.format(Locale.ROOT, "%." + places + "f", value);
        String plain = text.matches("-0(\\.0+)?") ? text.substring(1) : text;
        return plain.replace('-', '−');
    }

    /**
     * A number with all its figures that matter.
     *
     * @param value any number
     * @return at most six significant digits and a true minus, such as {@code −2.64}
     */
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
     * What a snippet gave. A number keeps all its digits and gets a true minus; what only reads
     * like one, such as a text, stays as it is.
     *
     * @param value the value as text
     * @param type its type's name
     * @return the value for people
     */
    public static String result(String value, String type) {
        return NUMBERS.contains(type) && value.startsWith("-") ? "−" + value.substring(1) : value;
    }

    /**
     * A length of time.
     *
     * @param minutes how many
     * @return whole minutes, or from two hours on hours to a tenth; {@code never} where it has no
     *     end
     */
    public static String minutes(double minutes) {
        return minutes(minutes, "never");
    }

    /**
     * A length of time.
     *
     * @param minutes how many
     * @param never what to say where it has no end
     * @return as {@link #minutes(double)}
     */
    public static String minutes(double minutes, String never) {
        if (!Double.isFinite(minutes)) {
            return never;
        }
        return minutes < HOURS_FROM_MINUTES
                ? decimals(0, minutes) + " min"
                : decimals(1, minutes / 60) + " h";
    }

    /**
     * A remark as a sentence.
     *
     * @param words such as {@code cold enough}
     * @return with a capital and a full stop
     */
    public static String sentence(String words) {
        if (words.isEmpty()) {
            return words;
        }
        String capital = Character.toUpperCase(words.charAt(0)) + words.substring(1);
        return capital.matches("(?s).*[.!?]") ? capital : capital + ".";
    }
}
