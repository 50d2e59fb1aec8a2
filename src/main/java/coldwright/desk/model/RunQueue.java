package coldwright.desk.model;

import coldwright.bench.Outcome;
import coldwright.bench.Run;
import coldwright.bench.RunWatcher;
import coldwright.desk.say.Say;
import coldwright.help.Suggestion;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;

/** Lets one run go on at a time; the others wait for their turn. */
public final class RunQueue {
    /** A run that waits or goes on. Its texts are read when its turn comes. */
    interface Job {
        /** The snippets above, in order. */
        List<String> above();

        /** What to run. */
        String snippet();

        /** Its turn has come. */
        void begun();

        /** Hears of it while it goes on, on any thread. */
        RunWatcher watcher();

        /** It has ended. */
        void ended(Run run);
    }

    private final Runner runner;
    private final Executor window;
    private final Deque<Job> waiting = new ArrayDeque<>();
    private Job current;

    /**
     * Makes an empty queue.
     *
     * @param runner what runs snippets
     * @param window the window's thread
     */
    public RunQueue(Runner runner, Executor window) {
        this.runner = runner;
        this.window = window;
    }

    /** Finds names; see {@link Runner#suggest}. */
    CompletableFuture<List<Suggestion>> suggest(List<String> above, String text, int caret) {
        return runner.suggest(above, text, caret);
    }

    void add(Job job) {
        waiting.add(job);
        next();
    }

    /** Stops a job that goes on, or takes it out if it waits; then {@code ended} is not called. */
    boolean stop(Job job) {
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
        Job job = waiting.remove();
        current = job;
        job.begun();
        begin(job).whenComplete((run, trouble) -> window.execute(() -> end(job, run, trouble)));
    }

    private CompletableFuture<Run> begin(Job job) {
        try {
            return runner.run(job.above(), job.snippet(), job.watcher());
        } catch (RuntimeException e) {
            return CompletableFuture.failedFuture(e);
        }
    }

    private void end(Job job, Run run, Throwable trouble) {
        current = null;
        try {
            job.ended(trouble == null ? run : lost(trouble));
        } finally {
            next();
        }
    }

    private static Run lost(Throwable trouble) {
        return new Run(
                new Outcome.Died(Say.of("ending.no-bench", Trouble.said(trouble))),
                "",
                false,
                List.of(),
                Duration.ZERO);
    }
}
