package coldwright.workbook.entry;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Encodes characters that are not safe in a text file as marks such as {@code ⟦U+000D⟧}: control
 * characters, line ends other than {@code \n}, unpaired surrogates, the byte order mark, and the
 * mark's own opening bracket.
 */
final class UnsafeCharacters {
    private static final Pattern UNSAFE =
            Pattern.compile("[⟦\\p{Cc}\\p{Cs}\\u2028\\u2029\\uFEFF&&[^\\t]]");
    private static final Pattern AT_THE_ENDS =
            Pattern.compile("\\A\\p{javaWhitespace}+|\\p{javaWhitespace}+\\z");
    private static final Pattern MARK = Pattern.compile("⟦U\\+([0-9A-F]{4})⟧");

    private UnsafeCharacters() {}

    /** Encodes a line of a block; its spaces and tabs stay. */
    static String line(String text) {
        return UNSAFE.matcher(text).replaceAll(one -> marked(one.group()));
    }

    /** Encodes a value after a colon; tabs, and spaces at its ends, are marked too. */
    static String value(String text) {
        String plain = line(text).replace("\t", marked("\t"));
        return AT_THE_ENDS.matcher(plain).replaceAll(spaces -> marked(spaces.group()));
    }

    /** Decodes a text. Malformed marks stay as they are. */
    static String read(String text) {
        return MARK.matcher(text)
                .replaceAll(
                        mark ->
                                Matcher.quoteReplacement(
                                        Character.toString(Integer.parseInt(mark.group(1), 16))));
    }

    private static String marked(String text) {
        StringBuilder out = new StringBuilder();
        text.chars().forEach(here -> out.append("⟦U+%04X⟧".formatted(here)));
        return out.toString();
    }
}
