package coldwright.play;

import coldwright.lesson.LessonPart;

/**
 * A snippet with the text that is run.
 *
 * @param index which snippet of its step, from 0
 * @param snippet as the lesson has it
 * @param text the text that is run, the learner's or the author's
 */
public record SnippetText(int index, LessonPart.Snippet snippet, String text) {
    /** Whether it is no longer the author's. */
    public boolean changed() {
        return !text.equals(snippet.code());
    }
}
