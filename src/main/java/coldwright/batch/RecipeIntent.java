package coldwright.batch;

import coldwright.science.style.DietRules;
import coldwright.science.style.Style;

/**
 * What a recipe is meant to be, as typed.
 *
 * @param style its style; empty if it is guessed from recipe and method
 * @param diet what it must not contain; empty if it is respected as it is
 */
public record RecipeIntent(Typed<Style> style, Typed<DietRules> diet) {
    /** Nothing typed. */
    static final RecipeIntent NONE = new RecipeIntent(Typed.nothing(), Typed.nothing());

    /** The same with another style; a blank text means that it is guessed. */
    public RecipeIntent withStyle(String text) {
        return new RecipeIntent(Typed.of(text, Style::named), diet);
    }

    /** The same with another diet; a blank text means that the recipe is respected as it is. */
    public RecipeIntent withDiet(String text) {
        return new RecipeIntent(style, Typed.of(text, DietRules::named));
    }

    /** The first fault; empty if there is none. */
    String fault() {
        return style.fault().isEmpty() ? diet.fault() : style.fault();
    }
}
