package coldwright.science.mix;

import coldwright.science.Require;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * An ingredient of the shelf, or a learner's own.
 *
 * @param name everyday name, in the trade's words
 * @param aliases other names
 * @param composition composition of 100 g
 * @param densityKgPerL density as poured or heaped, kg/L; empty where spoons and cups are too
 *     inexact
 * @param allergens allergens that usually must be declared; empty if none is known, which doesn't
 *     mean that there is none
 * @param source source of its figures, such as {@code USDA SR24 01211}
 * @param inferred calculated or assumed values and how they were found; empty if none
 */
public record Ingredient(
        String name,
        List<String> aliases,
        Composition composition,
        OptionalDouble densityKgPerL,
        Set<Allergen> allergens,
        String source,
        String inferred) {

    public Ingredient {
        Require.that(
                !name.isBlank(),
                "the ingredient's name is empty; it must have at least one letter");
        aliases = List.copyOf(aliases);
        allergens = Set.copyOf(allergens);
    }

    /**
     * Your own ingredient, by its composition.
     *
     * @param name everyday name
     * @param composition composition of 100 g
     */
    public static Ingredient own(String name, Composition composition) {
        return new Ingredient(
                name, List.of(), composition, OptionalDouble.empty(), Set.of(), "own", "");
    }

    /**
     * {@return its anti-freezing power on the trade's scale, sucrose = 100; see {@link Mix#pac}}
     */
    public double pac() {
        return AntiFreezingPower.pacOf100g(composition);
    }

    /** {@return its sweetening power on the trade's scale, sucrose = 100; see {@link Mix#pod}} */
    public double pod() {
        return Sweetener.podOf100g(composition);
    }

    /** Hashes only the name, because mixes look ingredients up often. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}
