package coldwright.desk.messages;

import java.util.regex.Pattern;

/**
 * Typesets plain text as a book does: curled quotation marks, and numbers that stay on one line
 * with their units.
 */
public final class Typography {
    private static final Pattern BEFORE_UNIT =
            Pattern.compile(
                    "(?<=\\d) (?=(?:%|°[CF]?|(?:k|m|µ)?g|oz|lb|m?l|litres?|Liter|[mcµk]?m|k?J|[kM]?W|m?Pa|kPa|MB"
                            + "|m?mol|K|s|seconds?|Sekunden?|min|minutes?|Minuten?|h|hours?|Stunden?"
                            + "|days?|Tagen?|Tage|grams?|Gramm|ounces?|Unzen)(?![\\p{L}\\d]))");
    private static final char NO_BREAK_SPACE = '\u00A0';
    private char before = ' ';

    public Typography() {}

    /** Typesets a separate text, such as a title. */
    public static String of(String text) {
        return new Typography().set(text);
    }

    /** Starts a paragraph: no text comes before its first character. */
    public void begin() {
        before = ' ';
    }

    /**
     * Typesets the next piece of running text; the text before decides how a quotation mark curls.
     */
    public String set(String text) {
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
        return BEFORE_UNIT.matcher(out).replaceAll(String.valueOf(NO_BREAK_SPACE));
    }

    /** Passes a piece that is left as it is, such as code. */
    public void pass(String text) {
        before = text.isEmpty() ? before : text.charAt(text.length() - 1);
    }

    private static boolean opens(char before) {
        return Character.isWhitespace(before) || "([{–—/“‘".indexOf(before) >= 0;
    }
}
