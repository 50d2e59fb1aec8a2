package coldwright.desk.lesson.model;

import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.run.RunContext;
import coldwright.desk.run.RunQueue;
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
import java.util.function.Function;

/** A step of a lesson: its parts, its figures, and whether it is done. */
public final class StepModel {
    private final LessonStep step;
    private final int number;
    private final List<PartModel> parts;
    private final List<SnippetModel> snippets;
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
        List<PartModel> made = new ArrayList<>();
        List<SnippetModel> here = new ArrayList<>();
        for (LessonPart part : step.parts()) {
            if (part instanceof LessonPart.Teacher) {
                continue;
            }
            List<SnippetModel> above = new ArrayList<>(before);
            above.addAll(here);
            Function<LessonPart.Snippet, SnippetModel> snippetModel =
                    snippet -> new SnippetModel(snippet, step.title(), runContext, () -> above);
            PartModel model = modelOf(part, runContext.queue(), above, snippetModel);
            made.add(model);
            if (model instanceof SnippetModel snippet) {
                here.add(snippet);
            }
        }
        this.parts = List.copyOf(made);
        this.snippets = List.copyOf(here);
        this.figureAwaited = figureAwaited();
        this.stepCompletion = new StepCompletion(snippets);
        connect();
    }

    private static PartModel modelOf(
            LessonPart part,
            RunQueue queue,
            List<SnippetModel> above,
            Function<LessonPart.Snippet, SnippetModel> snippetModel) {
        if (part instanceof LessonPart.Prose prose) {
            return new ProseModel(prose);
        }
        if (part instanceof LessonPart.Snippet snippet) {
            return snippetModel.apply(snippet);
        }
        if (part instanceof LessonPart.Prediction prediction) {
            return new PredictionModel(prediction);
        }
        if (part instanceof LessonPart.Check check) {
            return new CheckModel(check, queue, () -> above);
        }
        throw new AssertionError(part);
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
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i) instanceof PredictionModel forecast) {
                nextEditable(i).ifPresent(snippet -> ask(forecast, snippet));
            } else if (parts.get(i) instanceof CheckModel check) {
                lastBefore(i).ifPresent(snippet -> stepCompletion.tryAfter(snippet, check));
            }
        }
        for (SnippetModel snippet : snippets) {
            snippet.result()
                    .drawn()
                    .addListener((ListChangeListener<ShownFigure>) change -> gatherDrawn());
            if (!snippet.snippet().given()) {
                snippet.whenRun(this::runGiven);
            }
        }
    }

    /** A question is answered by the first run of a snippet; a drawn line stands in its figure. */
    private static void ask(PredictionModel forecast, SnippetModel snippet) {
        snippet.whenRun(forecast::reveal);
        forecast.sketch()
                .ifPresent(
                        sketch -> {
                            snippet.result().predictedCurve(sketch::curve);
                            forecast.against(snippet.result()::firstCurve);
                        });
    }

    private java.util.Optional<SnippetModel> nextEditable(int from) {
        return parts.subList(from, parts.size()).stream()
                .filter(SnippetModel.class::isInstance)
                .map(SnippetModel.class::cast)
                .filter(snippet -> !snippet.snippet().given())
                .findFirst();
    }

    private java.util.Optional<SnippetModel> lastBefore(int index) {
        return parts.subList(0, index).stream()
                .filter(SnippetModel.class::isInstance)
                .map(SnippetModel.class::cast)
                .reduce((first, second) -> second);
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
        predictions().forEach(PredictionModel::reset);
        stepCompletion.reset();
    }

    /**
     * What its author tells the teacher alone.
     *
     * @return the notes, in order
     */
    public List<LessonPart.Teacher> notes() {
        return step.parts().stream()
                .filter(LessonPart.Teacher.class::isInstance)
                .map(LessonPart.Teacher.class::cast)
                .toList();
    }

    /** Its questions, in order. */
    public List<PredictionModel> predictions() {
        return parts.stream()
                .filter(PredictionModel.class::isInstance)
                .map(PredictionModel.class::cast)
                .toList();
    }

    /** Whether the learner came to the end of its text. */
    boolean read() {
        return stepCompletion.read().get();
    }

    /** Does something whenever what is worth keeping has changed. */
    void whenChanged(Runnable action) {
        snippets.forEach(one -> one.text().addListener((value, was, is) -> action.run()));
        predictions().forEach(one -> one.whenChanged(action));
        stepCompletion.read().addListener((value, was, is) -> action.run());
        stepCompletion.passes().addListener((value, was, is) -> action.run());
    }

    /** The learner came to the end of its text. */
    public void markRead() {
        stepCompletion.read().set(true);
    }

    /**
     * Whether it has anything to run.
     *
     * @return true if the learner can run a snippet of it
     */
    public boolean canRun() {
        return snippets.stream().anyMatch(snippet -> !snippet.snippet().given());
    }

    /**
     * Its heading.
     *
     * @return the title
     */
    public String title() {
        return step.title();
    }

    /**
     * Its place in the lesson.
     *
     * @return from 1; 0 for what stands before the first step
     */
    public int number() {
        return number;
    }

    /**
     * What it is made of.
     *
     * @return its parts, in order
     */
    public List<PartModel> parts() {
        return parts;
    }

    /**
     * Its snippets.
     *
     * @return also those given, in order
     */
    public List<SnippetModel> snippets() {
        return snippets;
    }

    /**
     * The figures of all its snippets.
     *
     * @return what was drawn, in order
     */
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
