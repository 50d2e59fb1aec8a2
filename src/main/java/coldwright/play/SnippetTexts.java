package coldwright.play;

/** The version of a lesson to play. */
@FunctionalInterface
public interface SnippetTexts {
    /** The author's version. */
    SnippetTexts AUTHORS = (step, index, authorText) -> authorText;

    /** The text to run for a snippet, by its step's name and its index in the step, from 0. */
    String textOf(String step, int index, String authorText);
}
