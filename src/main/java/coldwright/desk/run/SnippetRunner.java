package coldwright.desk.run;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunListener;
import coldwright.bench.SnippetRights;
import coldwright.bench.compile.SnippetSource;
import coldwright.help.Suggestion;

import java.util.List;
import java.util.concurrent.CompletableFuture;

/** Runs snippets: the bench, or a substitute in tests. */
public interface SnippetRunner {
    /**
     * Starts a run and returns at once.
     *
     * @param snippets the snippets from the top, the one to run last
     * @param rights what they may do
     * @param watcher listener, called on any thread
     * @return the end of the run; completed on any thread
     */
    CompletableFuture<FinishedRun> run(
            List<SnippetSource> snippets, SnippetRights rights, RunListener watcher);

    /**
     * Suggests names at a position of a snippet, when no run is active.
     *
     * @param above the snippets above, in order
     * @param text the snippet
     * @param caret a position in it
     * @return the names, best first; completed on any thread
     */
    default CompletableFuture<List<Suggestion>> suggest(
            List<String> above, String text, int caret) {
        return CompletableFuture.completedFuture(List.of());
    }

    /** Asks the active run to end, and returns at once. */
    void stop();
}
