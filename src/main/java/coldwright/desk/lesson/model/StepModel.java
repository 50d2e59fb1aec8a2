package coldwright.desk.lesson.model;

import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.run.RunContext;
import coldwright.lesson.LessonPart;
import coldwright.lesson.LessonStep;
import coldwright.source.JavaSource;

import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.binding.BooleanExpression;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;

import java.util.ArrayList;
import java.util.List;

/** A step of a lesson: its parts, its figures, and whether it is done. */
public final class StepModel {
    private final LessonStep step;
    private final int number;
    private final List<PartModel> parts;
    private final List<SnippetModel> snippets;
    private final List<PredictionModel> predictions;
    private final ObservableList<ShownFigure> drawn = FXCollections.observableArrayList();
    private final BooleanBinding figureAwaited;
    private final StepCompletion stepCompletion;

    /**
     * Makes a step's model.
     *
     * @param step from the lesson
     * @param number its number in the lesson, from 1; 0 for the text before the first step
     * @param runContext queue, thread and gate of its runs
     * @param before all snippets of the lesson before this step
     */
    StepModel(LessonStep step, int number, RunContext runContext, List<SnippetModel> before) {
        this.step = step;
        this.number = number;
        StepParts made = new StepParts(step.title(), runContext, before);
        step.parts().forEach(part -> part.accept(made));
        this.parts = made.parts();
        this.snippets = made.snippets();
        this.predictions = made.predictions();
        this.figureAwaited = figureAwaited();
        this.stepCompletion = new StepCompletion(snippets);
        made.triedAfter().forEach((check, snippet) -> stepCompletion.tryAfter(snippet, check));
        connect();
    }

    /** Whether a snippet's text shows a figure and no run has finished yet. */
    private static boolean awaitsFigure(SnippetModel one) {
        return !one.result().everFinished().get() && JavaSource.of(one.text().get()).calls("show");
    }

    private BooleanBinding figureAwaited() {
        List<Observable> on = new ArrayList<>(List.of(drawn));
        snippets.forEach(one -> on.addAll(List.of(one.text(), one.result().everFinished())));
        return Bindings.createBooleanBinding(
                () -> drawn.isEmpty() && snippets.stream().anyMatch(StepModel::awaitsFigure),
                on.toArray(new Observable[0]));
    }

    private void connect() {
        for (SnippetModel snippet : snippets) {
            snippet.result()
                    .drawn()
                    .addListener((ListChangeListener<ShownFigure>) change -> gatherDrawn());
            if (!snippet.snippet().given()) {
                snippet.whenRun(this::runGiven);
            }
        }
    }

    private void gatherDrawn() {
        drawn.setAll(snippets.stream().flatMap(one -> one.result().drawn().stream()).toList());
    }

    /**
     * The lesson's text has changed: if these snippets run again, they decide whether it is done.
     */
    public void judgeAgain(List<SnippetModel> again) {
        if (canRun() && again.containsAll(snippets)) {
            stepCompletion.judgeAgain();
        }
    }

    /** Runs the given snippets, unless they finished before. */
    void runGiven() {
        snippets.stream()
                .filter(snippet -> snippet.snippet().given())
                .filter(
                        snippet ->
                                !snippet.result().everFinished().get()
                                        || snippet.result().outOfDate().get())
                .forEach(SnippetModel::run);
    }

    /** Restores an earlier session's state. */
    public void restore(boolean wasRead, boolean wasDone) {
        stepCompletion.restore(wasRead, wasDone);
    }

    /** Resets everything to the author's text, and nothing done. */
    void reset() {
        snippets.forEach(SnippetModel::reset);
        snippets.forEach(SnippetModel::forget);
        predictions.forEach(PredictionModel::reset);
        stepCompletion.reset();
    }

    /** The notes for the teacher, in order. */
    public List<LessonPart.Teacher> notes() {
        return LessonPart.only(LessonPart.Teacher.class, step.parts());
    }

    /** Its questions, in order. */
    public List<PredictionModel> predictions() {
        return predictions;
    }

    /** Whether the learner reached the end of its text. */
    boolean read() {
        return stepCompletion.read().get();
    }

    /** Runs an action whenever the work to save has changed. */
    void whenChanged(Runnable action) {
        snippets.forEach(one -> one.text().addListener((value, was, is) -> action.run()));
        predictions.forEach(one -> one.whenChanged(action));
        stepCompletion.read().addListener((value, was, is) -> action.run());
        stepCompletion.passes().addListener((value, was, is) -> action.run());
    }

    /** The learner has reached the end of its text. */
    public void markRead() {
        stepCompletion.read().set(true);
    }

    /** Whether it has a snippet that the learner can run. */
    public boolean canRun() {
        return snippets.stream().anyMatch(snippet -> !snippet.snippet().given());
    }

    /** Its heading. */
    public String title() {
        return step.title();
    }

    /** Its number in the lesson, from 1; 0 for the text before the first step. */
    public int number() {
        return number;
    }

    /** Its parts, in order. */
    public List<PartModel> parts() {
        return parts;
    }

    /** Its snippets in order, with the given ones. */
    public List<SnippetModel> snippets() {
        return snippets;
    }

    /** The figures of its snippets, in order. */
    public ObservableList<ShownFigure> drawn() {
        return drawn;
    }

    /**
     * Whether to expect a figure: there is none yet, and a snippet that hasn't finished shows one.
     */
    public BooleanExpression awaitsFigure() {
        return figureAwaited;
    }

    /**
     * Whether all its snippets finished or, if it has none, its text was read; and whether all its
     * checks passed then.
     *
     * @return stays true even if a check fails after a later change by the learner
     */
    public ReadOnlyBooleanProperty done() {
        return stepCompletion.passes();
    }
}
