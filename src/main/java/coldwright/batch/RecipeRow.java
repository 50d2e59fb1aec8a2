package coldwright.batch;

import coldwright.science.mix.Ingredient;

import java.util.OptionalDouble;

/**
 * One ingredient of a batch file.
 *
 * @param line where it stands, from 1
 * @param ingredient the ingredient
 * @param massG its amount, g; empty where a balance shall find it
 * @param leastG no less than this, g, for a balance
 * @param mostG no more than this, g, for a balance; infinite for no limit
 */
public record RecipeRow(
        int line, Ingredient ingredient, OptionalDouble massG, double leastG, double mostG) {}
