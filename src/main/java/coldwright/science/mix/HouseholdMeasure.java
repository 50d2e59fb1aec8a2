package coldwright.science.mix;

/**
 * A household measure of one ingredient: a piece, a cup heaped, a leaf.
 *
 * @param unit such as {@code piece}, {@code large}, {@code cup sliced}, {@code fruit} (what one
 *     fruit gives) or {@code can}
 * @param amount g, or mL if {@code volume} is true
 * @param volume whether the amount is a volume
 * @param source source of the amount, such as {@code USDA SR24 01123}
 */
public record HouseholdMeasure(String unit, double amount, boolean volume, String source) {}
