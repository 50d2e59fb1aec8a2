package coldwright.workbook;

import java.nio.file.Path;

/**
 * A file was written over that another window had changed; what it held is kept as a copy.
 *
 * @param what what the file is about, such as a lesson's title
 * @param copy where its former content is
 */
public record Copied(String what, Path copy) {}
