package coldwright.bench.compile;

import coldwright.source.JavaSource;
import coldwright.source.JavaToken;
import coldwright.source.JavaToken.Kind;

import java.util.List;
import java.util.Set;

/**
 * The limits of a text that is compiled, so that what is merely too long is refused at once and
 * with its reason. What overloads Java's compiler in another way ends the process that it works in.
 */
public final class SnippetLimits {
    /** Maximum length of a snippet, characters. */
    private static final int MOST_CHARACTERS = 100_000;

    /** A long snippet of a lesson has 400 tokens. */
    static final int MOST_TOKENS = 10_000;

    /** Each statement is compiled by itself, in some 25 ms. */
    static final int MOST_STATEMENTS = 300;

    /** The compiler calls itself for each; its stack ends at some 3,000. */
    static final int MOST_OPERATORS = 1_000;

    /** More than any readable snippet has; at some thousands the compiler itself fails. */
    static final int MOST_OPEN_BRACKETS = 200;

    private static final Set<String> NESTING =
            Set.of(
                    "do",
                    "else",
                    "if",
                    "for",
                    "while",
                    "new",
                    "try",
                    "return",
                    "instanceof",
                    "case");

    private final JavaSource source;
    private int open;
    private int round;
    private int statements;
    private int operators;

    private SnippetLimits(String text) {
        source = JavaSource.of(text);
    }

    /**
     * Checks a snippet.
     *
     * @throws CompilationFailedException if it goes beyond a limit
     */
    static void check(String text) throws CompilationFailedException {
        checkLength(text);
        SnippetLimits limits = new SnippetLimits(text);
        List<JavaToken> code = limits.source.code();
        for (JavaToken token : code) {
            limits.count(token);
        }
        if (code.size() > MOST_TOKENS) {
            throw refusal(0, text.length(), "tokens", code.size(), MOST_TOKENS);
        }
    }

    /**
     * Checks only the length of a snippet.
     *
     * @throws CompilationFailedException if it is too long
     */
    public static void checkLength(String text) throws CompilationFailedException {
        if (text.length() > MOST_CHARACTERS) {
            throw refusal(0, text.length(), "long", text.length(), MOST_CHARACTERS);
        }
    }

    /** Whether a snippet is within the limits. */
    public static boolean allow(String text) {
        try {
            check(text);
            return true;
        } catch (CompilationFailedException e) {
            return false;
        }
    }

    private void count(JavaToken token) throws CompilationFailedException {
        boolean brace = source.is(token, "{") || source.is(token, "}");
        int step = token.kind() == Kind.OPEN ? 1 : token.kind() == Kind.CLOSE ? -1 : 0;
        open = Math.max(0, open + step);
        round = brace ? round : Math.max(0, round + step);
        boolean ends = brace || source.is(token, ";");
        if (ends && round == 0) {
            operators = 0;
            statements += open == 0 ? 1 : 0;
        } else if (step > 0
                || token.kind() == Kind.OPERATOR && !source.is(token, ",")
                || token.kind() == Kind.WORD && NESTING.contains(source.text(token))) {
            operators++;
        }
        if (open > MOST_OPEN_BRACKETS) {
            throw refusal(token, "deep", MOST_OPEN_BRACKETS);
        }
        if (operators > MOST_OPERATORS) {
            throw refusal(token, "operators", MOST_OPERATORS);
        }
        if (statements > MOST_STATEMENTS) {
            throw refusal(token, "statements", MOST_STATEMENTS);
        }
    }

    private static CompilationFailedException refusal(
            JavaToken token, String limit, Object... values) {
        return refusal(token.start(), token.end(), limit, values);
    }

    private static CompilationFailedException refusal(
            int start, int end, String limit, Object... values) {
        return new CompilationFailedException(
                List.of(
                        new CompileProblem(
                                start, end, ErrorText.of("limit." + limit, values), "")));
    }
}
