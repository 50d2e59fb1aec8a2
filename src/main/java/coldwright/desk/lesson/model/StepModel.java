package coldwright.desk.lesson.model;

import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.run.RunContext;
import coldwright.lesson.LessonPart;
import coldwright.lesson.LessonStep;
import coldwright.play.RunLinks;
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
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A step of a lesson: its parts, its figures, and whether it is done. */
public final class StepModel {
    private final LessonStep step;
    private final int number;
    private final List<PartModel> parts = new ArrayList<>();
    private final List<SnippetModel> snippets = new ArrayList<>();
    private final List<PredictionModel> predictions = new ArrayList<>();
    private final ObservableList<ShownFigure> drawn = FXCollections.observableArrayList();
    private final BooleanBinding figureAwaited;
    private final StepCompletion stepCompletion;

    /** Makes models of the parts, and links questions and checks to runs. */
    private final class Parts implements LessonPart.Visitor {
        private final RunContext runContext;
        private final List<SnippetModel> above;
        private final Map<CheckModel, SnippetModel> triedAfter = new LinkedHashMap<>();
        private final RunLinks<PredictionModel, SnippetModel> links = new RunLinks<>();

        Parts(RunContext runContext, List<SnippetModel> before) {
            this.runContext = runContext;
            this.above = new ArrayList<>(before);
        }

        @Override
        public void prose(LessonPart.Prose prose) {
            parts.add(new PartModel.Prose(prose.nodes()));
        }

        /** Shown in the teacher's own window only. */
        @Override
        public void teacher(LessonPart.Teacher note) {}

        @Override
        public void prediction(LessonPart.Prediction prediction) {
            links.question(add(prediction));
        }

        @Override
        public void question(LessonPart.Question question) {
            add(question);
        }

        private PredictionModel add(LessonPart.Asked asked) {
            PredictionModel model = new PredictionModel(asked);
            parts.add(model);
            predictions.add(model);
            return model;
        }

        @Override
        public void snippet(LessonPart.Snippet snippet) {
            SnippetModel model =
                    new SnippetModel(snippet, step.title(), runContext, List.copyOf(above));
            parts.add(model);
            snippets.add(model);
            above.add(model);
            links.snippet(model, snippet).forEach(prediction -> prediction.answeredBy(model));
        }

        @Override
        public void check(LessonPart.Check check) {
            CheckModel model = new CheckModel(check, runContext, List.copyOf(above));
            parts.add(model);
            links.triedAfter().ifPresent(snippet -> triedAfter.put(model, snippet));
        }
    }

    /**
     * Makes a step's model.
     *
     * @param number its number in the lesson, from 1; 0 for the text before the first step
     * @param before all snippets of the lesson before this step
     */
    StepModel(LessonStep step, int number, RunContext runContext, List<SnippetModel> before) {
        this.step = step;
        this.number = number;
        Parts made = new Parts(runContext, before);
        step.parts().forEach(part -> part.accept(made));
        this.figureAwaited = figureAwaited();
        this.stepCompletion = new StepCompletion(snippets);
        made.triedAfter.forEach((check, snippet) -> stepCompletion.tryAfter(snippet, check));
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

    public List<LessonPart.Teacher> notes() {
        return LessonPart.only(LessonPart.Teacher.class, step.parts());
    }

    public List<PredictionModel> predictions() {
        return Collections.unmodifiableList(predictions);
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

    public String title() {
        return step.title();
    }

    /** Its number in the lesson, from 1; 0 for the text before the first step. */
    public int number() {
        return number;
    }

    public List<PartModel> parts() {
        return Collections.unmodifiableList(parts);
    }

    /** Its snippets in order, with the given ones. */
    public List<SnippetModel> snippets() {
        return Collections.unmodifiableList(snippets);
    }

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
