package coldwright.bench;

import coldwright.bench.compile.SnippetSource;

import java.util.List;
import java.util.concurrent.CompletableFuture;

/** One run that was asked for. */
final class RunJob {
    private final List<SnippetSource> snippets;
    private final RunOutput record;
    private final CompletableFuture<FinishedRun> result = new CompletableFuture<>();
    private final CompletableFuture<Void> stop = new CompletableFuture<>();

    RunJob(List<SnippetSource> snippets, RunOutput record) {
        this.snippets = List.copyOf(snippets);
        this.record = record;
    }

    /** The snippets from the top, the one to run last. */
    List<SnippetSource> snippets() {
        return snippets;
    }

    int above() {
        return snippets.size() - 1;
    }

    RunOutput record() {
        return record;
    }

    CompletableFuture<FinishedRun> result() {
        return result;
    }

    void stop() {
        stop.complete(null);
    }

    boolean stopped() {
        return stop.isDone();
    }

    /** Done when a stop is asked for. */
    CompletableFuture<Void> stopAsked() {
        return stop;
    }
}
