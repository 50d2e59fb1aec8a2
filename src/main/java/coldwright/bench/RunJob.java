package coldwright.bench;

import coldwright.bench.compile.SnippetSource;

import java.util.List;
import java.util.concurrent.CompletableFuture;

/**
 * A requested run.
 *
 * @param snippets the snippets from the top, the one to run last
 * @param rights what all of them may do
 * @param record collects output and figures
 * @param result completed when the run ends
 * @param stopAsked completed when a stop is requested
 */
record RunJob(
        List<SnippetSource> snippets,
        SnippetRights rights,
        RunOutput record,
        CompletableFuture<FinishedRun> result,
        CompletableFuture<Void> stopAsked) {
    RunJob(List<SnippetSource> snippets, SnippetRights rights, RunOutput record) {
        this(
                List.copyOf(snippets),
                rights,
                record,
                new CompletableFuture<>(),
                new CompletableFuture<>());
    }

    int above() {
        return snippets.size() - 1;
    }

    void stop() {
        stopAsked.complete(null);
    }

    boolean stopped() {
        return stopAsked.isDone();
    }
}
