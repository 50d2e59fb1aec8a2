package coldwright.bench;

import coldwright.bench.compile.SnippetSource;

import java.util.List;
import java.util.concurrent.CompletableFuture;

/**
 * One run that was asked for.
 *
 * @param snippets the snippets from the top, the one to run last
 * @param record takes what it prints and draws
 * @param result how it ended
 * @param stopAsked done when a stop is asked for
 */
record RunJob(
        List<SnippetSource> snippets,
        RunOutput record,
        CompletableFuture<FinishedRun> result,
        CompletableFuture<Void> stopAsked) {
    RunJob(List<SnippetSource> snippets, RunOutput record) {
        this(List.copyOf(snippets), record, new CompletableFuture<>(), new CompletableFuture<>());
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
