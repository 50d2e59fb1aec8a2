package coldwright.workbook;

import java.util.Optional;

/**
 * The result of a save: the file's current value, which is the given one merged with another
 * window's changes, and why it was not saved, one sentence, empty if it is on the disk.
 */
public record Saved<T>(T value, Optional<String> failure) {}
