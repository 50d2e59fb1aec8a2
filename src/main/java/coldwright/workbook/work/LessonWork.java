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
 * @param lessonFile the lesson's file name, without folders
 * @param lessonHash the hash of the lesson's text that it belongs to
 * @param changed time of the last change, to the second
 * @param inSight name of the step that the learner looked at; {@link StepNames#OPENING} for the
 *     opening
 */
public record LessonWork(
        LessonKey key,
        String lessonFile,
        String title,
        ContentHash lessonHash,
        Instant changed,
        String inSight,
        List<StepWork> steps) {
    /** Leaves out empty steps; refuses two steps of the same title. */
    public LessonWork {
        Objects.requireNonNull(key);
        Objects.requireNonNull(lessonFile);
        Objects.requireNonNull(title);
        Objects.requireNonNull(lessonHash);
        Objects.requireNonNull(inSight);
        changed = changed.truncatedTo(ChronoUnit.SECONDS);
        steps = steps.stream().filter(step -> !step.isEmpty()).toList();
        if (steps.stream().map(StepWork::title).distinct().count() < steps.size()) {
            throw new IllegalArgumentException("two steps have the same title: " + title);
        }
    }

    /** A lesson without work, changed at the epoch. */
    public static LessonWork empty(
            LessonKey key, String lessonFile, String title, ContentHash lessonHash) {
        return new LessonWork(
                key, lessonFile, title, lessonHash, Instant.EPOCH, StepNames.OPENING, List.of());
    }

    /** The work in one step; empty if there is none. */
    public StepWork step(String name) {
        return steps.stream()
                .filter(step -> step.title().equals(name))
                .findFirst()
                .orElseGet(() -> StepWork.empty(name));
    }

    /** Replaces the work in the step with this title. */
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

    /** Changes a snippet's text in a step; the author's own removes the edit. */
    public LessonWork withSnippet(String stepName, SnippetEdit edit) {
        StepWork step = step(stepName).withoutSnippet(edit.index());
        List<SnippetEdit> edits = new ArrayList<>(step.edits());
        if (!ContentHash.of(edit.text()).equals(edit.from())) {
            edits.add(edit);
        }
        return withStep(step.with(edits, step.aside()));
    }

    public LessonWork withPrediction(String stepName, GivenPrediction answer) {
        return withStep(step(stepName).withPrediction(answer));
    }

    /** Marks a step's text as read or not. */
    public LessonWork withRead(String stepName, boolean read) {
        return withStep(step(stepName).withRead(read));
    }

    public LessonWork withDone(String stepName, boolean done) {
        return withStep(step(stepName).withDone(done));
    }

    public LessonWork withInSight(String stepName) {
        return new LessonWork(key, lessonFile, title, lessonHash, changed, stepName, steps);
    }

    public LessonWork changedAt(Instant when) {
        return new LessonWork(key, lessonFile, title, lessonHash, when, inSight, steps);
    }

    public LessonWork emptied() {
        return empty(key, lessonFile, title, lessonHash);
    }

    /**
     * Fits work to the current text of a lesson, which has this hash. An edit follows its snippet
     * to its new position; the edit of a snippet that no longer exists is kept aside and returns
     * with it. An answer follows its question within the step, and to the new title of a renamed
     * step.
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
