package coldwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;

/** One run that was asked for. */
final class RunJob {
    private final List<String> texts;
    private final RunOutput record;
    private final CompletableFuture<FinishedRun> result = new CompletableFuture<>();
    private final CompletableFuture<Void> stop = new CompletableFuture<>();

    RunJob(List<String> above, String snippet, RunOutput record) {
        List<String> all = new ArrayList<>(above);
        all.add(snippet);
        this.texts = List.copyOf(all);
        this.record = record;
    }

    /** The snippets from the top, the one to run last. */
    List<String> texts() {
        return texts;
    }

    int above() {
        return texts.size() - 1;
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
