package coldwright.science.balance;

import coldwright.science.Require;
import coldwright.science.mix.Ingredient;

/**
 * More or less of one ingredient.
 *
 * @param massG how much is added, g; below zero if taken out
 * @param ingredient of what
 */
public record AmountChange(double massG, Ingredient ingredient) {
    @Override
    public String toString() {
        String amount = Require.format(Math.round(Math.abs(massG) * 10) / 10.0);
        return massG < 0
                ? "take out " + amount + " g " + ingredient.name()
                : "add " + amount + " g " + ingredient.name();
    }
}
