package coldwright.play;

import coldwright.bench.FinishedRun;
import coldwright.lesson.LessonPart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes down all that it hears, a line for each event. */
final class WrittenEvents implements PlayListener {
    final List<String> lines = new ArrayList<>();
    final List<ClaimVerdict> missed = new ArrayList<>();

    @Override
    public void stepBegan(PlayedStep step) {
        lines.add("step " + step.number() + " " + step.name());
    }

    @Override
    public void prose(LessonPart.Prose prose) {
        lines.add("prose");
    }

    @Override
    public void teacher(LessonPart.Teacher note) {
        lines.add("note");
    }

    @Override
    public void question(LessonPart.Question question) {
        lines.add("question " + question.question());
    }

    @Override
    public void prediction(LessonPart.Prediction prediction) {
        lines.add("asked " + prediction.question());
    }

    @Override
    public void snippet(LessonPart.Snippet snippet) {
        lines.add("comes " + snippet.code());
    }

    @Override
    public void check(LessonPart.Check check) {
        lines.add("check of " + check.expectations().size());
    }

    @Override
    public void ran(SnippetText snippet, FinishedRun run) {
        lines.add("ran " + snippet.text() + " " + how(run));
    }

    @Override
    public void solved(SnippetText snippet, FinishedRun run) {
        lines.add("solved " + snippet.snippet().solution() + " " + how(run));
    }

    @Override
    public void tried(List<ClaimVerdict> verdicts) {
        verdicts.stream()
                .filter(one -> one.state() == ClaimVerdict.State.MISSED)
                .forEach(missed::add);
        verdicts.forEach(one -> lines.add(one.state() + " " + one.claim().expression()));
    }

    @Override
    public void answered(List<LessonPart.Prediction> predictions, Optional<FinishedRun> run) {
        lines.add("answered " + predictions.size() + " " + run.map(WrittenEvents::how).orElse("-"));
    }

    @Override
    public void stepEnded(PlayedStep step) {
        lines.add(
                "end"
                        + (step.changed() ? " changed" : "")
                        + (step.changedAbove() ? " changed above" : ""));
    }

    private static String how(FinishedRun run) {
        return run.outcome().getClass().getSimpleName();
    }
}
