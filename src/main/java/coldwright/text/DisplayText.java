package coldwright.text;

import coldwright.words.Words;

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
        return Words.decimals(places, value);
    }

    /** A number with at most six significant digits and a true minus, such as {@code −2.64}. */
    public static String number(double value) {
        return Words.number(value);
    }

    /**
     * The result of a snippet, by the name of its type. A number keeps all its digits and gets a
     * true minus; text that looks like a number is unchanged.
     */
    public static String result(String value, String type) {
        return NUMBERS.contains(type) && value.startsWith("-") ? "−" + value.substring(1) : value;
    }

    /** A finite duration in minutes below two hours, else hours to a tenth. */
    public static String minutes(double minutes) {
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
