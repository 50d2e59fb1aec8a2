package coldwright.workbook;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What became of a workbook that was cleared.
 *
 * @param folder where everything lies now; empty if there was nothing or nothing could be moved
 * @param message what went wrong, one sentence; empty if nothing did
 */
public record ArchivedWorkbook(Optional<Path> folder, Optional<String> message) {}
