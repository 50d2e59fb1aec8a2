package coldwright.workbook;

import java.nio.file.Path;

/**
 * A copy of a file's content before this window overwrote another window's change.
 *
 * @param what the subject of the file, such as a lesson's title
 * @param copy the copy
 */
public record Copied(String what, Path copy) {}
