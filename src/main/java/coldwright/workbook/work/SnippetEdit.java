package coldwright.workbook.work;

/**
 * A learner's text of a snippet, by its index in its step, from 0, given ones included; {@code
 * from} is the hash of the author's text that was edited.
 */
public record SnippetEdit(int index, String text, ContentHash from) {
    /** Refuses an index below 0 or above 99,999. */
    public SnippetEdit {
        GivenPrediction.requireIndex(index);
    }
}
