package coldwright.batch;

import coldwright.recipe.IngredientLine;
import coldwright.recipe.LineReading;
import coldwright.science.mix.Ingredient;

/**
 * An amount as a cook types it, in any unit that recipes use: {@code 120}, {@code 2 tbsp}, {@code 4
 * pieces}, {@code 1/2 cup}. What it weighs depends on the ingredient.
 *
 * @param text as typed
 */
public record TypedAmount(String text) {
    /**
     * Parses an amount.
     *
     * @throws IllegalArgumentException if the text is not an amount
     */
    public static TypedAmount of(String text) {
        if (!IngredientLine.isAmount(text)) {
            throw Fault.in("amount", text.strip());
        }
        return new TypedAmount(text.strip());
    }

    /** What it is understood as for an ingredient. */
    public LineReading of(Ingredient ingredient) {
        return IngredientLine.amount(text, ingredient);
    }

    /**
     * The mass in grams.
     *
     * @param ingredient the ingredient; its density and its pieces turn other units into grams
     * @return g, 0 to ten tonnes
     * @throws IllegalArgumentException if it may mean two things, or nobody knows what it weighs
     */
    public double grams(Ingredient ingredient) {
        LineReading read = of(ingredient);
        if (read.state() != LineReading.State.UNDERSTOOD) {
            throw new IllegalArgumentException(read.why().orElseThrow().shown());
        }
        return read.massG();
    }

    /** Whether it is weighed, not measured by volume or counted. */
    boolean weighed() {
        return IngredientLine.isWeight(text);
    }

    /** The amount multiplied, as a cook would type it. */
    String times(double factor) {
        return IngredientLine.times(text, factor, TypedAmount::number);
    }

    /**
     * A finite number as a cook writes it: three decimals below 10, two below 100, else one,
     * without trailing zeros.
     */
    public static String number(double value) {
        double size = Math.abs(value);
        double step = size >= 100 ? 0.1 : size >= 10 ? 0.01 : 0.001;
        double rounded = Math.round(value / step) * step;
        return new java.math.BigDecimal(rounded)
                .setScale(3, java.math.RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
