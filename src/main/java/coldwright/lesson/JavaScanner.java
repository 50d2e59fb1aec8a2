package coldwright.lesson;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.regex.Pattern;

/** Finds its way through Java text: what is a comment, what is a literal, how deep in brackets. */
final class JavaScanner {
    /**
     * A comment that runs to the end of its line.
     *
     * @param start where its slashes stand
     * @param end where its line ends
     * @param depth how many brackets are open there
     */
    record Comment(int start, int end, int depth) {}

    private static final Pattern A_NAME =
            Pattern.compile("(?<![\\p{L}\\p{N}_$.])(?!(?:true|false|null)\\b)[\\p{L}_$]");

    private JavaScanner() {}

    static List<Comment> lineComments(String code) {
        List<Comment> comments = new ArrayList<>();
        int depth = 0;
        int at = 0;
        while (at < code.length()) {
            char here = code.charAt(at);
            if (code.startsWith("//", at)) {
                int end = endOf("\n", code, at);
                comments.add(new Comment(at, end, depth));
                at = end;
            } else if (code.startsWith("/*", at)) {
                at = Math.min(code.length(), endOf("*/", code, at + 2) + 2);
            } else if (here == '"' || here == '\'') {
                at = afterLiteral(code, at);
            } else {
                depth += "([{".indexOf(here) >= 0 ? 1 : ")]}".indexOf(here) >= 0 ? -1 : 0;
                at++;
            }
        }
        return comments;
    }

    /**
     * Where words stand outside of string and character literals.
     *
     * @return each place, in order
     */
    static List<Integer> placesOf(String words, String code) {
        List<Integer> places = new ArrayList<>();
        int at = 0;
        while (at < code.length()) {
            if (code.startsWith(words, at)) {
                places.add(at);
                at++;
            } else if (code.charAt(at) == '"' || code.charAt(at) == '\'') {
                at = afterLiteral(code, at);
            } else {
                at++;
            }
        }
        return places;
    }

    /** The code with each string and character literal left out. */
    static String withoutLiterals(String code) {
        StringBuilder rest = new StringBuilder();
        int at = 0;
        while (at < code.length()) {
            if (code.charAt(at) == '"' || code.charAt(at) == '\'') {
                at = afterLiteral(code, at);
            } else {
                rest.append(code.charAt(at++));
            }
        }
        return rest.toString();
    }

    /** The code alone: comments are left out, and each literal stands as an empty one. */
    static String plain(String code) {
        StringBuilder rest = new StringBuilder();
        int at = 0;
        while (at < code.length()) {
            char here = code.charAt(at);
            if (code.startsWith("//", at)) {
                at = endOf("\n", code, at);
            } else if (code.startsWith("/*", at)) {
                at = Math.min(code.length(), endOf("*/", code, at + 2) + 2);
                rest.append(' ');
            } else if (here == '"' || here == '\'') {
                at = afterLiteral(code, at);
                rest.append("\"\"");
            } else {
                rest.append(here);
                at++;
            }
        }
        return rest.toString();
    }

    /** Whether an expression names anything; one of numbers alone says nothing of a snippet. */
    static boolean namesSomething(String expression) {
        return A_NAME.matcher(withoutLiterals(expression)).find();
    }

    /** Whether each bracket that is opened is closed by its own kind. */
    static boolean isBalanced(String expression) {
        Deque<Integer> open = new ArrayDeque<>();
        for (char here : withoutLiterals(expression).toCharArray()) {
            int kind = "([{".indexOf(here);
            int closes = ")]}".indexOf(here);
            if (kind >= 0) {
                open.push(kind);
            } else if (closes >= 0 && (open.isEmpty() || open.pop() != closes)) {
                return false;
            }
        }
        return open.isEmpty();
    }

    /** The place behind a literal that begins at a quotation mark, or the end of its line. */
    private static int afterLiteral(String code, int start) {
        boolean block = code.startsWith("\"\"\"", start);
        String close = block ? "\"\"\"" : code.substring(start, start + 1);
        int at = start + close.length();
        while (at < code.length()) {
            if (code.startsWith(close, at)) {
                return at + close.length();
            }
            if (!block && code.charAt(at) == '\n') {
                return at;
            }
            at += code.charAt(at) == '\\' ? 2 : 1;
        }
        return code.length();
    }

    private static int endOf(String close, String code, int from) {
        int end = code.indexOf(close, from);
        return end < 0 ? code.length() : end;
    }
}
