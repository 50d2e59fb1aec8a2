package coldwright.workbook.entry;

/**
 * The result of a merge. If both changed the same thing, that is a clash: the value has mine, and
 * part of theirs is missing.
 */
public record Merged<T>(T value, boolean clash) {}
