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

    /** What takes longer does not run along with a dial above. */
    private static final Duration QUICK = Duration.ofMillis(30);

    private final LessonPart.Snippet snippet;
    private final String stepTitle;
    private final RunQueue queue;
    private final Supplier<List<SnippetModel>> above;
    private final StringProperty text;
    private final BooleanExpression edited;
    private final List<Runnable> afterRest = new ArrayList<>();
    private final SnippetDials dials = new SnippetDials(this);
    private final SnippetResult result = new SnippetResult();
    private final SnippetRuns runs;
    private final ReadOnlyBooleanWrapper ranForBelow = new ReadOnlyBooleanWrapper(false);
    private boolean ranBefore;

    /**
     * Makes a snippet with its author's text.
     *
     * @param snippet as the lesson has it
     * @param stepTitle the step it stands in
     * @param runContext what it runs with
     * @param above gives those that must run before it, in order
     */
    SnippetModel(
            LessonPart.Snippet snippet,
            String stepTitle,
            RunContext runContext,
            Supplier<List<SnippetModel>> above) {
        this.snippet = snippet;
        this.stepTitle = stepTitle;
        this.queue = runContext.queue();
        this.above = above;
        this.runs = new SnippetRuns(runContext, this::presentSources, result);
        this.text = new SimpleStringProperty(snippet.code());
        this.edited = BooleanExpression.booleanExpression(text.isNotEqualTo(snippet.code()));
        dials.read(text.get());
        text.addListener((value, was, is) -> dials.read(is));
        runs.whenEnded(well -> ended(well));
    }

    private void ended(boolean well) {
        ranForBelow.set(false);
        if (well) {
            above.get().forEach(SnippetModel::ranForBelow);
        }
    }

    @Override
    public void accept(Visitor visitor) {
        visitor.snippet(this);
    }

    /** Runs it; those above run first if they must. Nothing happens if it waits or runs already. */
    public void run() {
        if (runs.mayStart()) {
            rested();
            runs.start();
        }
    }

    /** A dial has moved: it runs with the position that the dial has when its turn comes. */
    void turned() {
        runs.turned();
    }

    /** The dials rest: their positions are written into the text. */
    void rested() {
        String written = dials.written(text.get());
        if (!written.equals(text.get())) {
            text.set(written);
            afterRest.forEach(Runnable::run);
        }
    }

    /** Stops it, or takes back a run that has not begun. */
    public void stop() {
        runs.stop();
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

    /** It ran in the lesson's text before this one, and shall in this one. */
    public void runsAgain() {
        ranBefore = true;
    }

    /** Whether it ran, here or in a text before this one, even if a slip kept it from its end. */
    public boolean wasRun() {
        FinishedRun run = result.lastRun().get();
        return ranBefore
                || result.everFinished().get()
                || run != null && !(run.outcome() instanceof RunOutcome.Stopped);
    }

    /** It ran first for a snippet below; what it gives is not shown until it is run itself. */
    private void ranForBelow() {
        if (result.lastRun().get() == null) {
            ranForBelow.set(true);
        }
    }

    /** Whether it ran only because a snippet below needs it, so nothing of it is shown. */
    public ReadOnlyBooleanProperty onlyForBelow() {
        return ranForBelow.getReadOnlyProperty();
    }

    /** Puts the author's text back. */
    public void reset() {
        text.set(snippet.code());
    }

    /** It never ran. */
    void forget() {
        stop();
        ranBefore = false;
        ranForBelow.set(false);
        result.forget();
    }

    /** Does something after each run that was asked for and came to its end. */
    void whenRun(Runnable action) {
        runs.whenRun(action);
    }

    /** Does something after each run that a dial asked for. */
    void whenTurned(Runnable action) {
        runs.whenTurned(action);
    }

    /** Does something once a dial has come to rest. */
    void whenRested(Runnable action) {
        afterRest.add(action);
    }

    /** A dial above turns: it runs along if it hangs on that, ran before, and is quick. */
    void follow(SnippetDependencies snippetDependencies) {
        boolean quick =
                result.everFinished().get()
                        && result.lastRun().get().elapsed().compareTo(QUICK) < 0;
        if (quick && result.wouldDiffer(presentTexts(), snippetDependencies)) {
            turned();
        }
    }

    /** Hears after each run that was asked for whether it came to its end. */
    void whenEnded(Consumer<Boolean> action) {
        runs.whenEnded(action);
    }

    /** What a check runs: the text as it is written, whatever its dials do. */
    SnippetSource restedSource() {
        return dials.rested(text.get());
    }

    /** The snippets from the top, its own last, with all dials where they are. */
    private List<SnippetSource> presentSources() {
        List<SnippetSource> sources = new ArrayList<>();
        above.get().forEach(one -> sources.add(one.dials.present(one.text.get())));
        sources.add(dials.present(text.get()));
        return sources;
    }

    private List<String> presentTexts() {
        return presentSources().stream().map(SnippetSource::text).toList();
    }

    /** Judges whether what it gave still stands. While a dial turns, what comes is what stands. */
    void judge(SnippetDependencies snippetDependencies) {
        if (!runs.turning()) {
            result.judge(presentTexts(), snippetDependencies);
        }
    }

    /** How the last run ended, in one sentence, if not well. */
    public String ending() {
        RunOutcome outcome = result.lastRun().get().outcome();
        if (outcome instanceof RunOutcome.AboveFailed failed) {
            SnippetModel first = above.get().get(failed.index());
            String how = OutcomeSentences.words(failed.how());
            return first.stepTitle.equals(stepTitle)
                    ? Messages.of("ending.just-above", how)
                    : Messages.of("ending.above-of", first.stepTitle, how);
        }
        return OutcomeSentences.words(outcome);
    }

    /** The snippet as its author wrote it. */
    public LessonPart.Snippet snippet() {
        return snippet;
    }

    /** Its Java text as the learner has it. */
    public StringProperty text() {
        return text;
    }

    /** Whether the text is no longer the author's. */
    public BooleanExpression edited() {
        return edited;
    }

    /** What it does now. */
    public ReadOnlyObjectProperty<Phase> phase() {
        return runs.phase();
    }

    /** What it waits for, in a few words; empty if it simply runs, or rests. */
    public ReadOnlyStringProperty progress() {
        return runs.progress();
    }

    /** The numbers that can be turned, in the order of the text. */
    public ObservableList<DialModel> dials() {
        return dials.all();
    }

    /** The last run, and what it printed and drew. */
    public SnippetResult result() {
        return result;
    }
}
