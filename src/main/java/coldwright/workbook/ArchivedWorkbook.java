package coldwright.workbook;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The result of clearing a workbook.
 *
 * @param folder the new folder of its files; empty if nothing was moved
 * @param message the error, one sentence; empty if there was none
 */
public record ArchivedWorkbook(Optional<Path> folder, Optional<String> message) {}
