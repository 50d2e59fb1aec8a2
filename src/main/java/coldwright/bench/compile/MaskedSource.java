package coldwright.bench.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A snippet with remarks and texts blanked out, each character at its old place. */
public final class MaskedSource {
    private static final Pattern QUIET =
            Pattern.compile(
                    "//[^\\n]*|/\\*.*?(?:\\*/|$)|\"\"\".*?\"\"\"|\"(?:\\\\.|[^\"\\\\\\n])*\"?|'(?:\\\\.|[^'\\\\\\n])*'?",
                    Pattern.DOTALL);

    private MaskedSource() {}

    public static String of(String text) {
        return of(text, ' ');
    }

    /** The same, with a letter in place of each character of a text. */
    public static String of(String text, char letter) {
        StringBuilder masked = new StringBuilder(text);
        Matcher matcher = QUIET.matcher(text);
        while (matcher.find()) {
            char instead = matcher.group().startsWith("/") ? ' ' : letter;
            for (int i = matcher.start(); i < matcher.end(); i++) {
                if (text.charAt(i) != '\n') {
                    masked.setCharAt(i, instead);
                }
            }
        }
        return masked.toString();
    }

    /**
     * Where the brackets stand that are never closed.
     *
     * @param masked a masked text
     * @return their places, outermost first
     */
    public static List<Integer> openBrackets(String masked) {
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < masked.length(); i++) {
            if ("([{".indexOf(masked.charAt(i)) >= 0) {
                open.add(i);
            } else if (")]}".indexOf(masked.charAt(i)) >= 0 && !open.isEmpty()) {
                open.remove(open.size() - 1);
            }
        }
        return open;
    }

    /** Where a remark begins that is never closed; below zero if there is none. */
    static int openComment(String text) {
        Matcher matcher = QUIET.matcher(text);
        while (matcher.find()) {
            String quiet = matcher.group();
            boolean closed = quiet.length() >= "/**/".length() && quiet.endsWith("*/");
            if (quiet.startsWith("/*") && !closed) {
                return matcher.start();
            }
        }
        return -1;
    }
}
