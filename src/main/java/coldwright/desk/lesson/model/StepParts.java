package coldwright.desk.lesson.model;

import coldwright.desk.run.RunContext;
import coldwright.lesson.LessonPart;
import coldwright.play.RunLinks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes the models of a step's parts, and links questions and checks to runs. */
final class StepParts implements LessonPart.Visitor {
    private final String stepTitle;
    private final RunContext runContext;
    private final List<SnippetModel> above;
    private final List<PartModel> parts = new ArrayList<>();
    private final List<SnippetModel> snippets = new ArrayList<>();
    private final List<PredictionModel> predictions = new ArrayList<>();
    private final Map<CheckModel, SnippetModel> triedAfter = new LinkedHashMap<>();
    private final RunLinks<PredictionModel, SnippetModel> links = new RunLinks<>();

    /**
     * None made yet.
     *
     * @param before all snippets of the lesson before the step
     */
    StepParts(String stepTitle, RunContext runContext, List<SnippetModel> before) {
        this.stepTitle = stepTitle;
        this.runContext = runContext;
        this.above = new ArrayList<>(before);
    }

    @Override
    public void prose(LessonPart.Prose prose) {
        parts.add(new ProseModel(prose));
    }

    /** Shown in the teacher's own window only. */
    @Override
    public void teacher(LessonPart.Teacher note) {}

    @Override
    public void prediction(LessonPart.Prediction prediction) {
        PredictionModel model = new PredictionModel(prediction);
        parts.add(model);
        predictions.add(model);
        links.question(model);
    }

    @Override
    public void snippet(LessonPart.Snippet snippet) {
        List<SnippetModel> before = List.copyOf(above);
        SnippetModel model = new SnippetModel(snippet, stepTitle, runContext, () -> before);
        parts.add(model);
        snippets.add(model);
        above.add(model);
        links.snippet(model, snippet).forEach(prediction -> prediction.answeredBy(model));
    }

    @Override
    public void check(LessonPart.Check check) {
        List<SnippetModel> before = List.copyOf(above);
        CheckModel model = new CheckModel(check, runContext.queue(), () -> before);
        parts.add(model);
        links.triedAfter().ifPresent(snippet -> triedAfter.put(model, snippet));
    }

    List<PartModel> parts() {
        return List.copyOf(parts);
    }

    List<SnippetModel> snippets() {
        return List.copyOf(snippets);
    }

    List<PredictionModel> predictions() {
        return List.copyOf(predictions);
    }

    /** The checks, each with the snippet whose runs it is tried after. */
    Map<CheckModel, SnippetModel> triedAfter() {
        return triedAfter;
    }
}
