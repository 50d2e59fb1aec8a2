package coldwright.source;

import coldwright.source.JavaToken.Kind;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/**
 * A piece of Java text with its tokens.
 *
 * @param text the text, perhaps unfinished
 * @param tokens all its tokens in order; together they are the text
 */
public record JavaSource(String text, List<JavaToken> tokens) {
    private static final String OPENING = "([{";
    private static final String CLOSING = ")]}";
    private static final Set<String> VALUES = Set.of("true", "false", "null");

    /** Splits a text into tokens; accepts any text. */
    public static JavaSource of(String text) {
        return new JavaSource(text, JavaLexer.tokens(text));
    }

    /** The text of a token. */
    public String text(JavaToken token) {
        return text.substring(token.start(), token.end());
    }

    /** The tokens that the compiler sees: all but whitespace and comments. */
    public List<JavaToken> code() {
        return tokens.stream().filter(JavaToken::isCode).toList();
    }

    /** Whether a token has this text. */
    public boolean is(JavaToken token, String wanted) {
        return token.end() - token.start() == wanted.length()
                && text.startsWith(wanted, token.start());
    }

    /** Whether a token is a word with this text. */
    public boolean isWord(JavaToken token, String word) {
        return token.kind() == Kind.WORD && is(token, word);
    }

    /** The token at a position; empty outside the text. */
    public Optional<JavaToken> at(int place) {
        return tokens.stream()
                .filter(token -> token.start() <= place && place < token.end())
                .findFirst();
    }

    /** The positions of a non-empty string outside of quotes. */
    public List<Integer> unquoted(String words) {
        List<Integer> places = new ArrayList<>();
        int token = 0;
        for (int at = text.indexOf(words); at >= 0; at = text.indexOf(words, at + 1)) {
            while (tokens.get(token).end() <= at) {
                token++;
            }
            if (!tokens.get(token).isQuoted()) {
                places.add(at);
            }
        }
        return places;
    }

    /** Whether the text contains a name; a text of numbers alone doesn't depend on a snippet. */
    public boolean namesSomething() {
        return anyWord((word, after) -> !VALUES.contains(word));
    }

    /** Whether the text uses a variable: a word that follows no dot and isn't called. */
    public boolean namesValue(String name) {
        return anyWord((word, after) -> word.equals(name) && !after.equals("("));
    }

    /** Whether the text calls a method of this name, on any object. */
    public boolean calls(String name) {
        List<JavaToken> code = code();
        return IntStream.range(1, code.size())
                .anyMatch(i -> isWord(code.get(i - 1), name) && is(code.get(i), "("));
    }

    /** Whether any word that follows no dot, with the token after it, passes a test. */
    private boolean anyWord(BiPredicate<String, String> such) {
        List<JavaToken> code = code();
        for (int i = 0; i < code.size(); i++) {
            boolean member = i > 0 && is(code.get(i - 1), ".");
            String after = i + 1 < code.size() ? text(code.get(i + 1)) : "";
            if (code.get(i).kind() == Kind.WORD && !member && such.test(text(code.get(i)), after)) {
                return true;
            }
        }
        return false;
    }

    /** The unclosed brackets, outermost first; any closing bracket closes the last. */
    public List<JavaToken> openBrackets() {
        List<JavaToken> open = new ArrayList<>();
        for (JavaToken token : tokens) {
            if (token.kind() == Kind.OPEN) {
                open.add(token);
            } else if (token.kind() == Kind.CLOSE && !open.isEmpty()) {
                open.remove(open.size() - 1);
            }
        }
        return open;
    }

    /** Whether each opening bracket is closed by its own kind. */
    public boolean isBalanced() {
        Deque<JavaToken> open = new ArrayDeque<>();
        for (JavaToken token : tokens) {
            if (token.kind() == Kind.OPEN) {
                open.push(token);
            } else if (token.kind() == Kind.CLOSE
                    && (open.isEmpty() || !arePair(open.pop(), token))) {
                return false;
            }
        }
        return open.isEmpty();
    }

    /** Whether two brackets are of the same kind. */
    public boolean arePair(JavaToken open, JavaToken close) {
        return closing(open) == text.charAt(close.start());
    }

    /** The closing bracket for an opening one. */
    public char closing(JavaToken open) {
        return CLOSING.charAt(OPENING.indexOf(text.charAt(open.start())));
    }

    /**
     * The text with comments and quoted text replaced by spaces, so that positions don't change.
     */
    public String masked() {
        return masked(' ');
    }

    /** The same, with a letter for each quoted character, including the quotes. */
    public String masked(char letter) {
        StringBuilder masked = new StringBuilder(text);
        for (JavaToken token : tokens) {
            if (token.isComment() || token.isQuoted()) {
                for (int i = token.start(); i < token.end(); i++) {
                    if (text.charAt(i) != '\n') {
                        masked.setCharAt(i, token.isComment() ? ' ' : letter);
                    }
                }
            }
        }
        return masked.toString();
    }

    /** The unclosed comment, if there is one. */
    public Optional<JavaToken> unclosedComment() {
        return tokens.isEmpty()
                ? Optional.empty()
                : Optional.of(tokens.get(tokens.size() - 1))
                        .filter(last -> last.kind() == Kind.BLOCK_COMMENT)
                        .filter(
                                last ->
                                        last.end() - last.start() < "/**/".length()
                                                || !text(last).endsWith("*/"));
    }
}
