package coldwright.science.mix;

import coldwright.science.Require;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A nutrition label of a product, converted to an ingredient.
 *
 * <pre>{@code
 * var oatDrink = NutritionLabel.per100g()
 *     .fat(1.5).carbohydrate(6.6).ofWhichSugars(4.0).fibre(0.8).protein(1.0).salt(0.1)
 *     .sugarsAre(Component.MALTOSE)
 *     .ingredient("my oat drink");
 * }</pre>
 *
 * <p>Water is the rest of 100 g. Sugars count as sucrose unless {@link #sugarsAre} or {@link
 * #dairy} is called; other carbohydrate counts as undissolved. Minerals other than salt are not on
 * a label and count with the water (below 1 g for most foods).
 */
public final class NutritionLabel {
    private enum Line {
        FAT,
        CARBOHYDRATE,
        SUGARS,
        FIBRE,
        PROTEIN,
        SALT,
        ALCOHOL
    }

    private static final Require.Range GRAMS = new Require.Range(0, 100, "g per 100 g");

    private final Map<Line, Double> lines;
    private final Component sugars;
    private final boolean dairy;

    private NutritionLabel(Map<Line, Double> lines, Component sugars, boolean dairy) {
        this.lines = lines;
        this.sugars = sugars;
        this.dairy = dairy;
    }

    /** {@return an empty label to fill in} */
    public static NutritionLabel per100g() {
        return new NutritionLabel(new EnumMap<>(Line.class), Component.SUCROSE, false);
    }

    /**
     * Fat.
     *
     * @param g g per 100 g, 0 to 100
     */
    public NutritionLabel fat(double g) {
        return with(Line.FAT, "fat", g);
    }

    /**
     * Carbohydrate, sugars included and fibre left out, as in Europe.
     *
     * @param g g per 100 g, 0 to 100
     */
    public NutritionLabel carbohydrate(double g) {
        return with(Line.CARBOHYDRATE, "carbohydrate", g);
    }

    /**
     * Sugars within the carbohydrate.
     *
     * @param g g per 100 g, 0 to 100
     */
    public NutritionLabel ofWhichSugars(double g) {
        return with(Line.SUGARS, "sugars", g);
    }

    /**
     * Fibre, not part of the carbohydrate; subtract it from the carbohydrate of an American label
     * first.
     *
     * @param g g per 100 g, 0 to 100
     */
    public NutritionLabel fibre(double g) {
        return with(Line.FIBRE, "fibre", g);
    }

    /**
     * Protein.
     *
     * @param g g per 100 g, 0 to 100
     */
    public NutritionLabel protein(double g) {
        return with(Line.PROTEIN, "protein", g);
    }

    /**
     * Salt; 2.5 times the sodium of an American label.
     *
     * @param g g per 100 g, 0 to 100
     */
    public NutritionLabel salt(double g) {
        return with(Line.SALT, "salt", g);
    }

    /**
     * Alcohol by volume, valid for drinks with little sugar.
     *
     * @param percent % by volume
     */
    public NutritionLabel alcoholByVolume(double percent) {
        return with(Line.ALCOHOL, "alcohol", AlcoholByVolume.massPercent(percent));
    }

    /**
     * The kind of the sugars.
     *
     * @param kind a sugar
     */
    public NutritionLabel sugarsAre(Component kind) {
        Require.that(
                kind.kind() == Component.Kind.SUGAR,
                "%s isn't a sugar; use a component of the kind SUGAR, such as SUCROSE or LACTOSE",
                kind.words());
        return new NutritionLabel(lines, kind, dairy);
    }

    /** Plain milk, cream, yogurt or cheese: fat and protein are milk's, sugars lactose. */
    public NutritionLabel dairy() {
        return new NutritionLabel(lines, Component.LACTOSE, true);
    }

    /**
     * The ingredient of this label.
     *
     * @param name everyday name
     * @return the ingredient; its {@code inferred} lists the assumptions
     * @throws IllegalArgumentException if the label adds up to more than 100 g, or has more sugars
     *     than carbohydrate
     */
    public Ingredient ingredient(String name) {
        double carbohydrate = g(Line.CARBOHYDRATE);
        double sugar = g(Line.SUGARS);
        Require.that(
                sugar <= carbohydrate + Composition.ROUNDING_PERCENT,
                "the label of %s has %s g sugars in %s g carbohydrate. State the carbohydrate with its sugars.",
                name,
                sugar,
                carbohydrate);
        double starchy = Math.max(0, carbohydrate - sugar);
        double all = lines.values().stream().mapToDouble(Double::doubleValue).sum() - sugar;
        all += Math.max(0, sugar - carbohydrate);
        Require.that(
                all <= 100 + Composition.ROUNDING_PERCENT,
                "the label of %s adds up to %s g; it may be at most 100 g. Sugars are a part of the carbohydrate.",
                name,
                all);
        Composition composition =
                Composition.NOTHING
                        .with(Math.max(0, 100 - all), Component.WATER)
                        .with(g(Line.FAT), dairy ? Component.MILK_FAT : Component.OTHER_FAT)
                        .with(
                                g(Line.PROTEIN),
                                dairy ? Component.MILK_PROTEIN : Component.OTHER_PROTEIN)
                        .with(sugar, sugars)
                        .with(starchy, Component.OTHER_CARBOHYDRATE)
                        .with(g(Line.FIBRE), Component.FIBRE)
                        .with(g(Line.SALT), Component.SALT)
                        .with(g(Line.ALCOHOL), Component.ALCOHOL);
        if (dairy) {
            composition = composition.with(g(Line.PROTEIN) + sugar, Tally.MILK_SOLIDS_NOT_FAT);
        }
        Set<Allergen> allergens = dairy ? EnumSet.of(Allergen.MILK) : Set.of();
        return new Ingredient(
                name,
                List.of(),
                composition,
                OptionalDouble.empty(),
                allergens,
                "nutrition label",
                Assumption.words(assumed()));
    }

    private List<Phrase> assumed() {
        List<Phrase> notes = new ArrayList<>();
        notes.add(Assumption.of("water-of-100-g"));
        if (g(Line.SUGARS) > 0) {
            notes.add(Assumption.of("sugars", sugars.words()));
        }
        notes.add(Assumption.of("minerals"));
        if (!dairy) {
            notes.add(Assumption.of("allergens"));
        }
        return notes;
    }

    private NutritionLabel with(Line line, String words, double g) {
        Require.within(words + "G", g, GRAMS);
        Map<Line, Double> changed = new EnumMap<>(lines.isEmpty() ? Map.of(line, g) : lines);
        changed.put(line, g);
        return new NutritionLabel(changed, sugars, dairy);
    }

    private double g(Line line) {
        return lines.getOrDefault(line, 0.0);
    }
}
