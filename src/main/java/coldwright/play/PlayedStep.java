package coldwright.play;

import coldwright.lesson.LessonPart;

import java.util.List;

/**
 * A step as it is played: its position in the lesson, from 1, and its unique name, 0 and empty for
 * the part before the first step; and whether a snippet of a step above was changed by the learner.
 */
public record PlayedStep(
        int number, String name, List<LessonPart> parts, SnippetTexts texts, boolean changedAbove) {
    public PlayedStep {
        parts = List.copyOf(parts);
    }

    /** Its snippets with the texts to run, in order. */
    public List<SnippetText> snippets() {
        return LessonPart.only(LessonPart.Snippet.class, parts).stream().map(this::of).toList();
    }

    /** One of its snippets with the text to run. */
    public SnippetText of(LessonPart.Snippet snippet) {
        int index = LessonPart.only(LessonPart.Snippet.class, parts).indexOf(snippet);
        return new SnippetText(index, snippet, texts.textOf(name, index, snippet.code()));
    }

    /** Whether the learner changed one of its snippets. */
    public boolean changed() {
        return snippets().stream().anyMatch(SnippetText::changed);
    }
}
