package coldwright.workbook.work;

/**
 * A learner's text of a snippet.
 *
 * @param index which snippet of its step, from 0, those given counted too
 * @param text the learner's text
 * @param from the hash of the author's text that it was made from
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
