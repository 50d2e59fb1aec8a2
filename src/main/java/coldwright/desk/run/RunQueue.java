package coldwright.desk.run;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunListener;
import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetRights;
import coldwright.bench.compile.SnippetSource;
import coldwright.desk.messages.Messages;
import coldwright.help.Suggestion;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;

/** Runs one snippet at a time; the others wait for their turn. */
public final class RunQueue {
    /** A run that waits or runs. Its texts are read when its turn comes. */
    public interface QueuedRun {
        /** The snippets from the top, the one to run last. */
        List<SnippetSource> snippets();

        /** What they may do. */
        default SnippetRights rights() {
            return SnippetRights.CONFINED;
        }

        /** The run has started. */
        default void begun() {}

        /** Its listener, called on any thread. */
        default RunListener watcher() {
            return RunListener.NONE;
        }

        /** The run has ended. */
        void ended(FinishedRun run);
    }

    private final SnippetRunner runner;
    private final Executor window;
    private final Deque<QueuedRun> waiting = new ArrayDeque<>();
    private QueuedRun current;

    public RunQueue(SnippetRunner runner, Executor window) {
        this.runner = runner;
        this.window = window;
    }

    /** Suggests names; see {@link SnippetRunner#suggest}. */
    public CompletableFuture<List<Suggestion>> suggest(List<String> above, String text, int caret) {
        return runner.suggest(above, text, caret);
    }

    public void add(QueuedRun job) {
        waiting.add(job);
        next();
    }

    /** Stops a run, or removes it if it waits; then {@code ended} is not called. */
    public boolean stop(QueuedRun job) {
        if (job == current) {
            runner.stop();
            return true;
        }
        return !waiting.remove(job);
    }

    private void next() {
        if (current != null || waiting.isEmpty()) {
            return;
        }
        QueuedRun job = waiting.remove();
        current = job;
        job.begun();
        start(job).whenComplete((run, error) -> window.execute(() -> end(job, run, error)));
    }

    private CompletableFuture<FinishedRun> start(QueuedRun job) {
        try {
            return runner.run(job.snippets(), job.rights(), job.watcher());
        } catch (RuntimeException e) {
            return CompletableFuture.failedFuture(e);
        }
    }

    private void end(QueuedRun job, FinishedRun run, Throwable error) {
        current = null;
        try {
            job.ended(error == null ? run : lost(error));
        } finally {
            next();
        }
    }

    private static FinishedRun lost(Throwable error) {
        return FinishedRun.silent(
                new RunOutcome.Died(Messages.of("ending.no-bench", ExceptionText.text(error))));
    }
}
