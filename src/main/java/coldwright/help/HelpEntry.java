package coldwright.help;

import java.util.List;
import java.util.Objects;

/**
 * What is to be known of a name.
 *
 * @param name the name alone, such as {@code icePercentAt}
 * @param owner the type it belongs to, such as {@code FreezingCurve} or {@code Cold.Machine}; empty
 *     for a type of its own and for a word of the language
 * @param kind what it is
 * @param signature how it is written, with the units of numbers, such as {@code
 *     icePercentAt(temperatureC in °C) → %}
 * @param result the type of what it gives, as Java writes it; empty for a word of the language
 * @param sentence what it is, in a sentence; empty where its name says all
 * @param parameters one line for each value that it takes, with unit and range
 * @param returns what it gives, with the unit; may be empty
 */
public record HelpEntry(
        String name,
        String owner,
        Kind kind,
        String signature,
        String result,
        String sentence,
        List<String> parameters,
        String returns) {
    /** Checks and copies what is given. */
    public HelpEntry {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(owner, "owner");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(signature, "signature");
        Objects.requireNonNull(result, "result");
        Objects.requireNonNull(sentence, "sentence");
        Objects.requireNonNull(returns, "returns");
        parameters = List.copyOf(parameters);
    }

    /** What a name can be. */
    public enum Kind {
        /** A class. */
        TYPE,
        /** A class whose parts are named between its brackets. */
        RECORD,
        /** A type that others are examples of. */
        INTERFACE,
        /** A type with a closed list of choices. */
        ENUM,
        /** Called on a thing. */
        METHOD,
        /** Called on a type, or alone. */
        FUNCTION,
        /** A part of a record. */
        COMPONENT,
        /** A fixed value. */
        CONSTANT,
        /** One of a closed list. */
        CHOICE,
        /** An ingredient of the shelf. */
        INGREDIENT,
        /** A word of the language, or something of Java's own. */
        JAVA
    }
}
