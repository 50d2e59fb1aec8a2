package coldwright.science.mix;

import coldwright.science.Require;
import coldwright.words.Phrase;

import java.util.List;
import java.util.Optional;
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
 * @param kind where a cook would look for it
 * @param diet who eats it
 * @param measures masses of one piece, one cup heaped and the like; empty if none is known
 */
public record Ingredient(
        String name,
        List<String> aliases,
        Composition composition,
        OptionalDouble densityKgPerL,
        Set<Allergen> allergens,
        String source,
        String inferred,
        IngredientKind kind,
        Diet diet,
        List<HouseholdMeasure> measures) {

    public Ingredient {
        Require.that(
                !name.isBlank(),
                "the ingredient's name is empty; it must have at least one letter");
        aliases = List.copyOf(aliases);
        allergens = Set.copyOf(allergens);
        measures = List.copyOf(measures);
    }

    /** Its name in any language; an ingredient of one's own keeps the name it was given. */
    public Phrase phrase() {
        return Phrase.named("science.mix.shelf", "name", name);
    }

    /** An ingredient of one's own, of unknown kind and diet, without household measures. */
    public Ingredient(
            String name,
            List<String> aliases,
            Composition composition,
            OptionalDouble densityKgPerL,
            Set<Allergen> allergens,
            String source,
            String inferred) {
        this(
                name,
                aliases,
                composition,
                densityKgPerL,
                allergens,
                source,
                inferred,
                IngredientKind.OWN,
                Diet.CHECK,
                List.of());
    }

    /** The same under another name. */
    public Ingredient called(String newName) {
        return new Ingredient(
                newName,
                aliases,
                composition,
                densityKgPerL,
                allergens,
                source,
                inferred,
                kind,
                diet,
                measures);
    }

    /**
     * A household measure of this ingredient.
     *
     * @param unit its name, such as {@code piece} or {@code cup}
     * @return the measure; empty if it is not known
     */
    public Optional<HouseholdMeasure> measure(String unit) {
        return measures.stream().filter(one -> one.unit().equals(unit)).findFirst();
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
