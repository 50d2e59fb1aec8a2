package coldwright.science.mix;

import coldwright.science.Require;

/** A kitchen measure of volume. Cups and spoons are United States ones, as in the USDA rows. */
public enum KitchenMeasure {
    MILLILITRES("mL", 1),
    TEASPOONS("tsp", 4.929),
    TABLESPOONS("tbsp", 14.787),
    FLUID_OUNCES("fl oz", 29.574),
    CUPS("cups", 236.588),
    LITRES("L", 1000);

    private final String words;
    private final double millilitres;

    KitchenMeasure(String words, double millilitres) {
        this.words = words;
        this.millilitres = millilitres;
    }

    /** {@return volume of one measure, mL} */
    public double millilitres() {
        return millilitres;
    }

    /**
     * Converts a number of measures of an ingredient to grams, by its density.
     *
     * @param count number of measures, zero or more
     * @param ingredient an ingredient with a density
     * @throws IllegalArgumentException if the ingredient has no density
     */
    public Amount of(double count, Ingredient ingredient) {
        Require.notNegative("count of " + words, count, words);
        double densityKgPerL =
                ingredient
                        .densityKgPerL()
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                "%s %s of %s can't be turned into grams, because it packs differently each time. Weigh it."
                                                        .formatted(
                                                                Require.format(count),
                                                                words,
                                                                ingredient.name())));
        return Amount.grams(count * millilitres * densityKgPerL, ingredient);
    }
}
