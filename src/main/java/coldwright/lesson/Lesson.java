package coldwright.lesson;

import java.util.List;

/**
 * A lesson as read.
 *
 * @param file what to call its file in messages
 * @param title its first heading
 * @param track which part of the course it belongs to; may be empty
 * @param minutes how long it takes, as its author wrote it; may be empty
 * @param needs what the learner needs at hand; may be empty
 * @param opening what stands before the first step
 * @param steps its steps, in order
 * @param faults what is wrong in its text; the rest is usable all the same
 * @param text the whole text it was read from; empty if it could not be read
 */
public record Lesson(
        String file,
        String title,
        String track,
        String minutes,
        String needs,
        List<LessonPart> opening,
        List<LessonStep> steps,
        List<LessonFault> faults,
        String text) {
    /** Copies what is given. */
    public Lesson {
        opening = List.copyOf(opening);
        steps = List.copyOf(steps);
        faults = List.copyOf(faults);
    }

    /**
     * Its file's name.
     *
     * @return without folders and without {@code .md}
     */
    public String name() {
        return file.replaceFirst("^.*[/\\\\]", "").replaceFirst("\\.md$", "");
    }
}
