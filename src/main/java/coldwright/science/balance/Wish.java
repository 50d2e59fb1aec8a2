package coldwright.science.balance;

import coldwright.science.Band;
import coldwright.science.Require;
import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.sensory.Firmness;
import coldwright.words.Phrase;
import coldwright.words.Worded;

import java.util.Objects;
import java.util.function.Predicate;

/**
 * A wish for a batch: a trait within bounds and, if wanted, ingredients left out.
 *
 * @param phrase the wish in any language
 * @param trait the trait
 * @param least no less than this, in the trait's unit
 * @param most no more than this, in the trait's unit
 * @param unwanted which ingredients must be removed first
 */
public record Wish(
        Phrase phrase, Trait trait, double least, double most, Predicate<Ingredient> unwanted)
        implements Worded {
    /** Most ice at which a spoon goes in, % of the water. */
    public static final double SCOOPABLE_MOST_ICE_PERCENT = Firmness.SCOOPABLE_MOST_ICE_PERCENT;

    /** Least ice that does not slump, % of the water. */
    public static final double SCOOPABLE_LEAST_ICE_PERCENT = Firmness.SCOOPABLE_LEAST_ICE_PERCENT;

    /** How close a kept trait must stay, in its own unit. */
    private static final double KEPT = 0.5;

    public Wish {
        Objects.requireNonNull(phrase, "phrase");
        Objects.requireNonNull(trait, "trait");
        Require.that(
                least <= most,
                "the wish \"%s\" is from %s to %s; the first must be the lower one",
                phrase,
                least,
                most);
    }

    /**
     * Scoopable at a temperature, as {@link Firmness} defines it.
     *
     * @param temperatureC the temperature, °C, −60 to 120
     * @return the wish: {@value #SCOOPABLE_LEAST_ICE_PERCENT} to {@value
     *     #SCOOPABLE_MOST_ICE_PERCENT} % of the water is ice there, proportionally more in a mix
     *     drier than ordinary; below −20 °C one class softer
     */
    public static Wish scoopableAt(double temperatureC) {
        Band ice = Firmness.scoopablePercentAt(temperatureC);
        return new Wish(
                phrase("scoopable", temperatureC),
                Trait.spoonIceAt(temperatureC),
                ice.low(),
                ice.high(),
                ingredient -> false);
    }

    /**
     * A trait within bounds.
     *
     * @param words the wish in plain words
     * @param least lower bound, in the trait's unit
     * @param most upper bound, in the trait's unit
     */
    public static Wish within(String words, Trait trait, double least, double most) {
        return new Wish(phrase("plain", words), trait, least, most, ingredient -> false);
    }

    /**
     * No alcohol, and as firm as before.
     *
     * @param mix the batch as it is
     * @param temperatureC temperature at which it must stay as firm, °C
     */
    public static Wish noAlcohol(Mix mix, double temperatureC) {
        return without(
                phrase("no-alcohol"),
                mix,
                Trait.iceAt(temperatureC),
                ingredient -> ingredient.composition().percent(Component.ALCOHOL) > 0);
    }

    /**
     * Some ingredients left out, and a trait as before.
     *
     * @param words the wish in plain words
     * @param mix the batch as it is
     * @param kept the trait that must stay
     * @param unwanted which ingredients must be removed
     */
    public static Wish without(String words, Mix mix, Trait kept, Predicate<Ingredient> unwanted) {
        return without(phrase("plain", words), mix, kept, unwanted);
    }

    private static Wish without(
            Phrase phrase, Mix mix, Trait kept, Predicate<Ingredient> unwanted) {
        double now = kept.of(mix);
        return new Wish(phrase, kept, now - KEPT, now + KEPT, unwanted);
    }

    private static Phrase phrase(String key, Object... values) {
        return Phrase.of("science.balance", key, values);
    }

    /**
     * The batch without the unwanted ingredients.
     *
     * @param mix the batch
     * @return the rest of it, without making up for the water they brought
     * @throws IllegalArgumentException if nothing would be left
     */
    Mix cleared(Mix mix) {
        Mix rest = mix;
        for (var amount : mix.amounts()) {
            if (unwanted.test(amount.ingredient())) {
                rest = rest.without(amount.ingredient());
            }
        }
        return rest;
    }

    /**
     * Whether a mix meets the wish.
     *
     * @return true if nothing unwanted is in it and the trait is within bounds
     */
    public boolean grantedBy(Mix mix) {
        double value = trait.of(mix);
        return value >= least
                && value <= most
                && mix.amounts().stream()
                        .noneMatch(a -> a.massG() > 0 && unwanted.test(a.ingredient()));
    }
}
