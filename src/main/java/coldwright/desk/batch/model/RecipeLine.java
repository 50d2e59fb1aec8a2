package coldwright.desk.batch.model;

import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;

import java.util.Map;
import java.util.Optional;

/**
 * A line of a recipe as it stands on the page, right or wrong.
 *
 * @param amount as typed
 * @param name as typed
 * @param leastG what a balance must keep, as its file has it; empty for nothing
 * @param mostG what a balance may use, as its file has it; empty for no limit
 */
public record RecipeLine(String amount, String name, String leastG, String mostG) {
    /**
     * A line that no balance binds.
     *
     * @param amount as typed
     * @param name as typed
     */
    public RecipeLine(String amount, String name) {
        this(amount, name, "", "");
    }

    /**
     * Whether it still lacks its amount or its name.
     *
     * @return true of an empty line too
     */
    public boolean unfinished() {
        return amount.isBlank() || name.isBlank();
    }

    /**
     * What is wrong with it.
     *
     * @param own the cook's own ingredients by their names in lower case
     * @return a sentence; empty if nothing is, or it is unfinished
     */
    public Optional<String> fault(Map<String, Ingredient> own) {
        try {
            if (!name.isBlank()) {
                Ingredient ingredient = ingredient(own);
                if (!amount.isBlank()) {
                    TypedAmount.of(amount).grams(ingredient);
                }
            }
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(e.getMessage());
        }
    }

    /**
     * What it names.
     *
     * @param own the cook's own ingredients by their names in lower case
     * @return the ingredient
     * @throws IllegalArgumentException if there is none of that name
     */
    public Ingredient ingredient(Map<String, Ingredient> own) {
        Ingredient mine = own.get(name.strip().toLowerCase(java.util.Locale.ROOT));
        return mine != null ? mine : Shelf.find(name.strip());
    }

    /**
     * Its mass.
     *
     * @param own the cook's own ingredients by their names in lower case
     * @return g; zero while it is unfinished
     * @throws IllegalArgumentException if something is wrong with it
     */
    public double grams(Map<String, Ingredient> own) {
        return unfinished() ? 0 : TypedAmount.of(amount).grams(ingredient(own));
    }

    /**
     * The grams of spoons and cups.
     *
     * @param own the cook's own ingredients by their names in lower case
     * @return such as {@code 24.6 g}; empty where grams were typed
     */
    public String inGrams(Map<String, Ingredient> own) {
        if (unfinished() || fault(own).isPresent() || TypedAmount.of(amount).weighed()) {
            return "";
        }
        return TypedAmount.number(grams(own)) + " g";
    }

    /** The same with another amount. */
    RecipeLine weighing(double massG) {
        return new RecipeLine(TypedAmount.number(massG) + " g", name, leastG, mostG);
    }

    /** So many times as much; what can't be read stays. */
    RecipeLine times(double factor) {
        try {
            return amount.isBlank()
                    ? this
                    : new RecipeLine(TypedAmount.of(amount).times(factor), name, leastG, mostG);
        } catch (IllegalArgumentException e) {
            return this;
        }
    }
}
