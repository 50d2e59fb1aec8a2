package coldwright.desk.lesson.model;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunListener;
import coldwright.bench.SnippetRights;
import coldwright.bench.compile.SnippetSource;
import coldwright.desk.lesson.model.SnippetModel.Phase;
import coldwright.desk.messages.Messages;
import coldwright.desk.run.LiveOutput;
import coldwright.desk.run.RunContext;
import coldwright.desk.run.RunQueue;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** The runs of a snippet, one at a time: requested ones, and those for a dial. */
final class SnippetRuns {
    /** A slower run for a dial is shown as a run, so that it can be stopped. */
    private static final long SLOW_TURN_MS = 300;

    private final RunContext runContext;
    private final Supplier<List<SnippetSource>> snippets;
    private final SnippetResult result;
    private final ReadOnlyObjectWrapper<Phase> phase = new ReadOnlyObjectWrapper<>(Phase.RESTING);
    private final ReadOnlyStringWrapper progress = new ReadOnlyStringWrapper("");
    private final List<Runnable> afterRun = new ArrayList<>();
    private final List<Runnable> afterTurn = new ArrayList<>();
    private final List<Consumer<Boolean>> afterEnd = new ArrayList<>();
    private SnippetRun job;
    private boolean turnedMeanwhile;
    private long startedNanos;

    /** One run, from request to end; nothing is shown of a quick one for a dial. */
    private final class SnippetRun implements RunQueue.QueuedRun {
        private final boolean turn;
        private List<SnippetSource> sources = List.of();

        SnippetRun(boolean turn) {
            this.turn = turn;
        }

        @Override
        public List<SnippetSource> snippets() {
            return sources;
        }

        @Override
        public SnippetRights rights() {
            return runContext.gate().rights();
        }

        @Override
        public void begun() {
            sources = snippets.get();
            if (turn) {
                Executor window = runContext.window();
                CompletableFuture.delayedExecutor(SLOW_TURN_MS, TimeUnit.MILLISECONDS, window)
                        .execute(
                                () -> {
                                    if (job == this) {
                                        running();
                                    }
                                });
            } else {
                result.start();
                progress.set("");
                running();
            }
        }

        @Override
        public RunListener watcher() {
            Executor whileRunning =
                    errand ->
                            runContext
                                    .window()
                                    .execute(
                                            () -> {
                                                if (job == this && phase.get() == Phase.RUNNING) {
                                                    errand.run();
                                                }
                                            });
            return new LiveOutput(whileRunning, result::prints, progress::set);
        }

        @Override
        public void ended(FinishedRun run) {
            if (job == this) {
                rest();
            }
            result.take(run, sources.stream().map(SnippetSource::text).toList(), turn);
            runContext.gate().ended(run.outcome());
            boolean finished = run.outcome().finished();
            if (turnedMeanwhile && job == null) {
                start(true);
            }
            if (turn) {
                afterTurn.forEach(Runnable::run);
            } else {
                if (finished) {
                    afterRun.forEach(Runnable::run);
                }
                afterEnd.forEach(one -> one.accept(finished));
            }
        }
    }

    /** None active; a run's sources are read when its turn comes: from the top, its own last. */
    SnippetRuns(
            RunContext runContext,
            Supplier<List<SnippetSource>> snippets,
            SnippetResult snippetResult) {
        this.runContext = runContext;
        this.snippets = snippets;
        this.result = snippetResult;
    }

    private void running() {
        startedNanos = System.nanoTime();
        phase.set(Phase.RUNNING);
    }

    /** How long the run has been shown as running, s. */
    double runningS() {
        return (System.nanoTime() - startedNanos) / 1e9;
    }

    /** Whether a run may be requested: none is waiting. */
    boolean mayStart() {
        return phase.get() == Phase.RESTING && (job == null || job.turn);
    }

    /** Requests a run. */
    void start() {
        progress.set(Messages.of("snippet.waits"));
        phase.set(Phase.WAITING);
        start(false);
    }

    /** A dial has moved: requests a run with the position that the dial has when its turn comes. */
    void turned() {
        if (job == null) {
            start(true);
        } else if (!job.sources.isEmpty()) {
            turnedMeanwhile = true;
        }
    }

    private void start(boolean turn) {
        turnedMeanwhile = false;
        job = new SnippetRun(turn);
        runContext.queue().add(job);
    }

    /** Stops the run, or cancels one that hasn't started. */
    void stop() {
        turnedMeanwhile = false;
        if (job != null && !runContext.queue().stop(job)) {
            rest();
            afterEnd.forEach(one -> one.accept(false));
        }
    }

    private void rest() {
        job = null;
        progress.set("");
        phase.set(Phase.RESTING);
    }

    /** Whether a run for a dial runs or waits. */
    boolean turning() {
        return job != null && job.turn;
    }

    /** Runs an action after each requested run that finished. */
    void whenRun(Runnable action) {
        afterRun.add(action);
    }

    /** Runs an action after each run for a dial. */
    void whenTurned(Runnable action) {
        afterTurn.add(action);
    }

    /** Listens to the end of each requested run: whether it finished. */
    void whenEnded(Consumer<Boolean> action) {
        afterEnd.add(action);
    }

    ReadOnlyObjectProperty<Phase> phase() {
        return phase.getReadOnlyProperty();
    }

    ReadOnlyStringProperty progress() {
        return progress.getReadOnlyProperty();
    }
}
