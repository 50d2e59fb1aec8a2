package coldwright.workbook.entry;

import java.util.Optional;

/**
 * One {@code key: value} line, counted from 1, and the indented lines under it, if any, without
 * their indent, joined by {@code \n}. The value may be empty.
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

    /** The index that the number in its key stands for, from 0; refuses a key without a number. */
    public int index() {
        if (number() < 1) {
            throw WorkbookText.refusal("entry.no-number", key, word());
        }
        return number() - 1;
    }

    /** Whether its value is yes; refuses one that is neither yes nor no. */
    public boolean isYes() {
        if (!value.equals("yes") && !value.equals("no")) {
            throw WorkbookText.refusal("entry.yes-or-no", key, value);
        }
        return value.equals("yes");
    }
}
