package coldwright.desk.lesson.model;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunListener;
import coldwright.bench.SnippetRights;
import coldwright.bench.compile.SnippetSource;
import coldwright.desk.run.RunQueue;

import java.util.List;

/** One run of a snippet, from request to end. */
final class SnippetRun implements RunQueue.QueuedRun {
    private final SnippetRuns runs;
    private final boolean turn;
    private List<SnippetSource> snippets = List.of();

    /**
     * A run that isn't requested yet.
     *
     * @param turn whether it is for a dial, so that nothing is shown while it is quick
     */
    SnippetRun(SnippetRuns runs, boolean turn) {
        this.runs = runs;
        this.turn = turn;
    }

    boolean turn() {
        return turn;
    }

    /** The texts that ran, from the top, its own last. */
    List<String> texts() {
        return snippets.stream().map(SnippetSource::text).toList();
    }

    /** Whether it has started. */
    boolean begins() {
        return !snippets.isEmpty();
    }

    @Override
    public List<SnippetSource> snippets() {
        return snippets;
    }

    @Override
    public SnippetRights rights() {
        return runs.rights();
    }

    @Override
    public void begun() {
        snippets = runs.snippets();
        runs.begun(this);
    }

    @Override
    public RunListener watcher() {
        return runs.watcher(this);
    }

    @Override
    public void ended(FinishedRun run) {
        runs.ended(this, run);
    }
}
