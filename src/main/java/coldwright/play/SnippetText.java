package coldwright.play;

import coldwright.lesson.LessonPart;

/**
 * A snippet with the text to run.
 *
 * @param index which snippet of its step, from 0
 * @param snippet the snippet in the lesson
 * @param text the text to run, the learner's or the author's
 */
public record SnippetText(int index, LessonPart.Snippet snippet, String text) {
    /** Whether the learner changed it. */
    public boolean changed() {
        return !text.equals(snippet.code());
    }
}
