package coldwright.science.mix;

import coldwright.science.Require;

import java.util.Objects;

/**
 * A mass of an ingredient.
 *
 * @param massG mass, g, zero or more
 * @param ingredient the ingredient
 */
public record Amount(double massG, Ingredient ingredient) {
    private static final Require.Range MASS = new Require.Range(0, 1e7, "g");

    public Amount {
        Objects.requireNonNull(ingredient, "ingredient");
        Require.within("massG of " + ingredient.name(), massG, MASS);
    }

    /**
     * A mass of an ingredient.
     *
     * @param massG mass, g, zero or more
     * @throws IllegalArgumentException if the mass is negative or not a number
     */
    public static Amount grams(double massG, Ingredient ingredient) {
        return new Amount(massG, ingredient);
    }

    @Override
    public String toString() {
        return "%s g %s".formatted(Require.format(massG), ingredient.name());
    }
}
