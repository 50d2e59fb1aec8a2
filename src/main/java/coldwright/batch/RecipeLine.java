package coldwright.batch;

import coldwright.science.mix.Ingredient;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A line of a recipe as typed, valid or not.
 *
 * @param amount the amount
 * @param ingredient the ingredient
 * @param min lower bound for a balance, g
 * @param max upper bound for a balance, g
 * @param fixed whether a balance must keep its amount
 */
public record RecipeLine(
        Typed<TypedAmount> amount,
        Typed<Ingredient> ingredient,
        Typed<Double> min,
        Typed<Double> max,
        boolean fixed) {
    /**
     * A line without bounds for a balance.
     *
     * @param amount as typed
     * @param name as typed; an own ingredient is found once the line is part of its recipe
     */
    public RecipeLine(String amount, String name) {
        this(
                Typed.of(amount, TypedAmount::of),
                Typed.of(name, Dextrose::find),
                Typed.nothing(),
                Typed.nothing(),
                false);
    }

    /** A bound as typed. */
    static Typed<Double> bound(String what, String text) {
        return Typed.of(text, typed -> TypedQuantity.of(what, typed).grams());
    }

    /** The same with bounds for a balance, as typed. */
    public RecipeLine bound(String newMin, String newMax, boolean nowFixed) {
        return new RecipeLine(
                amount,
                ingredient,
                bound(name().strip() + " (min)", newMin),
                bound(name().strip() + " (max)", newMax),
                nowFixed);
    }

    /** The same with another amount, as typed. */
    public RecipeLine withAmount(String typed) {
        return new RecipeLine(Typed.of(typed, TypedAmount::of), ingredient, min, max, fixed);
    }

    /** The same with another name, as typed. */
    public RecipeLine withName(String typed) {
        return new RecipeLine(amount, Typed.of(typed, Dextrose::find), min, max, fixed);
    }

    /** The same, with these ingredients searched before those of the shelf. */
    RecipeLine among(Map<String, Ingredient> own) {
        Ingredient mine = own.get(name().strip().toLowerCase(Locale.ROOT));
        return mine == null || ingredient.value().filter(mine::equals).isPresent()
                ? this
                : new RecipeLine(
                        amount, new Typed<>(name(), Optional.of(mine), ""), min, max, fixed);
    }

    /** The ingredient's name, as typed. */
    public String name() {
        return ingredient.text();
    }

    /** Whether its amount or its name is missing. */
    public boolean unfinished() {
        return amount.isBlank() || ingredient.isBlank();
    }

    /** Whether nothing is typed in any field. */
    boolean isBlank() {
        return amount.isBlank() && ingredient.isBlank() && min.isBlank() && max.isBlank();
    }

    /** Its fault in a sentence; a line without a name yet has none. */
    public Optional<String> fault() {
        if (ingredient.isBlank()) {
            return Optional.empty();
        }
        Optional<String> first =
                Stream.of(ingredient, amount, min, max)
                        .map(Typed::fault)
                        .filter(fault -> !fault.isEmpty())
                        .findFirst();
        try {
            return first.isEmpty() && grams() >= 0 && mostG() < leastG()
                    ? Optional.of(Fault.of("min-max", ingredient.value().orElseThrow().name()))
                    : first;
        } catch (IllegalArgumentException e) {
            return Optional.of(e.getMessage());
        }
    }

    /** Whether it is part of the mix: finished and without faults. */
    public boolean counts() {
        return !unfinished() && fault().isEmpty();
    }

    /**
     * Its mass, g; zero while it is unfinished.
     *
     * @throws IllegalArgumentException if it can't be weighed, such as a cup of something without a
     *     known density
     */
    public double grams() {
        return amount.value().flatMap(typed -> ingredient.value().map(typed::grams)).orElse(0.0);
    }

    /** Lower bound for a balance, g. */
    double leastG() {
        return keepsAmount() ? grams() : min.value().orElse(0.0);
    }

    /** Upper bound for a balance, g; infinite for no limit. */
    double mostG() {
        return keepsAmount() ? grams() : max.value().orElse(Double.POSITIVE_INFINITY);
    }

    private boolean keepsAmount() {
        return fixed && amount.value().isPresent();
    }

    /** The grams of spoons and cups, such as {@code 24.6 g}; empty where grams were typed. */
    public String inGrams() {
        return counts() && !amount.value().orElseThrow().weighed()
                ? TypedAmount.number(grams()) + " g"
                : "";
    }

    /** The same with another mass. */
    RecipeLine weighing(double massG) {
        return withAmount(TypedAmount.number(massG) + " g");
    }

    /** The same, multiplied; an unreadable amount stays unchanged. */
    RecipeLine times(double factor) {
        return amount.value().map(typed -> withAmount(typed.times(factor))).orElse(this);
    }
}
