package coldwright.workbook;

import java.util.Optional;

/**
 * What became of a save.
 *
 * @param <T> what was to be saved
 * @param value what the file holds now: what was given, together with what another window had
 *     written since
 * @param failure why it was not kept, one sentence; empty if it is on the disk
 */
public record Saved<T>(T value, Optional<String> failure) {}
