package coldwright.science.balance;

import coldwright.science.Band;
import coldwright.science.Require;
import coldwright.science.mix.Mix;
import coldwright.science.sensory.Firmness;
import coldwright.words.Phrase;
import coldwright.words.Worded;

import java.util.Objects;

/**
 * A wish for a batch: a trait within bounds.
 *
 * @param phrase the wish in any language
 * @param trait the trait
 * @param least no less than this, in the trait's unit
 * @param most no more than this, in the trait's unit
 */
public record Wish(Phrase phrase, Trait trait, double least, double most) implements Worded {
    public Wish {
        Objects.requireNonNull(phrase, "phrase");
        Objects.requireNonNull(trait, "trait");
        if (!(least <= most)) {
            throw new IllegalArgumentException(
                    "the wish \"%s\" runs from %s to %s; its first bound must be the lower one"
                            .formatted(phrase, Require.format(least), Require.format(most)));
        }
    }

    /**
     * Scoopable at a temperature, as {@link Firmness} defines it.
     *
     * @param temperatureC the temperature, °C, −60 to 120
     * @return the wish: 65 to 75 % of the water is ice there, proportionally more in a mix drier than
     *     ordinary; below −20 °C one class softer
     */
    public static Wish scoopableAt(double temperatureC) {
        Band ice = Firmness.scoopablePercentAt(temperatureC);
        return new Wish(
                Phrase.of("science.balance", "scoopable", temperatureC),
                Trait.spoonIceAt(temperatureC),
                ice.low(),
                ice.high());
    }

    /**
     * A trait within bounds.
     *
     * @param words the wish in plain words
     * @param trait the trait
     * @param least lower bound, in the trait's unit
     * @param most upper bound, in the trait's unit
     */
    public static Wish within(String words, Trait trait, double least, double most) {
        return new Wish(Phrase.of("science.balance", "plain", words), trait, least, most);
    }

    /**
     * Whether a mix meets the wish.
     *
     * @return true if the trait is within bounds
     */
    public boolean grantedBy(Mix mix) {
        double value = trait.of(mix);
        return value >= least && value <= most;
    }
}
