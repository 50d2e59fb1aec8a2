package coldwright.desk.model;

import coldwright.bench.Outcome;
import coldwright.bench.Run;
import coldwright.bench.RunWatcher;
import coldwright.desk.say.Say;
import coldwright.help.Suggestion;
import coldwright.lesson.Part;

import javafx.beans.binding.BooleanExpression;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.ObservableList;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
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

    /** A turn that takes longer is shown as a run, so that it can be stopped. */
    private static final long SLOW_TURN_MS = 300;

    /** What takes longer does not run along with a dial above. */
    private static final Duration QUICK = Duration.ofMillis(30);

    private final Part.Snippet snippet;
    private final String stepTitle;
    private final RunQueue queue;
    private final Gate gate;
    private final Supplier<List<SnippetModel>> above;
    private final Executor window;
    private final StringProperty text;
    private final BooleanExpression edited;
    private final ReadOnlyObjectWrapper<Phase> phase = new ReadOnlyObjectWrapper<>(Phase.RESTING);
    private final ReadOnlyStringWrapper progress = new ReadOnlyStringWrapper("");
    private final List<Runnable> afterRun = new ArrayList<>();
    private final List<Runnable> afterTurn = new ArrayList<>();
    private final List<Runnable> afterRest = new ArrayList<>();
    private final List<Consumer<Boolean>> afterEnd = new ArrayList<>();
    private final Dials dials = new Dials(this);
    private final Came came = new Came();
    private SnippetRun job;
    private boolean turnedMeanwhile;

    /**
     * Makes a snippet with its author's text.
     *
     * @param snippet as the lesson has it
     * @param stepTitle the step it stands in
     * @param running what it runs with
     * @param above gives those that must run before it, in order
     */
    SnippetModel(
            Part.Snippet snippet,
            String stepTitle,
            Running running,
            Supplier<List<SnippetModel>> above) {
        this.snippet = snippet;
        this.stepTitle = stepTitle;
        this.queue = running.queue();
        this.gate = running.gate();
        this.above = above;
        this.window = running.window();
        this.text = new SimpleStringProperty(snippet.code());
        this.edited = BooleanExpression.booleanExpression(text.isNotEqualTo(snippet.code()));
        dials.read(text.get());
        text.addListener((value, was, is) -> dials.read(is));
    }

    /** Runs it; those above run first if they must. Nothing happens if it waits or runs already. */
    public void run() {
        if (phase.get() == Phase.RESTING && (job == null || job.turn()) && gate.passes()) {
            rested();
            progress.set(Say.of("snippet.waits"));
            phase.set(Phase.WAITING);
            begin(new SnippetRun(this, false));
        }
    }

    /** A dial has moved: it runs with the position that the dial has when its turn comes. */
    void turned() {
        if (job == null && gate.passes()) {
            begin(new SnippetRun(this, true));
        } else if (job != null && job.begins()) {
            turnedMeanwhile = true;
        }
    }

    /** The dials rest: their positions are written into the text. */
    void rested() {
        String written = presentText();
        if (!written.equals(text.get())) {
            text.set(written);
            afterRest.forEach(Runnable::run);
        }
    }

    private void begin(SnippetRun next) {
        turnedMeanwhile = false;
        job = next;
        queue.add(next);
    }

    /** Stops it, or takes back a run that has not begun. */
    public void stop() {
        turnedMeanwhile = false;
        if (job != null && !queue.stop(job)) {
            rest();
            afterEnd.forEach(one -> one.accept(false));
        }
    }

    /**
     * Finds the names that may stand at a place of its text.
     *
     * @param now its text as it is in the editor
     * @param caret a place in it
     * @return the names, best first; completed on any thread
     */
    public CompletableFuture<List<Suggestion>> suggest(String now, int caret) {
        List<String> texts = presentTexts();
        return queue.suggest(texts.subList(0, texts.size() - 1), now, caret);
    }

    /** Puts the author's text back. */
    public void reset() {
        text.set(snippet.code());
    }

    /** Does something after each run that was asked for and came to its end. */
    void whenRun(Runnable action) {
        afterRun.add(action);
    }

    /** Does something after each run that a dial asked for. */
    void whenTurned(Runnable action) {
        afterTurn.add(action);
    }

    /** Does something once a dial has come to rest. */
    void whenRested(Runnable action) {
        afterRest.add(action);
    }

    /** A dial above turns: it runs along if it hangs on that, ran before, and is quick. */
    void follow(Dependence dependence) {
        boolean quick =
                came.everFinished().get() && came.lastRun().get().elapsed().compareTo(QUICK) < 0;
        if (quick && came.wouldDiffer(presentTexts(), dependence)) {
            turned();
        }
    }

    /** Hears after each run that was asked for whether it came to its end. */
    void whenEnded(Consumer<Boolean> action) {
        afterEnd.add(action);
    }

    /** The text with the dials where they stand. */
    String presentText() {
        return dials.written(text.get());
    }

    /** The texts from the top, its own last, with all dials where they stand. */
    List<String> presentTexts() {
        List<String> texts = new ArrayList<>();
        above.get().forEach(one -> texts.add(one.presentText()));
        texts.add(presentText());
        return texts;
    }

    /** Judges whether what it gave still stands. While a dial turns, what comes is what stands. */
    void judge(Dependence dependence) {
        if (job == null || !job.turn()) {
            came.judge(presentTexts(), dependence);
        }
    }

    /**
     * How the last run ended, if not well.
     *
     * @return one sentence
     */
    public String ending() {
        Outcome outcome = came.lastRun().get().outcome();
        if (outcome instanceof Outcome.AboveFailed failed) {
            SnippetModel first = above.get().get(failed.index());
            String how = Endings.words(failed.how());
            return first.stepTitle.equals(stepTitle)
                    ? Say.of("ending.just-above", how)
                    : Say.of("ending.above-of", first.stepTitle, how);
        }
        return Endings.words(outcome);
    }

    private void rest() {
        job = null;
        progress.set("");
        phase.set(Phase.RESTING);
    }

    /** A run's turn has come. */
    void begun(SnippetRun run) {
        if (run.turn()) {
            CompletableFuture.delayedExecutor(SLOW_TURN_MS, TimeUnit.MILLISECONDS, window)
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
                        window.execute(
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
     * The numbers that can be turned.
     *
     * @return its dials, in the order of the text
     */
    public ObservableList<DialModel> dials() {
        return dials.all();
    }

    /**
     * What came of running it.
     *
     * @return the last run and what it printed and drew
     */
    public Came came() {
        return came;
    }
}
