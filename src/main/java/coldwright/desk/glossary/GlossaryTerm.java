package coldwright.desk.glossary;

import java.util.Optional;

/**
 * A term of the glossary, with another name in brackets if it has one; one sentence of meaning and
 * where it is calculated, both with Java between backticks; and the file name, without its ending,
 * of the lesson that teaches it.
 */
public record GlossaryTerm(
        String name, String meaning, String calculatedBy, Optional<String> lesson) {

    /** The same in the language shown, with the English name in brackets. */
    public GlossaryTerm shown() {
        String key = name.replace(' ', '-');
        return new GlossaryTerm(
                Glossary.shown("name." + key, name),
                Glossary.shown("meaning." + key, meaning),
                Glossary.shown("by." + key, calculatedBy),
                lesson);
    }
}
