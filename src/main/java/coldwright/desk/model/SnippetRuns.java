package coldwright.desk.model;

import coldwright.bench.Run;
import coldwright.bench.RunWatcher;
import coldwright.desk.model.SnippetModel.Phase;
import coldwright.desk.say.Say;

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

/** The runs of a snippet, one at a time: those that were asked for, and those of a dial. */
final class SnippetRuns {
    /** A turn that takes longer is shown as a run, so that it can be stopped. */
    private static final long SLOW_TURN_MS = 300;

    private final Running running;
    private final Supplier<List<String>> texts;
    private final Came came;
    private final ReadOnlyObjectWrapper<Phase> phase = new ReadOnlyObjectWrapper<>(Phase.RESTING);
    private final ReadOnlyStringWrapper progress = new ReadOnlyStringWrapper("");
    private final List<Runnable> afterRun = new ArrayList<>();
    private final List<Runnable> afterTurn = new ArrayList<>();
    private final List<Consumer<Boolean>> afterEnd = new ArrayList<>();
    private SnippetRun job;
    private boolean turnedMeanwhile;

    /**
     * Makes them; none goes on.
     *
     * @param running what they run with
     * @param texts gives what a run runs when its turn comes: from the top, the snippet's own last
     * @param came takes what comes of them
     */
    SnippetRuns(Running running, Supplier<List<String>> texts, Came came) {
        this.running = running;
        this.texts = texts;
        this.came = came;
    }

    /** Whether a run may be asked for: none was, and the lesson's snippets may run. */
    boolean mayBegin() {
        return phase.get() == Phase.RESTING
                && (job == null || job.turn())
                && running.gate().passes();
    }

    /** A run is asked for. */
    void begin() {
        progress.set(Say.of("snippet.waits"));
        phase.set(Phase.WAITING);
        begin(new SnippetRun(this, false));
    }

    /** A dial has moved: a run comes with the position that the dial has when its turn comes. */
    void turned() {
        if (job == null && running.gate().passes()) {
            begin(new SnippetRun(this, true));
        } else if (job != null && job.begins()) {
            turnedMeanwhile = true;
        }
    }

    private void begin(SnippetRun next) {
        turnedMeanwhile = false;
        job = next;
        running.queue().add(next);
    }

    /** Stops the run, or takes back one that has not begun. */
    void stop() {
        turnedMeanwhile = false;
        if (job != null && !running.queue().stop(job)) {
            rest();
            afterEnd.forEach(one -> one.accept(false));
        }
    }

    private void rest() {
        job = null;
        progress.set("");
        phase.set(Phase.RESTING);
    }

    /** Whether a run of a dial goes on or waits. */
    boolean turning() {
        return job != null && job.turn();
    }

    /** What a run is to run now. */
    List<String> texts() {
        return texts.get();
    }

    /** A run's turn has come. */
    void begun(SnippetRun run) {
        if (run.turn()) {
            CompletableFuture.delayedExecutor(SLOW_TURN_MS, TimeUnit.MILLISECONDS, running.window())
                    .execute(
                            () -> {
                                if (job == run) {
                                    phase.set(Phase.RUNNING);
                                }
                            });
        } else {
            came.begins();
            progress.set("");
            phase.set(Phase.RUNNING);
        }
    }

    /** What hears of a run while it goes on. */
    RunWatcher watcher(SnippetRun run) {
        return new LiveWatcher(
                errand ->
                        running.window()
                                .execute(
                                        () -> {
                                            if (job == run && phase.get() == Phase.RUNNING) {
                                                errand.run();
                                            }
                                        }),
                came::prints,
                progress::set);
    }

    /** A run has ended. */
    void ended(SnippetRun run, Run how) {
        if (job == run) {
            rest();
        }
        came.take(how, run.texts(), run.turn());
        boolean finished = how.outcome().finished();
        if (turnedMeanwhile && job == null) {
            begin(new SnippetRun(this, true));
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

    /** Does something after each run that was asked for and came to its end. */
    void whenRun(Runnable action) {
        afterRun.add(action);
    }

    /** Does something after each run of a dial. */
    void whenTurned(Runnable action) {
        afterTurn.add(action);
    }

    /** Hears after each run that was asked for whether it came to its end. */
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
