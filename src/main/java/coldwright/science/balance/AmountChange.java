package coldwright.science.balance;

import coldwright.science.Rounded;
import coldwright.science.mix.Ingredient;
import coldwright.words.Phrase;

/**
 * A change to the amount of one ingredient.
 *
 * @param massG how much is added, g; below zero if taken out
 * @param ingredient the ingredient
 */
public record AmountChange(double massG, Ingredient ingredient) {
    /** {@return what to add or take out, in any language} */
    public Phrase phrase() {
        return Phrase.of(
                "science.balance",
                massG < 0 ? "take-out" : "add",
                Rounded.tenth(Math.abs(massG)),
                ingredient.phrase());
    }

    @Override
    public String toString() {
        return phrase().english();
    }
}
