package coldwright.desk.lesson.model;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunListener;
import coldwright.bench.SnippetRights;
import coldwright.bench.compile.SnippetSource;
import coldwright.desk.lesson.model.SnippetModel.Phase;
import coldwright.desk.messages.Messages;
import coldwright.desk.run.LiveOutput;
import coldwright.desk.run.RunContext;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
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

    /**
     * Makes runs, none active.
     *
     * @param runContext queue, thread and gate of the runs
     * @param snippets gives the sources when a run's turn comes: from the top, the snippet's own
     *     last
     * @param snippetResult receives the results
     */
    SnippetRuns(
            RunContext runContext,
            Supplier<List<SnippetSource>> snippets,
            SnippetResult snippetResult) {
        this.runContext = runContext;
        this.snippets = snippets;
        this.result = snippetResult;
    }

    /** Whether a run may be requested: none is waiting. */
    boolean mayStart() {
        return phase.get() == Phase.RESTING && (job == null || job.turn());
    }

    /** Requests a run. */
    void start() {
        progress.set(Messages.of("snippet.waits"));
        phase.set(Phase.WAITING);
        start(new SnippetRun(this, false));
    }

    /** A dial has moved: requests a run with the position that the dial has when its turn comes. */
    void turned() {
        if (job == null) {
            start(new SnippetRun(this, true));
        } else if (job != null && job.begins()) {
            turnedMeanwhile = true;
        }
    }

    private void start(SnippetRun next) {
        turnedMeanwhile = false;
        job = next;
        runContext.queue().add(next);
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
        return job != null && job.turn();
    }

    /** The sources to run now. */
    List<SnippetSource> snippets() {
        return snippets.get();
    }

    /** What they may do now. */
    SnippetRights rights() {
        return runContext.gate().rights();
    }

    /** A run has started. */
    void begun(SnippetRun run) {
        if (run.turn()) {
            CompletableFuture.delayedExecutor(
                            SLOW_TURN_MS, TimeUnit.MILLISECONDS, runContext.window())
                    .execute(
                            () -> {
                                if (job == run) {
                                    phase.set(Phase.RUNNING);
                                }
                            });
        } else {
            result.start();
            progress.set("");
            phase.set(Phase.RUNNING);
        }
    }

    /** The listener of a run. */
    RunListener watcher(SnippetRun run) {
        return new LiveOutput(
                errand ->
                        runContext
                                .window()
                                .execute(
                                        () -> {
                                            if (job == run && phase.get() == Phase.RUNNING) {
                                                errand.run();
                                            }
                                        }),
                result::prints,
                progress::set);
    }

    /** A run has ended. */
    void ended(SnippetRun run, FinishedRun how) {
        if (job == run) {
            rest();
        }
        result.take(how, run.texts(), run.turn());
        runContext.gate().ended(how.outcome());
        boolean finished = how.outcome().finished();
        if (turnedMeanwhile && job == null) {
            start(new SnippetRun(this, true));
        }
        if (run.turn()) {
            afterTurn.forEach(Runnable::run);
        } else {
            if (finished) {
                afterRun.forEach(Runnable::run);
            }
            afterEnd.forEach(one -> one.accept(finished));
        }
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
