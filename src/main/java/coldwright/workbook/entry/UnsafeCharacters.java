package coldwright.workbook.entry;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Encodes characters that are not safe in a text file as marks such as {@code ⟦U+000D⟧}: control
 * characters, line ends other than {@code \n}, unpaired surrogates, the byte order mark, and the
 * mark's own opening bracket.
 */
final class UnsafeCharacters {
    private static final char OPEN = '⟦';
    private static final String OTHER_LINE_ENDS_AND_BYTE_ORDER_MARK = "\u2028\u2029\uFEFF";
    private static final Pattern MARK = Pattern.compile("⟦U\\+([0-9A-F]{4})⟧");

    private UnsafeCharacters() {}

    /** Encodes a line of a block; its spaces and tabs stay. */
    static String line(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char here = text.charAt(i);
            boolean pair =
                    i + 1 < text.length() && Character.isSurrogatePair(here, text.charAt(i + 1));
            if (pair) {
                out.append(here).append(text.charAt(++i));
            } else if (here != '\t' && isUnsafe(here)) {
                out.append(mark(here));
            } else {
                out.append(here);
            }
        }
        return out.toString();
    }

    /** Encodes a value after a colon; tabs, and spaces at its ends, are marked too. */
    static String value(String text) {
        String plain = line(text).replace("\t", mark('\t'));
        int start = 0;
        int end = plain.length();
        while (start < end && Character.isWhitespace(plain.charAt(start))) {
            start++;
        }
        while (end > start && Character.isWhitespace(plain.charAt(end - 1))) {
            end--;
        }
        return marked(plain.substring(0, start))
                + plain.substring(start, end)
                + marked(plain.substring(end));
    }

    /** Decodes a text. Malformed marks stay as they are. */
    static String read(String text) {
        return text.indexOf(OPEN) < 0
                ? text
                : MARK.matcher(text)
                        .replaceAll(
                                (MatchResult mark) ->
                                        java.util.regex.Matcher.quoteReplacement(
                                                Character.toString(
                                                        (char)
                                                                Integer.parseInt(
                                                                        mark.group(1), 16))));
    }

    private static boolean isUnsafe(char here) {
        return here == OPEN
                || Character.isISOControl(here)
                || Character.isSurrogate(here)
                || OTHER_LINE_ENDS_AND_BYTE_ORDER_MARK.indexOf(here) >= 0;
    }

    private static String marked(String text) {
        StringBuilder out = new StringBuilder();
        text.chars().forEach(here -> out.append(mark((char) here)));
        return out.toString();
    }

    private static String mark(char here) {
        return "⟦U+%04X⟧".formatted((int) here);
    }
}
