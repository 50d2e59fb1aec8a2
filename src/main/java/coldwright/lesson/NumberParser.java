package coldwright.lesson;

import java.util.regex.Pattern;

/** Parses numbers as lessons write them: {@code 12.5}, {@code -18} or {@code −18}. */
final class NumberParser {
    /** Matches one number. */
    static final String PATTERN = "[+−-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+−-]?\\d+)?";

    private static final Pattern COMMA = Pattern.compile("\\d,\\d");

    private NumberParser() {}

    /** Whether a text has a number with a decimal comma or with thousands separators. */
    static boolean hasComma(String text) {
        return COMMA.matcher(text).find();
    }

    static double parse(String text) {
        return Double.parseDouble(text.replace('−', '-').replace(" ", "").replace("_", ""));
    }
}
