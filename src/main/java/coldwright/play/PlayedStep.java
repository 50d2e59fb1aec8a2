package coldwright.play;

import coldwright.lesson.LessonPart;
import coldwright.lesson.PartsByKind;

import java.util.List;

/**
 * A step as it is played.
 *
 * @param number its place in the lesson, from 1; 0 for what stands before the first step
 * @param name its name, unlike any other step's; empty for what stands before the first step
 * @param parts its parts, in order
 * @param texts whose version is played
 * @param changedAbove whether a snippet of a step above is not its author's
 */
public record PlayedStep(
        int number, String name, List<LessonPart> parts, SnippetTexts texts, boolean changedAbove) {
    /** Copies what is given. */
    public PlayedStep {
        parts = List.copyOf(parts);
    }

    /** Its snippets with the texts that are run, in order. */
    public List<SnippetText> snippets() {
        return PartsByKind.of(parts).snippets().stream().map(this::of).toList();
    }

    /** One of its snippets with the text that is run. */
    public SnippetText of(LessonPart.Snippet snippet) {
        int index = PartsByKind.of(parts).snippets().indexOf(snippet);
        return new SnippetText(index, snippet, texts.textOf(name, index, snippet.code()));
    }

    /** Whether a snippet of it is not its author's. */
    public boolean changed() {
        return snippets().stream().anyMatch(SnippetText::changed);
    }
}
