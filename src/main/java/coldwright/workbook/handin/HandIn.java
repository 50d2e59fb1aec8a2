package coldwright.workbook.handin;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPart;
import coldwright.workbook.entry.ParsedEntries;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.LearnerAnswer;
import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.StepNames;
import coldwright.workbook.work.StepWork;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The work that a learner hands in for a lesson, whose file name is without folders: every step
 * with a snippet, a prediction or a mark, in order. The time of writing is to the second, empty if
 * the file has no readable one.
 */
public record HandIn(
        String learner,
        String lessonFile,
        String title,
        ContentHash lessonHash,
        Optional<Instant> when,
        List<HandedInStep> steps) {
    /** The extension of its files. */
    public static final String ENDING = ".handin.txt";

    public HandIn {
        when = when.map(one -> one.truncatedTo(ChronoUnit.SECONDS));
        steps = List.copyOf(steps);
    }

    /**
     * Creates a hand-in with every snippet, the predictions with the right answers, and the steps
     * done, from work fitted to the lesson.
     */
    public static HandIn of(LessonWork work, String learner, Lesson lesson, Instant when) {
        List<HandedInStep> steps = new ArrayList<>();
        for (Map.Entry<String, List<LessonPart>> parts : StepNames.parts(lesson).entrySet()) {
            HandedInStep step = step(work.step(parts.getKey()), parts.getValue());
            if (step.done() || !step.snippets().isEmpty() || !step.predictions().isEmpty()) {
                steps.add(step);
            }
        }
        return new HandIn(
                learner,
                work.lessonFile(),
                lesson.title(),
                work.lessonHash(),
                Optional.of(when),
                steps);
    }

    private static HandedInStep step(StepWork work, List<LessonPart> parts) {
        List<HandedInStep.Snippet> snippets = new ArrayList<>();
        for (LessonPart.Snippet snippet : LessonPart.only(LessonPart.Snippet.class, parts)) {
            int index = snippets.size();
            String text = work.textOf(index, snippet.code());
            snippets.add(new HandedInStep.Snippet(index, !text.equals(snippet.code()), text));
        }
        List<HandedInStep.Prediction> forecasts = new ArrayList<>();
        for (LessonPart.Asked prediction : LessonPart.only(LessonPart.Asked.class, parts)) {
            int index = forecasts.size();
            String said =
                    work.answer(index, prediction.question()).map(LearnerAnswer::words).orElse("");
            forecasts.add(
                    new HandedInStep.Prediction(
                            index,
                            prediction.question(),
                            said,
                            PredictionOutcome.words(prediction.answer()),
                            PredictionOutcome.of(prediction.answer(), said)));
        }
        return new HandedInStep(work.title(), work.done(), forecasts, snippets);
    }

    /** The work in one step; empty if the hand-in has no such step. */
    public Optional<HandedInStep> step(String name) {
        return steps.stream().filter(step -> step.title().equals(name)).findFirst();
    }

    /** A snippet's text by step name and index, from 0; the author's if none was handed in. */
    public String textOf(String name, int index, String authorText) {
        return step(name).flatMap(step -> step.text(index)).orElse(authorText);
    }

    /** A file name such as {@code Ada-Brunt-05-sugar-against-ice.handin.txt}. */
    public String fileName() {
        return plain(learner, "nobody") + "-" + plain(lessonName(), "lesson") + ENDING;
    }

    /** The lesson's file name without its extension, as in a lesson folder. */
    public String lessonName() {
        return lessonFile.replaceFirst("\\.md$", "");
    }

    private static String plain(String words, String otherwise) {
        String name = words.strip().replaceAll("[^\\p{L}\\p{M}\\p{N}_]+", "-");
        String tidy = name.replaceAll("^-+|-+$", "");
        return tidy.isEmpty() ? otherwise : tidy.substring(0, Math.min(60, tidy.length()));
    }

    /** Readable text, which {@link #read} parses to the same hand-in. */
    public String text() {
        return HandInText.write(this);
    }

    /** Reads a hand-in: the usable part, empty if the text isn't one; and its errors. */
    public static ParsedEntries<Optional<HandIn>> read(String text) {
        return new HandInText().read(text);
    }
}
