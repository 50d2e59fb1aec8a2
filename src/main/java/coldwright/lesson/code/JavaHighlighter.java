package coldwright.lesson.code;

import coldwright.lesson.code.JavaToken.Kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Finds the coloured words of Java text, also of text that is half typed: what is left open, a
 * string or a comment, runs as far as Java would let it.
 */
public final class JavaHighlighter {
    private static final Set<String> KEYWORDS =
            Set.of(
                    ("abstract assert boolean break byte case catch char class const continue"
                                    + " default do double else enum extends false final finally"
                                    + " float for goto if implements import instanceof int"
                                    + " interface long native new null package private protected"
                                    + " public record return sealed permits short static strictfp"
                                    + " super switch synchronized this throw throws transient true"
                                    + " try var void volatile while yield")
                            .split(" "));
    private static final Pattern DIAL =
            Pattern.compile("//\\s*dial\\s+[-−.\\d]+\\s+to\\s+[-−.\\d]+.*");

    private final String java;
    private final List<JavaToken> words = new ArrayList<>();
    private int at;

    private JavaHighlighter(String java) {
        this.java = java;
    }

    /**
     * Finds them.
     *
     * @param java the text
     * @return the coloured words in order, none overlapping; plain names and signs are left out
     */
    public static List<JavaToken> in(String java) {
        JavaHighlighter scan = new JavaHighlighter(java);
        while (scan.at < java.length()) {
            scan.next();
        }
        return scan.words;
    }

    private void next() {
        char c = java.charAt(at);
        int start = at;
        if (java.startsWith("//", at)) {
            at = endOr(java.indexOf('\n', at));
            boolean dial = DIAL.matcher(java.substring(start, at)).matches();
            add(start, dial ? Kind.DIAL : Kind.COMMENT);
        } else if (java.startsWith("/*", at)) {
            at = past("*/", at + 2);
            add(start, Kind.COMMENT);
        } else if (java.startsWith("\"\"\"", at)) {
            at = quoted("\"\"\"", true);
            add(start, Kind.STRING);
        } else if (c == '"' || c == '\'') {
            at = quoted(String.valueOf(c), false);
            add(start, Kind.STRING);
        } else if (isDigit(at) || c == '.' && isDigit(at + 1)) {
            at = number();
            add(start, Kind.NUMBER);
        } else if (Character.isJavaIdentifierStart(c)) {
            while (at < java.length() && Character.isJavaIdentifierPart(java.charAt(at))) {
                at++;
            }
            name(start, java.substring(start, at));
        } else {
            at++;
        }
    }

    private int quoted(String mark, boolean overLines) {
        int i = at + mark.length();
        while (i < java.length() && !java.startsWith(mark, i)) {
            if (!overLines && java.charAt(i) == '\n') {
                return i;
            }
            i += java.charAt(i) == '\\' ? 2 : 1;
        }
        return Math.min(i + mark.length(), java.length());
    }

    private int number() {
        int i = at;
        while (i < java.length()) {
            char c = java.charAt(i);
            boolean signOfPower =
                    (c == '+' || c == '-')
                            && Character.toLowerCase(java.charAt(i - 1)) == 'e'
                            && !java.startsWith("0x", at);
            if (!(Character.isLetterOrDigit(c) || c == '_' || c == '.' || signOfPower)) {
                break;
            }
            i++;
        }
        return i;
    }

    private void name(int start, String name) {
        if (KEYWORDS.contains(name)) {
            add(start, Kind.KEYWORD);
        } else if (Character.isUpperCase(name.charAt(0))) {
            boolean shouted = name.length() > 1 && name.equals(name.toUpperCase(Locale.ROOT));
            add(start, shouted ? Kind.CONSTANT : Kind.TYPE);
        }
    }

    private int past(String mark, int from) {
        int found = java.indexOf(mark, from);
        return found < 0 ? java.length() : found + mark.length();
    }

    private int endOr(int found) {
        return found < 0 ? java.length() : found;
    }

    private boolean isDigit(int index) {
        return index < java.length() && java.charAt(index) >= '0' && java.charAt(index) <= '9';
    }

    private void add(int start, Kind kind) {
        words.add(new JavaToken(start, at, kind));
    }
}
