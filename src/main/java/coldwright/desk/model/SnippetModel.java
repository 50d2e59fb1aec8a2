package coldwright.desk.model;

import coldwright.bench.Outcome;
import coldwright.bench.Problem;
import coldwright.bench.Run;
import coldwright.bench.RunWatcher;
import coldwright.lesson.Part;

import javafx.beans.binding.BooleanExpression;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

/** A snippet: its text as the learner has it, and what came of running it. */
public final class SnippetModel implements PartModel {
    /** Whether a run goes on. */
    public enum Phase {
        /** None. */
        RESTING,
        /** Another snippet runs first. */
        WAITING,
        /** It runs, or those above run for it. */
        RUNNING
    }

    private final Part.Snippet snippet;
    private final String stepTitle;
    private final RunQueue queue;
    private final Supplier<List<SnippetModel>> above;
    private final Executor window;
    private final StringProperty text;
    private final BooleanExpression edited;
    private final ReadOnlyObjectWrapper<Phase> phase = new ReadOnlyObjectWrapper<>(Phase.RESTING);
    private final ReadOnlyStringWrapper progress = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Printed> printed =
            new ReadOnlyObjectWrapper<>(Printed.NOTHING);
    private final ReadOnlyObjectWrapper<Run> lastRun = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper changedSinceRun = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyBooleanWrapper everFinished = new ReadOnlyBooleanWrapper(false);
    private final ObservableList<Drawn> drawn = FXCollections.observableArrayList();
    private final List<Runnable> afterRun = new ArrayList<>();
    private RunQueue.Job job;

    /**
     * Makes a snippet with its author's text.
     *
     * @param snippet as the lesson has it
     * @param stepTitle the step it stands in
     * @param queue what runs it
     * @param above gives those that must run before it, in order
     * @param window the window's thread
     */
    SnippetModel(
            Part.Snippet snippet,
            String stepTitle,
            RunQueue queue,
            Supplier<List<SnippetModel>> above,
            Executor window) {
        this.snippet = snippet;
        this.stepTitle = stepTitle;
        this.queue = queue;
        this.above = above;
        this.window = window;
        this.text = new SimpleStringProperty(snippet.code());
        this.edited = BooleanExpression.booleanExpression(text.isNotEqualTo(snippet.code()));
        text.addListener((value, was, is) -> changedSinceRun.set(lastRun.get() != null));
    }

    /** Runs it; those above run first if they must. Nothing happens if it waits or runs already. */
    public void run() {
        if (phase.get() != Phase.RESTING) {
            return;
        }
        progress.set("waits for the snippet that runs now");
        phase.set(Phase.WAITING);
        job = new SnippetRun();
        queue.add(job);
    }

    /** Stops it, or takes back a run that has not begun. */
    public void stop() {
        if (job != null && !queue.stop(job)) {
            rest();
        }
    }

    /** Puts the author's text back. */
    public void reset() {
        text.set(snippet.code());
    }

    void whenRun(Runnable action) {
        afterRun.add(action);
    }

    /**
     * How the last run ended, if not well.
     *
     * @return one sentence
     */
    public String ending() {
        Outcome outcome = lastRun.get().outcome();
        if (outcome instanceof Outcome.AboveFailed failed) {
            SnippetModel first = above.get().get(failed.index());
            return "The snippet %s above did not run to its end: %s"
                    .formatted(
                            first.stepTitle.equals(stepTitle)
                                    ? "just"
                                    : "of “" + first.stepTitle + "”",
                            Endings.words(failed.how()));
        }
        return Endings.words(outcome);
    }

    private void rest() {
        job = null;
        progress.set("");
        phase.set(Phase.RESTING);
    }

    private void took(Run run, String ranText) {
        rest();
        printed.set(Printed.of(run.printed(), run.printedCut()));
        keepFigures(run);
        changedSinceRun.set(!text.get().equals(ranText));
        lastRun.set(run);
        if (run.outcome().finished()) {
            everFinished.set(true);
            afterRun.forEach(Runnable::run);
        }
    }

    /** A run that drew nothing because it failed leaves the former figures where they are. */
    private void keepFigures(Run run) {
        if (run.exhibits().isEmpty() && !run.outcome().finished()) {
            return;
        }
        drawn.setAll(Drawn.over(drawn, run.exhibits()));
    }

    /**
     * As the lesson has it.
     *
     * @return the author's snippet
     */
    public Part.Snippet snippet() {
        return snippet;
    }

    /**
     * The Java text.
     *
     * @return the text as the learner has it
     */
    public StringProperty text() {
        return text;
    }

    /**
     * Whether the text is no longer the author's.
     *
     * @return true if it was changed
     */
    public BooleanExpression edited() {
        return edited;
    }

    /**
     * Whether a run goes on.
     *
     * @return what it does now
     */
    public ReadOnlyObjectProperty<Phase> phase() {
        return phase.getReadOnlyProperty();
    }

    /**
     * What it waits for.
     *
     * @return a few words; empty if it simply runs, or rests
     */
    public ReadOnlyStringProperty progress() {
        return progress.getReadOnlyProperty();
    }

    /**
     * What it printed, also while it still runs.
     *
     * @return the printed text
     */
    public ReadOnlyObjectProperty<Printed> printed() {
        return printed.getReadOnlyProperty();
    }

    /**
     * The last run that ended.
     *
     * @return the run; null before the first
     */
    public ReadOnlyObjectProperty<Run> lastRun() {
        return lastRun.getReadOnlyProperty();
    }

    /**
     * Whether the text was changed after the last run, so that what is shown no longer belongs to
     * it.
     *
     * @return true if so
     */
    public ReadOnlyBooleanProperty changedSinceRun() {
        return changedSinceRun.getReadOnlyProperty();
    }

    /**
     * Whether it ever ran to its end.
     *
     * @return true once it has
     */
    public ReadOnlyBooleanProperty everFinished() {
        return everFinished.getReadOnlyProperty();
    }

    /** What it drew, in order. */
    public ObservableList<Drawn> drawn() {
        return drawn;
    }

    /**
     * What is wrong in the text as it stands.
     *
     * @return the problems of the last run; none if the text was changed since
     */
    public List<Problem> problems() {
        Run run = lastRun.get();
        if (run == null || changedSinceRun.get()) {
            return List.of();
        }
        if (run.outcome() instanceof Outcome.Rejected rejected) {
            return rejected.problems();
        }
        return run.outcome() instanceof Outcome.Threw threw ? List.of(threw.problem()) : List.of();
    }

    private final class SnippetRun implements RunQueue.Job {
        private final List<SnippetModel> first = above.get();
        private String ranText;

        @Override
        public List<String> above() {
            return first.stream().map(model -> model.text.get()).toList();
        }

        @Override
        public String snippet() {
            return ranText;
        }

        @Override
        public void begun() {
            ranText = text.get();
            printed.set(Printed.NOTHING);
            progress.set("");
            phase.set(Phase.RUNNING);
        }

        @Override
        public RunWatcher watcher() {
            return new LiveWatcher(
                    errand -> window.execute(() -> ifStillOn(errand)),
                    soFar -> printed.set(Printed.of(soFar, false)),
                    progress::set);
        }

        private void ifStillOn(Runnable errand) {
            if (job == this) {
                errand.run();
            }
        }

        @Override
        public void ended(Run run) {
            took(run, ranText);
        }
    }
}
