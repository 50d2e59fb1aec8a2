package coldwright.science.style;

import coldwright.words.Phrase;

/**
 * The usual range of a quantity in a style.
 *
 * @param least lower end, in the quantity's unit; minus infinity for none
 * @param most upper end, in the quantity's unit; infinity for none
 * @param source source of the ends; {@link #RULE_OF_THUMB} if there is none
 */
public record StyleRange(double least, double most, String source) {
    /** The mark of a range without a source. */
    public static final String RULE_OF_THUMB = "practice";

    /** No bounds. */
    public static final StyleRange NONE =
            new StyleRange(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, RULE_OF_THUMB);

    /**
     * How far a value is outside.
     *
     * @param value in the quantity's unit
     * @return above zero beyond the upper end, below zero under the lower end, zero inside
     */
    public double beyond(double value) {
        return Math.max(0, value - most) + Math.min(0, value - least);
    }

    /** {@return in any language} */
    public Phrase sourcePhrase() {
        return Phrase.of("science.style", "source." + source);
    }
}
