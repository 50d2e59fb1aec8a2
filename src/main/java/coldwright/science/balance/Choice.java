package coldwright.science.balance;

import coldwright.science.Require;
import coldwright.science.mix.Ingredient;

import java.util.Objects;

/**
 * An ingredient that a balance may use, with bounds on its amount.
 *
 * @param ingredient the ingredient
 * @param leastG no less than this, g
 * @param mostG no more than this, g; infinite for no limit
 */
public record Choice(Ingredient ingredient, double leastG, double mostG) {
    public Choice {
        Objects.requireNonNull(ingredient, "ingredient");
        Require.notNegative("the least of " + ingredient.name(), leastG, "g");
        Require.that(
                mostG >= leastG,
                "the most of %s is %s g; it must be at least %s g, the least",
                ingredient.name(),
                mostG,
                leastG);
    }

    /** Any amount of an ingredient. */
    public static Choice any(Ingredient ingredient) {
        return new Choice(ingredient, 0, Double.POSITIVE_INFINITY);
    }

    /**
     * A fixed amount of an ingredient.
     *
     * @param massG the mass, g
     */
    public static Choice fixed(double massG, Ingredient ingredient) {
        return new Choice(ingredient, massG, massG);
    }
}
