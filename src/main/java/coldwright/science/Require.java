package coldwright.science;

import coldwright.words.Phrase;
import coldwright.words.Words;

import java.util.Arrays;

/** Argument checks; each error names the value, its figure and the allowed range. */
public final class Require {
    private Require() {}

    /**
     * Checks that a value is a finite number in a closed range.
     *
     * @param name the value's name with its unit, such as {@code saltPercent}
     * @param value the value
     * @param range the allowed range, with the unit for the message
     * @throws IllegalArgumentException if it is not a number or outside the range
     */
    public static double within(String name, double value, Range range) {
        if (value >= range.least() && value <= range.most()) {
            return value;
        }
        throw fault("science", "within", name, value, range.least(), range.most(), range.unit());
    }

    /**
     * Checks that an amount is zero or more and finite.
     *
     * @param name the value's name with its unit, such as {@code massG}
     * @param value the value
     * @param unit the unit in the message
     * @throws IllegalArgumentException if it is negative, infinite or not a number
     */
    public static double notNegative(String name, double value, String unit) {
        if (value >= 0 && Double.isFinite(value)) {
            return value;
        }
        throw fault("science", "not-negative", name, value, unit);
    }

    /**
     * Checks that a value is above zero and finite.
     *
     * @param name the value's name with its unit, such as {@code waterG}
     * @param value the value
     * @param unit the unit in the message
     * @throws IllegalArgumentException if it is zero, negative, infinite or not a number
     */
    public static double positive(String name, double value, String unit) {
        if (value > 0 && Double.isFinite(value)) {
            return value;
        }
        throw fault("science", "positive", name, value, unit);
    }

    /**
     * Checks a condition.
     *
     * @param holds whether it is met
     * @param message what is wrong and what is allowed, with a place for each value
     * @param values texts and numbers; numbers get the format of a sentence
     * @throws IllegalArgumentException if it isn't met
     */
    public static void that(boolean holds, String message, Object... values) {
        if (!holds) {
            Object[] shown =
                    Arrays.stream(values)
                            .map(one -> one instanceof Double number ? format(number) : one)
                            .toArray();
            throw new IllegalArgumentException(message.formatted(shown));
        }
    }

    /** An error with a text of a bundle, in the language shown. */
    public static IllegalArgumentException fault(String area, String key, Object... values) {
        return new IllegalArgumentException(Phrase.of(area, key, values).shown().strip());
    }

    /**
     * Formats a number for a sentence: no needless decimals, a real minus sign.
     *
     * @param value any number
     * @return at most six significant digits, such as {@code −2.64}
     */
    public static String format(double value) {
        return Words.number(value);
    }

    /**
     * A closed range with its unit.
     *
     * @param least the least allowed value
     * @param most the greatest allowed value
     * @param unit the unit, as used in a message; may be empty
     */
    public record Range(double least, double most, String unit) {}
}
