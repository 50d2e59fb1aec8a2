package coldwright.help;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The word at a caret.
 *
 * @param name the word
 * @param before the name before its dot; empty if there is no name or no dot
 * @param afterPoint whether a dot or {@code ::} precedes it
 */
record WordAtCaret(String name, String before, boolean afterPoint) {
    private static final Pattern TOKEN =
            Pattern.compile(
                    "(//[^\\n]*|/\\*.*?(?:\\*/|$)|\"\"\".*?(?:\"\"\"|$)|\"(?:\\\\.|[^\"\\\\\\n])*\"?|'(?:\\\\.|[^'\\\\\\n])*'?)"
                            + "|([\\p{L}_$][\\p{L}\\p{N}_$]*)|[0-9][\\p{L}\\p{N}_.]*|::|\\S",
                    Pattern.DOTALL);

    /**
     * Finds the word.
     *
     * @param text a snippet
     * @param caret position in it, 0 to its length; within the word or at either end
     * @return empty in comments, in strings and between words
     * @throws IllegalArgumentException if the caret is outside the text
     */
    static Optional<WordAtCaret> at(String text, int caret) {
        if (caret < 0 || caret > text.length()) {
            throw new IllegalArgumentException(
                    "caret is %d; it must be between 0 and %d, the length of the text"
                            .formatted(caret, text.length()));
        }
        String last = "";
        String beforeLast = "";
        Matcher token = TOKEN.matcher(text);
        while (token.find() && token.start() <= caret) {
            if (token.group(2) != null && caret <= token.end()) {
                boolean point = last.equals(".") || last.equals("::");
                boolean named = point && beforeLast.matches("[\\p{L}_$].*");
                return Optional.of(new WordAtCaret(token.group(), named ? beforeLast : "", point));
            }
            if (token.group(1) == null || token.group(1).startsWith("\"")) {
                beforeLast = last;
                last = token.group();
            }
        }
        return Optional.empty();
    }
}
