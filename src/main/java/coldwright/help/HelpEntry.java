package coldwright.help;

import java.util.List;

/**
 * The help on a name.
 *
 * @param name the name alone, such as {@code icePercentAt}
 * @param owner the type it belongs to, such as {@code FreezingCurve} or {@code Cold.Machine}; empty
 *     for a top-level type and for a Java keyword
 * @param kind its kind
 * @param signature how it is written, with the units of numbers, such as {@code
 *     icePercentAt(temperatureC in °C) → %}
 * @param result the result type, as Java writes it; empty for a Java keyword
 * @param sentence a description, one sentence; empty if the name is enough
 * @param parameters one line per parameter, with unit and range
 * @param returns the return value, with unit; may be empty
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
    /** Makes defensive copies. */
    public HelpEntry {
        parameters = List.copyOf(parameters);
    }

    /** The kinds of names. */
    public enum Kind {
        /** A class. */
        TYPE,
        /** A record class. */
        RECORD,
        /** An interface. */
        INTERFACE,
        /** An enum. */
        ENUM,
        /** An instance method. */
        METHOD,
        /** A static method. */
        FUNCTION,
        /** A component of a record. */
        COMPONENT,
        /** A constant. */
        CONSTANT,
        /** A constant of an enum. */
        CHOICE,
        /** An ingredient. */
        INGREDIENT,
        /** A Java keyword, or a name from Java's own library. */
        JAVA
    }
}
