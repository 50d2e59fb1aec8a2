package coldwright.workbook.entry;

/**
 * Two versions of something, brought together.
 *
 * @param <T> what was brought together
 * @param value both of them, as far as they agree; where both changed the same thing, mine
 * @param clash whether both changed the same thing, so that something of theirs is missing
 */
public record Merged<T>(T value, boolean clash) {}
