package coldwright.lesson;

import java.util.List;

/**
 * A lesson.
 *
 * @param file the file's name in messages
 * @param title its first heading
 * @param track its part of the course; may be empty
 * @param minutes its duration, as its author wrote it; may be empty
 * @param needs things that the learner needs; may be empty
 * @param asks what its snippets need beyond what lessons may do: {@code everything} or {@code read}
 *     and the name of a file; may be empty
 * @param opening the parts before the first step
 * @param steps its steps, in order
 * @param kit what its kitchen trial needs
 * @param faults errors in its text; the rest is usable
 * @param text the whole source text; empty if it couldn't be read
 */
public record Lesson(
        String file,
        String title,
        String track,
        String minutes,
        String needs,
        String asks,
        List<LessonPart> opening,
        List<LessonStep> steps,
        List<KitItem> kit,
        List<LessonFault> faults,
        String text) {
    public Lesson {
        opening = List.copyOf(opening);
        steps = List.copyOf(steps);
        kit = List.copyOf(kit);
        faults = List.copyOf(faults);
    }

    /** Whether its snippets need all rights of the user. */
    public boolean asksForEverything() {
        return asks.equals("everything");
    }

    /** Its file's name without folders and without {@code .md}. */
    public String name() {
        return file.replaceFirst("^.*[/\\\\]", "").replaceFirst("\\.md$", "");
    }
}
