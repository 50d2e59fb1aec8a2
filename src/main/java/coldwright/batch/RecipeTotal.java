package coldwright.batch;

import coldwright.recipe.TypedAmount;
import coldwright.science.Require;
import coldwright.science.mix.Mix;

import java.util.OptionalDouble;

/**
 * How much a balance makes.
 *
 * @param amount grams, or litres of mix
 * @param inLitres whether the amount is a volume
 */
public record RecipeTotal(double amount, boolean inLitres) {
    /** A total as typed, such as {@code 10 l} or {@code 1.5 kg}; a number alone is grams. */
    static RecipeTotal of(String typed) {
        OptionalDouble litres = TypedAmount.litres(typed);
        if (litres.isEmpty()) {
            return new RecipeTotal(TypedQuantity.grams("total", typed), false);
        }
        Require.Range range = new Require.Range(0, RecipeLine.MOST_G / 1000, "L");
        return new RecipeTotal(Require.within("total", litres.getAsDouble(), range), true);
    }

    /** Its mass in a mix of that density, g. */
    double massG(Mix mix) {
        return inLitres ? amount * 1000 * mix.densityKgPerL() : amount;
    }
}
