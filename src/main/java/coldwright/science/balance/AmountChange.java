package coldwright.science.balance;

import coldwright.science.mix.Ingredient;
import coldwright.words.Phrase;

/**
 * More or less of one ingredient.
 *
 * @param massG how much is added, g; below zero if taken out
 * @param ingredient of what
 */
public record AmountChange(double massG, Ingredient ingredient) {
    /**
     * It in any language.
     *
     * @return what to add or take out
     */
    public Phrase phrase() {
        return Phrase.of(
                "science.balance",
                massG < 0 ? "take-out" : "add",
                Math.round(Math.abs(massG) * 10) / 10.0,
                ingredient.name());
    }

    @Override
    public String toString() {
        return phrase().english();
    }
}
