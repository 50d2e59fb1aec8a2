package coldwright.bench.compile;

import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

import java.util.Optional;

/** Splits a snippet into statements, one at a time. */
final class StatementSplitter {
    private final SourceCodeAnalysis analysis;
    private final int length;
    private String rest;

    /**
     * A statement, or the rest of the snippet if it can't be split.
     *
     * @param start where it begins, characters from the snippet's start
     * @param source its text, perhaps with a semicolon added
     */
    record StatementSource(int start, String source) {}

    StatementSplitter(SourceCodeAnalysis analysis, String text) {
        this.analysis = analysis;
        this.length = text.length();
        this.rest = text;
    }

    /** The next statement; empty at the end. */
    Optional<StatementSource> next() {
        rest = rest.stripLeading(); // JShell miscounts lines after a leading line break
        int start = length - rest.length();
        CompletionInfo info = analysis.analyzeCompletion(rest);
        switch (info.completeness()) {
            case EMPTY:
                rest = "";
                return Optional.empty();
            case COMPLETE:
            case COMPLETE_WITH_SEMI:
                rest = info.remaining();
                return Optional.of(new StatementSource(start, info.source()));
            default:
                String all = info.source() == null ? rest : info.source();
                rest = "";
                return Optional.of(new StatementSource(start, all));
        }
    }
}
