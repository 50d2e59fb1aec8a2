package coldwright.bench.compile;

import jdk.jshell.Diag;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A message of the compiler and its position in the snippet.
 *
 * @param code the compiler's key, such as {@code cant.resolve.location}
 * @param message its message in English
 * @param text the whole snippet
 * @param statementStart where the statement begins in it
 * @param start where the fault begins in the snippet
 * @param end where it ends, exclusive
 * @param at the exact position within it
 */
record CompilerDiagnostic(
        String code, String message, String text, int statementStart, int start, int end, int at) {
    private static final Pattern LAST_NAME = Pattern.compile("[\\p{L}_$][\\p{L}\\p{N}_$]*\\s*$");
    private static final String KEY = "compiler.err.";

    /** Errors whose range is much wider than the part to highlight. */
    private static final Set<String> AT_THE_VERY_PLACE =
            Set.of(KEY + "missing.ret.stmt", KEY + "cant.infer.local.var.type");

    static CompilerDiagnostic of(Diag diag, String text, StatementSplitter.StatementSource piece) {
        String code = diag.getCode() == null ? "" : diag.getCode();
        int start = within(piece.start() + diag.getStartPosition(), text);
        int end = Math.max(start, within(piece.start() + diag.getEndPosition(), text));
        int at = within(piece.start() + diag.getPosition(), text);
        if (AT_THE_VERY_PLACE.contains(code)) {
            start = at;
            end = at;
        }
        if (end == start && end < text.length()) {
            end++;
        }
        return new CompilerDiagnostic(
                code.startsWith(KEY) ? code.substring(KEY.length()) : code,
                diag.getMessage(Locale.ENGLISH),
                text,
                piece.start(),
                start,
                end,
                at);
    }

    private static int within(long offset, String text) {
        return (int) Math.max(0, Math.min(text.length(), offset));
    }

    String firstLine() {
        return message.lines().findFirst().orElse("").strip();
    }

    /** A problem at this position. */
    CompileProblem complaint(String words) {
        return new CompileProblem(start, end, words, message);
    }

    /** A problem at a range of the statement's text. */
    CompileProblem complaint(String words, int from, int to) {
        return new CompileProblem(statementStart + from, statementStart + to, words, message);
    }

    /** The faulty text itself. */
    String source() {
        return text.substring(start, end);
    }

    /** The statement up to the fault. */
    String before() {
        return text.substring(statementStart, start);
    }

    /** The statement's text, to the end of the line on which the fault ends. */
    String statement() {
        int lineEnd = text.indexOf('\n', end);
        return text.substring(statementStart, lineEnd < 0 ? text.length() : lineEnd);
    }

    /** The last name in the faulty text: the name that wasn't found. */
    String lastName() {
        Matcher matcher = LAST_NAME.matcher(source());
        return matcher.find() ? matcher.group().strip() : source().strip();
    }

    /** The expression before the dot of the last name; empty if there is no dot. */
    String owner() {
        String source = source();
        int dot = source.lastIndexOf('.');
        return dot < 0 ? "" : source.substring(0, dot).strip();
    }

    /** The last word or symbol before a position. */
    String wordBefore(int place) {
        String head = text.substring(0, place).stripTrailing();
        if (head.isEmpty()) {
            return ErrorText.of("the-start");
        }
        Matcher matcher = Pattern.compile("([\\p{L}\\p{N}_$.\"]+|\\S)$").matcher(head);
        return matcher.find() ? matcher.group() : head;
    }

    /** A group matched in the message, or an empty string. */
    String inMessage(Pattern pattern, int group) {
        Matcher matcher = pattern.matcher(message);
        return matcher.find() ? matcher.group(group).strip() : "";
    }
}
