package coldwright.bench.compile;

import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

import java.util.Iterator;
import java.util.NoSuchElementException;

/** Takes a snippet apart into statements, one at a time. */
final class StatementSplitter implements Iterator<StatementSplitter.StatementSource> {
    private final SourceCodeAnalysis analysis;
    private final int length;
    private String rest;
    private StatementSource next;

    /**
     * One statement, or what is left when that can't be told apart.
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

    @Override
    public boolean hasNext() {
        if (next == null && !rest.isBlank()) {
            next = split();
        }
        return next != null;
    }

    @Override
    public StatementSource next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        StatementSource piece = next;
        next = null;
        return piece;
    }

    private StatementSource split() {
        rest = rest.stripLeading(); // JShell counts lines wrongly in what begins with a line break
        int start = length - rest.length();
        CompletionInfo info = analysis.analyzeCompletion(rest);
        switch (info.completeness()) {
            case EMPTY:
                rest = "";
                return null;
            case COMPLETE:
            case COMPLETE_WITH_SEMI:
                rest = info.remaining();
                return new StatementSource(start, info.source());
            default:
                StatementSource all =
                        new StatementSource(start, info.source() == null ? rest : info.source());
                rest = "";
                return all;
        }
    }
}
