package coldwright.play;

/** The version of a lesson to play. */
@FunctionalInterface
public interface SnippetTexts {
    /** The author's version. */
    SnippetTexts AUTHORS = (step, index, authorText) -> authorText;

    /**
     * The text to run for a snippet.
     *
     * @param step the step's name
     * @param index which snippet of the step, from 0
     * @param authorText the text in the lesson
     */
    String textOf(String step, int index, String authorText);
}
