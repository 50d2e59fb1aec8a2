package coldwright.desk.prose;

import java.util.regex.Pattern;

/**
 * Sets plain text as a book does: curled quotation marks, and numbers that stay on one line with
 * their units.
 */
public final class Typography {
    private static final Pattern BEFORE_UNIT =
            Pattern.compile(
                    "(?<=\\d) (?=(?:%|°|g|kg|mg|ml|l|mm|cm|µm|J|kJ|W|s|min|h|MB|kPa|mPa)(?![\\p{L}\\d]))");
    private static final Pattern BEFORE_DEGREE = Pattern.compile("(?<=\\d) (?=°)");
    private static final char NO_BREAK_SPACE = '\u00A0';
    private char before = ' ';

    Typography() {}

    /**
     * Sets a text that stands alone, such as a title.
     *
     * @param text plain text
     * @return the same as a book sets it
     */
    public static String of(String text) {
        return new Typography().set(text);
    }

    /** Begins a paragraph: nothing stands before its first sign. */
    void begin() {
        before = ' ';
    }

    /** Sets the next piece of running text; what went before decides how a quotation mark curls. */
    String set(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                out.append(opens(before) ? '“' : '”');
            } else if (c == '\'') {
                out.append(opens(before) ? '‘' : '’');
            } else {
                out.append(c);
            }
            before = c;
        }
        String spaced = BEFORE_DEGREE.matcher(out).replaceAll(String.valueOf(NO_BREAK_SPACE));
        return BEFORE_UNIT.matcher(spaced).replaceAll(String.valueOf(NO_BREAK_SPACE));
    }

    /** A piece that is set as it is, such as code. */
    void pass(String text) {
        before = text.isEmpty() ? before : text.charAt(text.length() - 1);
    }

    private static boolean opens(char before) {
        return Character.isWhitespace(before) || "([{–—/“‘".indexOf(before) >= 0;
    }
}
