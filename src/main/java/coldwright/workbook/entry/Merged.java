package coldwright.workbook.entry;

/**
 * The result of a merge.
 *
 * @param <T> type of the value
 * @param value the merged value; where both changed the same thing, mine
 * @param clash whether both changed the same thing, so that part of theirs is missing
 */
public record Merged<T>(T value, boolean clash) {}
