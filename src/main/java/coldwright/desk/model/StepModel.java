package coldwright.desk.model;

import coldwright.lesson.Part;
import coldwright.lesson.Step;

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
import java.util.regex.Pattern;

/** A step of a lesson: its parts, its figures, and whether it is done. */
public final class StepModel {
    /** What hands a figure to the page. */
    private static final Pattern SHOWS = Pattern.compile("\\bshow\\s*\\(");

    private final Step step;
    private final int number;
    private final List<PartModel> parts;
    private final List<SnippetModel> snippets;
    private final ObservableList<Drawn> drawn = FXCollections.observableArrayList();
    private final BooleanBinding figureAwaited;
    private final Done done;

    /**
     * Makes a step's model.
     *
     * @param step as the lesson has it
     * @param number its place in the lesson, from 1; 0 for what stands before the first
     * @param running what snippets run with
     * @param before all snippets of the lesson that stand before this step
     */
    StepModel(Step step, int number, Running running, List<SnippetModel> before) {
        this.step = step;
        this.number = number;
        List<PartModel> made = new ArrayList<>();
        List<SnippetModel> here = new ArrayList<>();
        for (Part part : step.parts()) {
            if (part instanceof Part.Teacher) {
                continue;
            }
            List<SnippetModel> above = new ArrayList<>(before);
            above.addAll(here);
            Function<Part.Snippet, SnippetModel> snippetModel =
                    snippet -> new SnippetModel(snippet, step.title(), running, () -> above);
            PartModel model = modelOf(part, running.queue(), above, snippetModel);
            made.add(model);
            if (model instanceof SnippetModel snippet) {
                here.add(snippet);
            }
        }
        this.parts = List.copyOf(made);
        this.snippets = List.copyOf(here);
        this.figureAwaited = figureAwaited();
        this.done = new Done(snippets);
        connect();
    }

    private static PartModel modelOf(
            Part part,
            RunQueue queue,
            List<SnippetModel> above,
            Function<Part.Snippet, SnippetModel> snippetModel) {
        if (part instanceof Part.Prose prose) {
            return new ProseModel(prose);
        }
        if (part instanceof Part.Snippet snippet) {
            return snippetModel.apply(snippet);
        }
        if (part instanceof Part.Forecast forecast) {
            return new ForecastModel(forecast);
        }
        if (part instanceof Part.Check check) {
            return new CheckModel(check, queue, () -> above);
        }
        throw new AssertionError(part);
    }

    /** Whether a snippet's text hands a figure over and it did not come to its end yet. */
    private static boolean awaitsFigure(SnippetModel one) {
        return !one.came().everFinished().get() && SHOWS.matcher(one.text().get()).find();
    }

    private BooleanBinding figureAwaited() {
        List<Observable> on = new ArrayList<>(List.of(drawn));
        snippets.forEach(one -> on.addAll(List.of(one.text(), one.came().everFinished())));
        return Bindings.createBooleanBinding(
                () -> drawn.isEmpty() && snippets.stream().anyMatch(StepModel::awaitsFigure),
                on.toArray(new Observable[0]));
    }

    private void connect() {
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i) instanceof ForecastModel forecast) {
                nextEditable(i).ifPresent(snippet -> ask(forecast, snippet));
            } else if (parts.get(i) instanceof CheckModel check) {
                lastBefore(i).ifPresent(snippet -> done.tryAfter(snippet, check));
            }
        }
        for (SnippetModel snippet : snippets) {
            snippet.came().drawn().addListener((ListChangeListener<Drawn>) change -> gatherDrawn());
            if (!snippet.snippet().given()) {
                snippet.whenRun(this::runGiven);
            }
        }
    }

    /** A question is answered by the first run of a snippet; a drawn line stands in its figure. */
    private static void ask(ForecastModel forecast, SnippetModel snippet) {
        snippet.whenRun(forecast::reveal);
        forecast.sketch()
                .ifPresent(
                        sketch -> {
                            snippet.came().foretold(sketch::curve);
                            forecast.against(snippet.came()::firstCurve);
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
        drawn.setAll(snippets.stream().flatMap(one -> one.came().drawn().stream()).toList());
    }

    /** The lesson's text has changed: if its snippets run again, they say whether it is done. */
    void judgeAnew(List<SnippetModel> again) {
        if (canRun() && again.containsAll(snippets)) {
            done.judgeAnew();
        }
    }

    /** Runs the snippets that are given, unless they ran to their end before. */
    void runGiven() {
        snippets.stream()
                .filter(snippet -> snippet.snippet().given())
                .filter(
                        snippet ->
                                !snippet.came().everFinished().get()
                                        || snippet.came().outOfDate().get())
                .forEach(SnippetModel::run);
    }

    /** It was read or done at another time. */
    void restore(boolean wasRead, boolean wasDone) {
        done.restore(wasRead, wasDone);
    }

    /** Everything as the author left it, and nothing done. */
    void reset() {
        snippets.forEach(SnippetModel::reset);
        snippets.forEach(SnippetModel::forget);
        forecasts().forEach(ForecastModel::reset);
        done.reset();
    }

    /**
     * What its author tells the teacher alone.
     *
     * @return the notes, in order
     */
    public List<Part.Teacher> notes() {
        return step.parts().stream()
                .filter(Part.Teacher.class::isInstance)
                .map(Part.Teacher.class::cast)
                .toList();
    }

    /** Its questions, in order. */
    List<ForecastModel> forecasts() {
        return parts.stream()
                .filter(ForecastModel.class::isInstance)
                .map(ForecastModel.class::cast)
                .toList();
    }

    /** Whether the learner came to the end of its text. */
    boolean read() {
        return done.read().get();
    }

    /** Does something whenever what is worth keeping has changed. */
    void whenChanged(Runnable action) {
        snippets.forEach(one -> one.text().addListener((value, was, is) -> action.run()));
        forecasts().forEach(one -> one.whenChanged(action));
        done.read().addListener((value, was, is) -> action.run());
        done.holds().addListener((value, was, is) -> action.run());
    }

    /** The learner came to the end of its text. */
    public void markRead() {
        done.read().set(true);
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
    public ObservableList<Drawn> drawn() {
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
        return done.holds();
    }
}
