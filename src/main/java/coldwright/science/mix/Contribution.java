package coldwright.science.mix;

/**
 * What one solute of one ingredient does to the freezing point of a mix.
 *
 * @param ingredient what brings it
 * @param solute what lowers the freezing point, such as {@code lactose} or {@code milk salts}
 * @param sharePercent its share of the whole depression, %
 * @param depressionC its part of the whole depression, °C, zero or more
 */
public record Contribution(
        Ingredient ingredient, String solute, double sharePercent, double depressionC) {}
