package coldwright.workbook.handin;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPart;
import coldwright.lesson.PartsByKind;
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
 * What a learner hands in of a lesson.
 *
 * @param learner the learner's name as typed
 * @param lessonFile the lesson's file name, without folders
 * @param title the lesson's title
 * @param lessonHash the text of the lesson that was worked on
 * @param when when it was written, to the second
 * @param steps every step of the lesson with a snippet, a forecast or a mark; in order
 */
public record HandIn(
        String learner,
        String lessonFile,
        String title,
        ContentHash lessonHash,
        Instant when,
        List<HandedInStep> steps) {
    /** How its files end. */
    public static final String ENDING = ".handin.txt";

    public HandIn {
        when = when.truncatedTo(ChronoUnit.SECONDS);
        steps = List.copyOf(steps);
    }

    /**
     * Puts a hand-in together.
     *
     * @param work the learner's work, fitted to the lesson
     * @param learner the learner's name
     * @param lesson the lesson that was worked on
     * @param when now
     * @return every snippet as it stands, the forecasts beside the right answers, what is done
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
                learner, work.lessonFile(), lesson.title(), work.lessonHash(), when, steps);
    }

    private static HandedInStep step(StepWork work, List<LessonPart> parts) {
        PartsByKind kinds = PartsByKind.of(parts);
        List<HandedInSnippet> snippets = new ArrayList<>();
        for (LessonPart.Snippet snippet : kinds.snippets()) {
            int index = snippets.size();
            String text = work.textOf(index, snippet.code());
            snippets.add(new HandedInSnippet(index, !text.equals(snippet.code()), text));
        }
        List<HandedInPrediction> forecasts = new ArrayList<>();
        for (LessonPart.Prediction prediction : kinds.predictions()) {
            int index = forecasts.size();
            String said = work.answer(index, prediction.question()).map(HandIn::words).orElse("");
            forecasts.add(
                    new HandedInPrediction(
                            index,
                            prediction.question(),
                            said,
                            PredictionOutcome.words(prediction.answer()),
                            PredictionOutcome.of(prediction.answer(), said)));
        }
        return new HandedInStep(work.title(), work.done(), forecasts, snippets);
    }

    private static String words(LearnerAnswer learnerAnswer) {
        if (learnerAnswer instanceof LearnerAnswer.Choice choice) {
            return choice.words();
        }
        if (learnerAnswer instanceof LearnerAnswer.Typed typed) {
            return typed.text();
        }
        if (learnerAnswer instanceof LearnerAnswer.Curve curve) {
            return "a curve through "
                    + String.join(
                            "; ",
                            curve.points().stream().map(one -> one.x() + " " + one.y()).toList());
        }
        throw new AssertionError(learnerAnswer);
    }

    /**
     * The work of one step.
     *
     * @param name the step's name
     * @return its work; empty if the hand-in has no such step
     */
    public Optional<HandedInStep> step(String name) {
        return steps.stream().filter(step -> step.title().equals(name)).findFirst();
    }

    /**
     * The text of a snippet.
     *
     * @param name its step's name
     * @param index which snippet of the step, from 0
     * @param authorText the text in the lesson
     * @return the learner's text; the author's if none was handed in
     */
    public String textOf(String name, int index, String authorText) {
        return step(name).flatMap(step -> step.text(index)).orElse(authorText);
    }

    /**
     * What to call its file.
     *
     * @return such as {@code Ada-Brunt-05-sugar-against-ice.handin.txt}
     */
    public String fileName() {
        return plain(learner, "nobody") + "-" + plain(lessonName(), "lesson") + ENDING;
    }

    /**
     * The lesson's name as a shelf has it.
     *
     * @return its file name without its ending
     */
    public String lessonName() {
        return lessonFile.replaceFirst("\\.md$", "");
    }

    private static String plain(String words, String otherwise) {
        String name = words.strip().replaceAll("[^\\p{L}\\p{M}\\p{N}_]+", "-");
        String tidy = name.replaceAll("^-+|-+$", "");
        return tidy.isEmpty() ? otherwise : tidy.substring(0, Math.min(60, tidy.length()));
    }

    /**
     * As readable text.
     *
     * @return a text that {@link #read} gives back as the same hand-in
     */
    public String text() {
        return HandInText.write(this);
    }

    /**
     * Reads a hand-in.
     *
     * @param text a file's text
     * @return what is usable of it, empty if it is none; and its faults
     */
    public static ParsedEntries<Optional<HandIn>> read(String text) {
        return new HandInText().read(text);
    }
}
