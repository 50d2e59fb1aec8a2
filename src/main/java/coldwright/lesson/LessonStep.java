package coldwright.lesson;

import java.util.List;

/**
 * One step of a lesson: a second-level heading and the parts under it.
 *
 * @param title the heading
 * @param line the heading's line in the file, from 1
 * @param parts in order
 */
public record LessonStep(String title, int line, List<LessonPart> parts) {
    /** Makes defensive copies. */
    public LessonStep {
        parts = List.copyOf(parts);
    }
}
