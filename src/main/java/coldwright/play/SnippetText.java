package coldwright.play;

import coldwright.lesson.LessonPart;

/**
 * A snippet of a step, by its index from 0, with the text to run, the learner's or the author's.
 */
public record SnippetText(int index, LessonPart.Snippet snippet, String text) {
    /** Whether the learner changed it. */
    public boolean changed() {
        return !text.equals(snippet.code());
    }
}
