package coldwright.science.mix;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One thing on the shelf, or one of a learner's own.
 *
 * @param name everyday name, in the trade's words
 * @param aliases other names that it is found by
 * @param composition what 100 g of it is made of
 * @param densityKgPerL density of it as poured or heaped, kg/L; empty where a spoon or cup would
 *     not be honest
 * @param allergens what it usually must be declared for; empty if nothing is known, which doesn't
 *     mean that there is none
 * @param source where its figures come from, such as {@code USDA SR24 01211}
 * @param inferred what was worked out or assumed, and how; empty if nothing was
 */
public record Ingredient(
        String name,
        List<String> aliases,
        Composition composition,
        OptionalDouble densityKgPerL,
        Set<Allergen> allergens,
        String source,
        String inferred) {

    /** Checks the name and copies the collections. */
    public Ingredient {
        if (name.isBlank()) {
            throw new IllegalArgumentException(
                    "the ingredient's name is empty; it must have at least one letter");
        }
        aliases = List.copyOf(aliases);
        allergens = Set.copyOf(allergens);
    }

    /**
     * An ingredient of one's own, by its composition.
     *
     * @param name everyday name
     * @param composition what 100 g of it is made of
     * @return the ingredient, without density and allergens
     */
    public static Ingredient own(String name, Composition composition) {
        return new Ingredient(
                name, List.of(), composition, OptionalDouble.empty(), Set.of(), "own", "");
    }

    /** The name tells ingredients apart well enough, and mixes look them up often. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}
