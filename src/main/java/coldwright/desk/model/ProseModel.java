package coldwright.desk.model;

import coldwright.lesson.Part;

/**
 * Text to read.
 *
 * @param prose the text as parsed
 */
public record ProseModel(Part.Prose prose) implements PartModel {}
