package coldwright.lesson;

import java.util.List;

/** One step of a lesson: a second-level heading, its line in the file, and the parts under it. */
public record LessonStep(String title, int line, List<LessonPart> parts) {
    public LessonStep {
        parts = List.copyOf(parts);
    }
}
