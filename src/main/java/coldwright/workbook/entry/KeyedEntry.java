package coldwright.workbook.entry;

import java.util.Optional;

/**
 * One {@code key: value} line and the indented lines under it.
 *
 * @param line its line number, from 1
 * @param key the text before the colon
 * @param value the text after it; may be empty
 * @param block the indented lines under it without their indent, joined by {@code \n}; empty if
 *     there are none
 */
public record KeyedEntry(int line, String key, String value, Optional<String> block) {
    /** The first word of a key such as {@code snippet 2}. */
    public String word() {
        return key.replaceFirst("\\s+\\d+$", "");
    }

    /** The number in a key such as {@code snippet 2}, from 1; 0 if there is none. */
    public int number() {
        String digits = key.replaceFirst("^.*\\D", "");
        return digits.isEmpty() || digits.length() > 6 ? 0 : Integer.parseInt(digits);
    }
}
