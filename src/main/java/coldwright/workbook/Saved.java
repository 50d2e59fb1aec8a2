package coldwright.workbook;

import java.util.Optional;

/**
 * The result of a save.
 *
 * @param <T> type of the value
 * @param value the file's current value: the given one, merged with another window's changes
 * @param failure why it was not saved, one sentence; empty if it is on the disk
 */
public record Saved<T>(T value, Optional<String> failure) {}
