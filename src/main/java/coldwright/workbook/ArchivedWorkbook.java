package coldwright.workbook;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The result of clearing a workbook: the new folder of its files, empty if nothing was moved, and
 * the error, one sentence, if any.
 */
public record ArchivedWorkbook(Optional<Path> folder, Optional<String> message) {}
