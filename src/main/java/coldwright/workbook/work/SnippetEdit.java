package coldwright.workbook.work;

/**
 * A learner's text of a snippet.
 *
 * @param index index of the snippet in its step, from 0, given ones included
 * @param text the learner's text
 * @param from the hash of the author's text that was edited
 */
public record SnippetEdit(int index, String text, ContentHash from) {
    /**
     * Checks the index.
     *
     * @throws IllegalArgumentException if it is below 0 or above 99,999
     */
    public SnippetEdit {
        PartPositions.require(index);
    }
}
