package coldwright.workbook.work;

import coldwright.lesson.Lesson;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A learner's whole work in one lesson.
 *
 * <pre>{@code
 * var work = LessonWork.empty(key, "oats.md", "Oats", hash)
 *         .withSnippet("Toast", new SnippetEdit(0, "heat = 140;", ContentHash.of(authorText)))
 *         .withDone("Toast", true);
 * work.step("Toast").textOf(0, authorText);
 * }</pre>
 *
 * @param key what it is filed under
 * @param lessonFile the lesson's file name, without folders
 * @param title the lesson's title
 * @param lessonHash the lesson's text that it belongs to
 * @param changed when it was last changed, to the second
 * @param inSight the step that the learner looked at, by its name; {@link StepNames#OPENING} for
 *     the opening
 * @param steps the steps with work in them; empty ones are left out
 */
public record LessonWork(
        LessonKey key,
        String lessonFile,
        String title,
        ContentHash lessonHash,
        Instant changed,
        String inSight,
        List<StepWork> steps) {
    /**
     * Leaves out empty steps.
     *
     * @throws IllegalArgumentException if two steps have the same title
     */
    public LessonWork {
        Objects.requireNonNull(key);
        Objects.requireNonNull(lessonFile);
        Objects.requireNonNull(title);
        Objects.requireNonNull(lessonHash);
        Objects.requireNonNull(inSight);
        changed = changed.truncatedTo(ChronoUnit.SECONDS);
        steps = steps.stream().filter(step -> !step.isEmpty()).toList();
        if (steps.stream().map(StepWork::title).distinct().count() < steps.size()) {
            throw new IllegalArgumentException(
                    "the work on \"%s\" has two steps of one title; each may stand there once"
                            .formatted(title));
        }
    }

    /**
     * A lesson that nobody has worked on.
     *
     * @param key what to file it under
     * @param lessonFile the lesson's file name, without folders
     * @param title the lesson's title
     * @param lessonHash the hash of its text
     * @return no work, changed at the epoch
     */
    public static LessonWork empty(
            LessonKey key, String lessonFile, String title, ContentHash lessonHash) {
        return new LessonWork(
                key, lessonFile, title, lessonHash, Instant.EPOCH, StepNames.OPENING, List.of());
    }

    /**
     * The work in one step.
     *
     * @param name the step's name
     * @return its work, empty if there is none
     */
    public StepWork step(String name) {
        return steps.stream()
                .filter(step -> step.title().equals(name))
                .findFirst()
                .orElseGet(() -> StepWork.empty(name));
    }

    /**
     * With other work in one step.
     *
     * @param step the step's work; it takes the place of what has its title
     * @return new work
     */
    public LessonWork withStep(StepWork step) {
        List<StepWork> next = new ArrayList<>(steps);
        int at = steps.stream().map(StepWork::title).toList().indexOf(step.title());
        if (at < 0) {
            next.add(step);
        } else {
            next.set(at, step);
        }
        return with(lessonHash, next);
    }

    /**
     * With a snippet's text changed.
     *
     * @param stepName the step's name
     * @param edit the learner's text; one that is the author's own is no edit
     * @return new work
     */
    public LessonWork withSnippet(String stepName, SnippetEdit edit) {
        StepWork step = step(stepName).withoutSnippet(edit.index());
        List<SnippetEdit> edits = new ArrayList<>(step.edits());
        if (!ContentHash.of(edit.text()).equals(edit.from())) {
            edits.add(edit);
        }
        return withStep(step.with(edits, step.aside()));
    }

    /**
     * With a forecast answered.
     *
     * @param stepName the step's name
     * @param answer the answer
     * @return new work
     */
    public LessonWork withPrediction(String stepName, GivenPrediction answer) {
        return withStep(step(stepName).withPrediction(answer));
    }

    /**
     * With the mark of a text that was read.
     *
     * @param stepName the step's name
     * @param read whether it was
     * @return new work
     */
    public LessonWork withRead(String stepName, boolean read) {
        return withStep(step(stepName).withRead(read));
    }

    /**
     * With the mark of a step that is done.
     *
     * @param stepName the step's name
     * @param done whether it is
     * @return new work
     */
    public LessonWork withDone(String stepName, boolean done) {
        return withStep(step(stepName).withDone(done));
    }

    /**
     * With another step in sight.
     *
     * @param stepName the step's name
     * @return new work
     */
    public LessonWork withInSight(String stepName) {
        return new LessonWork(key, lessonFile, title, lessonHash, changed, stepName, steps);
    }

    /**
     * With the time of its last change.
     *
     * @param when that time
     * @return new work
     */
    public LessonWork changedAt(Instant when) {
        return new LessonWork(key, lessonFile, title, lessonHash, when, inSight, steps);
    }

    /**
     * As if nobody had worked on this lesson.
     *
     * @return no work in the same lesson
     */
    public LessonWork emptied() {
        return empty(key, lessonFile, title, lessonHash);
    }

    /**
     * Fits work to a lesson whose author may have changed it. An edit follows its snippet to where
     * that now stands; the edit of a snippet that is no longer there is kept aside, and comes back
     * with it. An answer follows its question within the step, and to the new title of a step that
     * was renamed.
     *
     * @param lesson the lesson as it is today
     * @param hash the hash of its text
     * @return new work that belongs to that text
     */
    public LessonWork fittedTo(Lesson lesson, ContentHash hash) {
        LessonWork named =
                new LessonWork(key, lessonFile, lesson.title(), hash, changed, inSight, steps);
        return named.with(hash, SnippetMatching.fit(steps, lesson));
    }

    private LessonWork with(ContentHash hash, List<StepWork> newSteps) {
        return new LessonWork(key, lessonFile, title, hash, changed, inSight, newSteps);
    }
}
