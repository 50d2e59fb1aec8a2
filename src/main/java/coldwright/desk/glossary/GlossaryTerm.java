package coldwright.desk.glossary;

import java.util.Optional;

/**
 * A term of the glossary.
 *
 * @param name as written, with another name in brackets if it has one
 * @param meaning one sentence; Java in it is between backticks
 * @param calculatedBy where it is calculated; Java in it is between backticks
 * @param lesson file name of the lesson that teaches it, without its ending
 */
public record GlossaryTerm(
        String name, String meaning, String calculatedBy, Optional<String> lesson) {}
