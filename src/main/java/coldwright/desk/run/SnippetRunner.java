package coldwright.desk.run;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunListener;
import coldwright.bench.compile.SnippetSource;
import coldwright.help.Suggestion;

import java.util.List;
import java.util.concurrent.CompletableFuture;

/** What runs snippets: the bench, or in tests something that stands for it. */
public interface SnippetRunner {
    /**
     * Begins a run and returns at once.
     *
     * @param snippets the snippets from the top, the one to run last
     * @param watcher hears of the run on any thread
     * @return the run as it ended; completed on any thread
     */
    CompletableFuture<FinishedRun> run(List<SnippetSource> snippets, RunListener watcher);

    /**
     * Finds the names that may stand at a place of a snippet, when no run is under way.
     *
     * @param above the snippets above, in order
     * @param text the snippet
     * @param caret a place in it
     * @return the names, best first; completed on any thread
     */
    default CompletableFuture<List<Suggestion>> suggest(
            List<String> above, String text, int caret) {
        return CompletableFuture.completedFuture(List.of());
    }

    /** Asks the run that goes on to end, and returns at once. */
    void stop();
}
