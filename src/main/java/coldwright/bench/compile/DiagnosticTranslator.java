package coldwright.bench.compile;

import coldwright.bench.confine.RefusedName;
import coldwright.source.JavaSource;
import coldwright.source.JavaToken;
import coldwright.source.JavaToken.Kind;

import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Translates compiler diagnostics into problems for a learner, at their position in the snippet.
 */
final class DiagnosticTranslator {
    private static final Pattern UNNAMED_VALUE = Pattern.compile("\\$\\d+");
    private static final Pattern KIND_AND_NAME = Pattern.compile("(\\w+) ([^(]+)(\\(.*\\))?");

    private final JShell shell;
    private final SimilarNames near;

    DiagnosticTranslator(JShell shell) {
        this.shell = shell;
        this.near = new SimilarNames(shell);
    }

    /** Rejects text that isn't worth compiling. */
    void refuseOddText(String text) throws CompilationFailedException {
        JavaSource source = JavaSource.of(text);
        Optional<JavaToken> open = source.unclosedComment();
        if (open.isPresent()) {
            int start = open.get().start();
            throw refusal(start, start + 2, "error.unclosed.comment");
        }
        for (JavaToken token : source.tokens()) {
            String name = source.text(token);
            if (token.kind() == Kind.WORD && UNNAMED_VALUE.matcher(name).matches()) {
                throw refusal(token.start(), token.end(), "symbol.unnamed", name);
            }
        }
    }

    private static CompilationFailedException refusal(
            int start, int end, String key, Object... values) {
        return new CompilationFailedException(
                List.of(new CompileProblem(start, end, ErrorText.of(key, values), "")));
    }

    /**
     * The problems of a rejected statement: only its first error, because others follow from it.
     */
    List<CompileProblem> complaints(
            String text, StatementSplitter.StatementSource piece, Snippet part) {
        Optional<Diag> first = shell.diagnostics(part).filter(Diag::isError).findFirst();
        if (first.isEmpty()) {
            return List.of(
                    new CompileProblem(piece.start(), text.length(), ErrorText.of("unknown"), ""));
        }
        CompilerDiagnostic error = CompilerDiagnostic.of(first.get(), text, piece);
        return List.of(
                SyntaxMessages.of(error)
                        .or(() -> CallMessages.of(error))
                        .or(() -> SemanticMessages.of(error, near).map(error::complaint))
                        .orElseGet(
                                () -> error.complaint(ErrorText.of("other", error.firstLine()))));
    }

    /** Names in a declaration that nothing declares. */
    List<CompileProblem> unresolved(String text, int statementStart, List<String> missing) {
        List<CompileProblem> complaints = new ArrayList<>();
        for (String one : missing) {
            Matcher matcher = KIND_AND_NAME.matcher(one);
            String name = matcher.matches() ? matcher.group(2) : one;
            boolean method = one.startsWith("method");
            int start = placeOf(name, text, statementStart);
            complaints.add(
                    new CompileProblem(
                            start,
                            Math.min(text.length(), start + name.length()),
                            SemanticMessages.unknown(name, "", method, near),
                            String.format(Locale.ROOT, "cannot find symbol: %s", one)));
        }
        return complaints;
    }

    /** A name that a confined snippet may not use, where its text has it. */
    static CompileProblem refused(String text, int statementStart, RefusedName name) {
        int start = placeOf(name.word(), text, statementStart);
        boolean there = text.startsWith(name.word(), start);
        int end =
                there
                        ? start + name.word().length()
                        : LineIndex.endOf(text, LineIndex.lineAt(text, start));
        return new CompileProblem(start, end, name.words(), "");
    }

    private static int placeOf(String name, String text, int from) {
        JavaSource source = JavaSource.of(text);
        return source.tokens().stream()
                .filter(token -> token.start() >= from && source.isWord(token, name))
                .findFirst()
                .map(JavaToken::start)
                .orElse(from);
    }
}
