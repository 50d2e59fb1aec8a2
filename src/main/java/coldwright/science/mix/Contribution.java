package coldwright.science.mix;

/**
 * The part of one solute of one ingredient in the freezing point depression of a mix.
 *
 * @param ingredient the ingredient
 * @param solute the solute, such as {@code lactose} or {@code milk salts}
 * @param sharePercent its share of the whole depression, %
 * @param depressionC its part of the whole depression, °C, zero or more
 */
public record Contribution(
        Ingredient ingredient, String solute, double sharePercent, double depressionC) {}
