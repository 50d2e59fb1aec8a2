package coldwright.science.balance;

import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import java.util.List;
import java.util.Set;

/**
 * Limits on suggested changes: none may add an allergen or an animal ingredient that the batch
 * doesn't have, add alcohol, or make it salty.
 *
 * <p>Allergens are those listed on the shelf. Alcohol may not rise even where there is some,
 * because small amounts often come only from flavour extracts.
 */
public final class SuggestionLimits {
    /**
     * Most salt that a suggestion may lead to, % by mass of the batch; sodium chloride with
     * potassium and calcium chloride, as far as they were added. Common practice, no source. For
     * comparison USDA SR24 19095, vanilla ice cream, has 80 mg of sodium in 100 g, which is 0.2 %
     * as salt; none of its ice creams has more than 110 mg (01243), 0.28 %.
     */
    public static final double MOST_SALT_PERCENT = 0.5;

    /** Ingredients that are or may be of animal origin and are on no list of allergens. */
    private static final Set<Ingredient> ANIMAL =
            Set.of(Shelf.HONEY, Shelf.GELATINE, Shelf.MONO_AND_DIGLYCERIDES);

    private static final List<Component> SALTS =
            List.of(Component.SALT, Component.POTASSIUM_CHLORIDE, Component.CALCIUM_CHLORIDE);

    /** Rounding error of floating-point sums, g and %. */
    private static final double ROUNDING = 1e-9;

    private SuggestionLimits() {}

    /**
     * Whether more of an ingredient may be suggested at all.
     *
     * @param mix the batch as it is
     * @param ingredient the ingredient to add
     * @return false if it brings alcohol, or an allergen or an animal ingredient that the batch
     *     doesn't have
     */
    public static boolean mayAdd(Mix mix, Ingredient ingredient) {
        return ingredient.composition().percent(Component.ALCOHOL) == 0
                && mix.allergens().containsAll(ingredient.allergens())
                && (!ANIMAL.contains(ingredient) || mix.massG(ingredient) > 0);
    }

    /**
     * Whether a batch may be suggested in place of another.
     *
     * @param before the batch as it is
     * @param after the batch with the change
     * @return false if something was added that {@link #mayAdd} refuses, or if it is saltier than
     *     before and above {@link #MOST_SALT_PERCENT}
     */
    public static boolean allow(Mix before, Mix after) {
        if (tooSalty(saltsPercent(before), saltsPercent(after))
                || tooSalty(before.saltPercent(), after.saltPercent())) {
            return false;
        }
        for (Amount amount : after.amounts()) {
            boolean more = amount.massG() > before.massG(amount.ingredient()) + ROUNDING;
            if (more && !mayAdd(before, amount.ingredient())) {
                return false;
            }
        }
        return true;
    }

    private static boolean tooSalty(double beforePercent, double afterPercent) {
        return afterPercent > Math.max(MOST_SALT_PERCENT, beforePercent) + ROUNDING;
    }

    /** {@return salt and the other chlorides of a batch, % by mass} */
    public static double saltsPercent(Mix mix) {
        return SALTS.stream().mapToDouble(mix.composition()::percent).sum();
    }
}
