package coldwright.batch;

import coldwright.recipe.IngredientLine;
import coldwright.recipe.LineReading;
import coldwright.recipe.TypedAmount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;
import coldwright.words.Phrase;
import coldwright.words.Words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
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
        Typed<String> amount,
        Typed<Ingredient> ingredient,
        Typed<Double> min,
        Typed<Double> max,
        boolean fixed) {
    /** The largest mass: ten tonnes, g. */
    static final double MOST_G = 1e7;

    /**
     * A line without bounds for a balance.
     *
     * @param amount as typed
     * @param name as typed; an own ingredient is found once the line is part of its recipe
     */
    public RecipeLine(String amount, String name) {
        this(
                Typed.of(amount, RecipeLine::amountOf),
                Typed.of(name, Dextrose::find),
                Typed.nothing(),
                Typed.nothing(),
                false);
    }

    /**
     * The lines of a pasted one: one for each part of what was understood. What is still to be
     * decided is a line that doesn't count.
     */
    public static List<RecipeLine> of(LineReading read) {
        if (read.parts().isEmpty()) {
            RecipeLine typed = new RecipeLine(read.amount(), read.name());
            return List.of(typed.counts() ? typed.withAmount("") : typed);
        }
        return read.parts().stream().map(part -> of(part, read.amount())).toList();
    }

    private static RecipeLine of(LineReading.Part part, String typed) {
        RecipeLine asTyped = new RecipeLine(typed, part.ingredient().name());
        boolean same = asTyped.counts() && Math.abs(asTyped.grams() - part.massG()) < 1e-9;
        return same ? asTyped : asTyped.weighing(part.massG());
    }

    private static String amountOf(String text) {
        if (!TypedAmount.isAmount(text)) {
            throw Fault.in("amount", text);
        }
        return text;
    }

    /**
     * A finite number as a cook writes it: three decimals below 10, two below 100, else one,
     * without trailing zeros.
     */
    public static String number(double value) {
        return new BigDecimal(rounded(value))
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** A number rounded as {@link #number} writes it. */
    public static double rounded(double value) {
        double size = Math.abs(value);
        double step = size >= 100 ? 10 : size >= 10 ? 100 : 1000;
        return Math.round(value * step) / step;
    }

    /** A bound as typed. */
    static Typed<Double> bound(String what, String text) {
        return Typed.of(text, typed -> TypedQuantity.grams(what, typed));
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
        return new RecipeLine(Typed.of(typed, RecipeLine::amountOf), ingredient, min, max, fixed);
    }

    /** The same with another name, as typed. */
    public RecipeLine withName(String typed) {
        return new RecipeLine(amount, Typed.of(typed, Dextrose::find), min, max, fixed);
    }

    /** The same with an ingredient of the shelf named in the language shown. */
    public RecipeLine shown() {
        return ingredient
                .value()
                .filter(Shelf.all()::contains)
                .map(one -> withName(one.phrase().shown()))
                .orElse(this);
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
                    ? Optional.of(Fault.of("min-max", ingredient.value().orElseThrow().phrase()))
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
        LineReading read = reading().orElse(null);
        if (read != null && read.state() != LineReading.State.UNDERSTOOD) {
            throw new IllegalArgumentException(read.why().orElseThrow().shown());
        }
        return read == null ? 0 : read.massG();
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

    /** What its amount is understood as; empty while it is unfinished or wrong. */
    public Optional<LineReading> reading() {
        return amount.value()
                .flatMap(typed -> ingredient.value().map(one -> IngredientLine.amount(typed, one)));
    }

    /** What it weighs in the units shown; empty where that was typed. */
    public Optional<Phrase> weighs() {
        boolean typed = TypedAmount.isWeight(amount.text()) && Words.units().unit("g").equals("g");
        return counts() && !typed
                ? Optional.of(Fact.words("mass", rounded(grams())))
                : Optional.empty();
    }

    /** The same with another mass. */
    RecipeLine weighing(double massG) {
        return withAmount(number(massG) + " g");
    }

    /** The same, multiplied; an unreadable amount stays unchanged. */
    RecipeLine times(double factor) {
        return amount.value()
                .map(typed -> withAmount(TypedAmount.times(typed, factor, RecipeLine::number)))
                .orElse(this);
    }
}
