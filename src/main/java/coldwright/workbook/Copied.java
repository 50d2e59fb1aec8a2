package coldwright.workbook;

import java.nio.file.Path;

/**
 * A copy of a file's content before this window overwrote another window's change; {@code what} is
 * the file's subject, such as a lesson's title.
 */
public record Copied(String what, Path copy) {}
