package coldwright.desk.lesson.model;

import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.run.RunContext;
import coldwright.lesson.LessonPart;
import coldwright.lesson.LessonStep;
import coldwright.lesson.PartsByKind;
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
     * @param step as the lesson has it
     * @param number its place in the lesson, from 1; 0 for what stands before the first
     * @param runContext what snippets run with
     * @param before all snippets of the lesson that stand before this step
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

    /** Whether a snippet's text hands a figure over and it did not come to its end yet. */
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

    /** The lesson's text has changed: if its snippets run again, they say whether it is done. */
    public void judgeAgain(List<SnippetModel> again) {
        if (canRun() && again.containsAll(snippets)) {
            stepCompletion.judgeAgain();
        }
    }

    /** Runs the snippets that are given, unless they ran to their end before. */
    void runGiven() {
        snippets.stream()
                .filter(snippet -> snippet.snippet().given())
                .filter(
                        snippet ->
                                !snippet.result().everFinished().get()
                                        || snippet.result().outOfDate().get())
                .forEach(SnippetModel::run);
    }

    /** It was read or done at another time. */
    public void restore(boolean wasRead, boolean wasDone) {
        stepCompletion.restore(wasRead, wasDone);
    }

    /** Everything as the author left it, and nothing done. */
    void reset() {
        snippets.forEach(SnippetModel::reset);
        snippets.forEach(SnippetModel::forget);
        predictions.forEach(PredictionModel::reset);
        stepCompletion.reset();
    }

    /** The notes for the teacher alone, in order. */
    public List<LessonPart.Teacher> notes() {
        return PartsByKind.of(step.parts()).notes();
    }

    /** Its questions, in order. */
    public List<PredictionModel> predictions() {
        return predictions;
    }

    /** Whether the learner came to the end of its text. */
    boolean read() {
        return stepCompletion.read().get();
    }

    /** Does something whenever what is worth keeping has changed. */
    void whenChanged(Runnable action) {
        snippets.forEach(one -> one.text().addListener((value, was, is) -> action.run()));
        predictions.forEach(one -> one.whenChanged(action));
        stepCompletion.read().addListener((value, was, is) -> action.run());
        stepCompletion.passes().addListener((value, was, is) -> action.run());
    }

    /** The learner came to the end of its text. */
    public void markRead() {
        stepCompletion.read().set(true);
    }

    /** Whether there is a snippet in it that the learner can run. */
    public boolean canRun() {
        return snippets.stream().anyMatch(snippet -> !snippet.snippet().given());
    }

    /** Its heading. */
    public String title() {
        return step.title();
    }

    /** Its place in the lesson, from 1; 0 for what comes before the first step. */
    public int number() {
        return number;
    }

    /** Its parts, in order. */
    public List<PartModel> parts() {
        return parts;
    }

    /** Its snippets, also those given, in order. */
    public List<SnippetModel> snippets() {
        return snippets;
    }

    /** The figures that its snippets drew, in order. */
    public ObservableList<ShownFigure> drawn() {
        return drawn;
    }

    /**
     * Whether a figure is to come: none stands there, and the text of a snippet that did not come
     * to its end yet hands one over.
     *
     * @return true if so
     */
    public BooleanExpression awaitsFigure() {
        return figureAwaited;
    }

    /**
     * Whether all its snippets ran to their end or, if it has none, its text was read; and whether
     * all its checks held then.
     *
     * @return true once so, also if a check no longer holds after a later change of the learner's
     */
    public ReadOnlyBooleanProperty done() {
        return stepCompletion.passes();
    }
}
