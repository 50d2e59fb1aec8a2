package coldwright.play;

/** Whose version of a lesson is played. */
@FunctionalInterface
public interface SnippetTexts {
    /** Its author's. */
    SnippetTexts AUTHORS = (step, index, authorText) -> authorText;

    /**
     * The text of a snippet.
     *
     * @param step its step's name
     * @param index which snippet of the step, from 0
     * @param authorText the text in the lesson
     * @return the text to run
     */
    String textOf(String step, int index, String authorText);
}
