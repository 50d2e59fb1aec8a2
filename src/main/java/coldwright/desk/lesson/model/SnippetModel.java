package coldwright.desk.lesson.model;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.bench.compile.SnippetSource;
import coldwright.desk.messages.Messages;
import coldwright.desk.run.OutcomeSentences;
import coldwright.desk.run.RunContext;
import coldwright.desk.run.RunQueue;
import coldwright.desk.run.SnippetDependencies;
import coldwright.help.Suggestion;
import coldwright.lesson.LessonPart;

import javafx.beans.binding.BooleanExpression;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.ObservableList;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;

/** A snippet: its text as the learner has it, and its results. */
public final class SnippetModel implements PartModel {
    /** The phase of a run. */
    public enum Phase {
        /** No run. */
        RESTING,
        /** Another snippet runs first. */
        WAITING,
        /** It runs, or those above run for it. */
        RUNNING
    }

    /** A slower snippet doesn't run along with a dial above. */
    private static final Duration QUICK = Duration.ofMillis(30);

    private final LessonPart.Snippet snippet;
    private final String stepTitle;
    private final RunQueue queue;
    private final List<SnippetModel> above;
    private final StringProperty text;
    private final BooleanExpression edited;
    private final List<Runnable> afterRest = new ArrayList<>();
    private final SnippetDials dials = new SnippetDials(this);
    private final SnippetResult result = new SnippetResult();
    private final SnippetRuns runs;
    private final ReadOnlyBooleanWrapper ranForBelow = new ReadOnlyBooleanWrapper(false);
    private boolean ranBefore;

    /** A snippet with its author's text, and those above that must run before it, in order. */
    SnippetModel(
            LessonPart.Snippet snippet,
            String stepTitle,
            RunContext runContext,
            List<SnippetModel> above) {
        this.snippet = snippet;
        this.stepTitle = stepTitle;
        this.queue = runContext.queue();
        this.above = above;
        this.runs = new SnippetRuns(runContext, this::presentSources, result);
        this.text = new SimpleStringProperty(snippet.code());
        this.edited = BooleanExpression.booleanExpression(text.isNotEqualTo(snippet.code()));
        dials.read(text.get());
        text.addListener((value, was, is) -> dials.read(is));
        runs.whenEnded(this::ended);
    }

    private void ended(boolean well) {
        ranForBelow.set(false);
        if (well) {
            above.forEach(SnippetModel::ranForBelow);
        }
    }

    @Override
    public void accept(Visitor visitor) {
        visitor.snippet(this);
    }

    /** Runs it, after those above if they must run first. Ignored if it waits or runs already. */
    public void run() {
        if (runs.mayStart()) {
            rested();
            runs.start();
        }
    }

    /** A dial has moved: runs with the position that the dial has when its turn comes. */
    void turned() {
        runs.turned();
    }

    /** The dials rest: writes their positions into the text. */
    void rested() {
        String written = dials.written(text.get());
        if (!written.equals(text.get())) {
            text.set(written);
            afterRest.forEach(Runnable::run);
        }
    }

    /** Stops it, or cancels a run that hasn't started. */
    public void stop() {
        runs.stop();
    }

    /**
     * Suggests names at a position of its text.
     *
     * @param now the current text of the editor
     * @param caret a position in it
     * @return the names, best first; completed on any thread
     */
    public CompletableFuture<List<Suggestion>> suggest(String now, int caret) {
        List<String> texts = presentTexts();
        return queue.suggest(texts.subList(0, texts.size() - 1), now, caret);
    }

    /** It ran in the lesson's previous text, so it runs again in this one. */
    public void runsAgain() {
        ranBefore = true;
    }

    /** Whether it ran, here or in the lesson's previous text, even if an error ended it. */
    public boolean wasRun() {
        FinishedRun run = result.lastRun().get();
        return ranBefore
                || result.everFinished().get()
                || run != null && !(run.outcome() instanceof RunOutcome.Stopped);
    }

    /** It ran first for a snippet below; its results are hidden until it is run itself. */
    private void ranForBelow() {
        if (result.lastRun().get() == null) {
            ranForBelow.set(true);
        }
    }

    /** Whether it ran only because a snippet below needs it, so that its results are hidden. */
    public ReadOnlyBooleanProperty onlyForBelow() {
        return ranForBelow.getReadOnlyProperty();
    }

    /** Restores the author's text. The error of a failed run goes with the text that failed. */
    public void reset() {
        text.set(snippet.code());
        FinishedRun run = result.lastRun().get();
        if (run != null && !run.outcome().finished() && result.changedSinceRun().get()) {
            result.forget();
        }
    }

    /** Resets it to never run. */
    void forget() {
        stop();
        ranBefore = false;
        ranForBelow.set(false);
        result.forget();
    }

    /** Runs an action after each requested run that finished. */
    void whenRun(Runnable action) {
        runs.whenRun(action);
    }

    /** Runs an action after each run for a dial. */
    void whenTurned(Runnable action) {
        runs.whenTurned(action);
    }

    /** Runs an action once a dial rests. */
    void whenRested(Runnable action) {
        afterRest.add(action);
    }

    /** A dial above turns: runs along if it depends on the dial, ran before, and is quick. */
    void follow(SnippetDependencies snippetDependencies) {
        boolean quick =
                result.everFinished().get()
                        && result.lastRun().get().elapsed().compareTo(QUICK) < 0;
        if (quick && result.wouldDiffer(presentTexts(), snippetDependencies)) {
            turned();
        }
    }

    /** Listens to the end of each requested run: whether it finished. */
    void whenEnded(Consumer<Boolean> action) {
        runs.whenEnded(action);
    }

    /** The source that checks run: the text as written, wherever its dials are. */
    SnippetSource restedSource() {
        return dials.rested(text.get());
    }

    /** The snippets from the top, its own last, with the current positions of all dials. */
    private List<SnippetSource> presentSources() {
        List<SnippetSource> sources = new ArrayList<>();
        above.forEach(one -> sources.add(one.dials.present(one.text.get())));
        sources.add(dials.present(text.get()));
        return sources;
    }

    private List<String> presentTexts() {
        return presentSources().stream().map(SnippetSource::text).toList();
    }

    /** Updates whether its results are out of date. While a dial turns they are current. */
    void judge(SnippetDependencies snippetDependencies) {
        if (!runs.turning()) {
            result.judge(presentTexts(), snippetDependencies);
        }
    }

    /** How the last run failed, in one sentence; empty if it didn't. */
    public String ending() {
        RunOutcome outcome = result.lastRun().get().outcome();
        if (outcome instanceof RunOutcome.AboveFailed failed) {
            SnippetModel first = above.get(failed.index());
            String how = OutcomeSentences.words(failed.how());
            return first.stepTitle.equals(stepTitle)
                    ? Messages.of("ending.just-above", how)
                    : Messages.of("ending.above-of", first.stepTitle, how);
        }
        return OutcomeSentences.words(outcome);
    }

    public LessonPart.Snippet snippet() {
        return snippet;
    }

    /** Its Java text as the learner has it. */
    public StringProperty text() {
        return text;
    }

    /** Whether the text differs from the author's. */
    public BooleanExpression edited() {
        return edited;
    }

    public ReadOnlyObjectProperty<Phase> phase() {
        return runs.phase();
    }

    /** How long it has been running, s. */
    public double runningS() {
        return runs.runningS();
    }

    /** What it waits for, in a few words; empty if it runs or is idle. */
    public ReadOnlyStringProperty progress() {
        return runs.progress();
    }

    /** The dials, in the order of the text. */
    public ObservableList<DialModel> dials() {
        return dials.all();
    }

    /** The last run, with its printed text and figures. */
    public SnippetResult result() {
        return result;
    }
}
