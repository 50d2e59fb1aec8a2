package coldwright.text;

import java.util.Set;

/** Formats results and sentences for paper, window and terminal. */
public final class DisplayText {
    private static final Set<String> NUMBERS =
            Set.of(
                    "double", "float", "long", "int", "short", "byte", "Double", "Float", "Long",
                    "Integer", "Short", "Byte");

    private DisplayText() {}

    /**
     * The result of a snippet, by the name of its type. A number keeps all its digits and gets a
     * true minus; text that looks like a number is unchanged.
     */
    public static String result(String value, String type) {
        return NUMBERS.contains(type) && value.startsWith("-") ? "−" + value.substring(1) : value;
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
