package coldwright.bench.compile;

import coldwright.source.JavaSource;
import coldwright.source.JavaToken;
import coldwright.source.JavaToken.Kind;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The limits of a text that is compiled. Java's compiler has none of its own: a few lines can keep
 * it busy for minutes, fill its memory or overflow its stack. All of this is read from the tokens,
 * in time proportional to the text.
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

    /** The compiler joins constant strings; one of more than 65,535 bytes isn't Java. */
    static final int MOST_JOINED = 60_000;

    private static final int MOST_IN_ALL = 2_000_000;

    private static final Pattern ESCAPE = Pattern.compile("\\\\u+([0-9a-fA-F]{4})");
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

    private static final Set<String> ENDS = Set.of(";", ",", "{", "}");

    private final JavaSource source;
    private final Map<String, Long> joined = new HashMap<>();
    private int open;
    private int round;
    private int statements;
    private int operators;
    private String word = "";
    private String target = "";
    private long length;
    private long total;

    private SnippetLimits(String text) {
        source = JavaSource.of(text);
    }

    /**
     * Checks a snippet.
     *
     * @param above the snippets that it is compiled after; constants count across them
     * @throws CompilationFailedException if it goes beyond a limit
     */
    static void check(List<String> above, String text) throws CompilationFailedException {
        checkLength(text);
        SnippetLimits limits = new SnippetLimits(plain(text));
        for (String one : above) {
            SnippetLimits before = new SnippetLimits(plain(one));
            before.joined.putAll(limits.joined);
            before.source.code().forEach(before::join);
            limits.joined.putAll(before.joined);
        }
        List<JavaToken> code = limits.source.code();
        for (JavaToken token : code) {
            limits.count(token);
            limits.join(token);
            if (limits.length > MOST_JOINED || limits.total > MOST_IN_ALL) {
                throw refusal(token, "joined", MOST_JOINED);
            }
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
            check(List.of(), text);
            return true;
        } catch (CompilationFailedException e) {
            return false;
        }
    }

    /** The compiler reads {@code \}{@code u0041} as a letter everywhere, also in symbols. */
    private static String plain(String text) {
        return ESCAPE.matcher(text)
                .replaceAll(
                        found ->
                                Matcher.quoteReplacement(
                                        "" + (char) Integer.parseInt(found.group(1), 16)));
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

    /** Adds up how long the strings would become if every name were a constant. */
    private void join(JavaToken token) {
        long more = 0;
        if (token.kind() == Kind.WORD) {
            word = source.text(token);
            more = joined.getOrDefault(word, 0L);
        } else if (token.isQuoted()) {
            more = (long) token.end() - token.start();
        } else if (source.is(token, "=")) {
            target = word;
            length = 0;
        } else if (ENDS.contains(source.text(token))) {
            joined.merge(target, length, Math::max);
            joined.remove("");
            target = "";
            length = 0;
        }
        length += more;
        total += more;
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
