package coldwright.science.mix;

import coldwright.science.Require;
import coldwright.science.freezing.FreezingCurve;
import coldwright.science.freezing.Solution;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A mix of ingredients before it freezes. Immutable: every change gives a new mix.
 *
 * <pre>{@code
 * var mix = Mix.of(grams(500, WHOLE_MILK), grams(130, SUCROSE));
 * mix.with(grams(30, RUM_40)).alcoholPercent();
 * }</pre>
 */
public final class Mix {
    private final List<Amount> amounts;
    private final double massG;
    private final Composition composition;

    private Mix(Collection<Amount> parts) {
        Map<Ingredient, Double> byIngredient = new LinkedHashMap<>();
        for (Amount part : parts) {
            byIngredient.merge(part.ingredient(), part.massG(), Double::sum);
        }
        List<Amount> merged = new ArrayList<>();
        byIngredient.forEach((ingredient, grams) -> merged.add(new Amount(grams, ingredient)));
        amounts = Collections.unmodifiableList(merged);
        massG = Require.positive("massG of the mix", massOf(amounts), "g");
        composition = Composition.ofAll(amounts);
    }

    private static double massOf(List<Amount> amounts) {
        return amounts.stream().mapToDouble(Amount::massG).sum();
    }

    /**
     * A mix of amounts; repeated ingredients are added up.
     *
     * @param amounts at least one, together more than 0 g
     * @throws IllegalArgumentException if the mix has no mass
     */
    public static Mix of(Amount... amounts) {
        return new Mix(List.of(amounts));
    }

    /**
     * A mix of amounts; repeated ingredients are added up.
     *
     * @param amounts at least one, together more than 0 g
     * @throws IllegalArgumentException if the mix has no mass
     */
    public static Mix of(Collection<Amount> amounts) {
        return new Mix(amounts);
    }

    /**
     * The same mix with more ingredients.
     *
     * @param more the amounts to add
     */
    public Mix with(Amount... more) {
        List<Amount> all = new ArrayList<>(amounts);
        all.addAll(List.of(more));
        return new Mix(all);
    }

    /**
     * The same mix without one ingredient.
     *
     * @param ingredient an ingredient of this mix
     * @throws IllegalArgumentException if it is not in the mix, or the mix would be empty
     */
    public Mix without(Ingredient ingredient) {
        List<Amount> rest =
                amounts.stream().filter(a -> !a.ingredient().equals(ingredient)).toList();
        Require.that(
                rest.size() < amounts.size(),
                "%s isn't in this mix, so it can't be left out; the mix has %s",
                ingredient.name(),
                ingredientNames());
        return new Mix(rest);
    }

    /**
     * This mix and another combined.
     *
     * @param other another mix
     */
    public Mix plus(Mix other) {
        return with(other.amounts.toArray(Amount[]::new));
    }

    /**
     * The same mix, scaled to another mass.
     *
     * @param newMassG total mass, g, more than zero
     */
    public Mix scaledTo(double newMassG) {
        double factor = Require.positive("newMassG", newMassG, "g") / massG;
        return new Mix(
                amounts.stream().map(a -> new Amount(a.massG() * factor, a.ingredient())).toList());
    }

    /**
     * {@return the amounts, in the order in which they were added: the amounts, each ingredient
     * once}
     */
    public List<Amount> amounts() {
        return amounts;
    }

    /** {@return total mass, g} */
    public double massG() {
        return massG;
    }

    /** {@return mass of one ingredient in the mix, g, zero if it is not in the mix} */
    public double massG(Ingredient ingredient) {
        return amounts.stream()
                .filter(a -> a.ingredient().equals(ingredient))
                .mapToDouble(Amount::massG)
                .sum();
    }

    /** Composition of 100 g of the mix. */
    public Composition composition() {
        return composition;
    }

    /** {@return water, % by mass} */
    public double waterPercent() {
        return composition.percent(Component.WATER);
    }

    /** {@return fat of every origin, % by mass} */
    public double fatPercent() {
        return composition.percent(Component.Kind.FAT);
    }

    /** {@return milk fat, % by mass} */
    public double milkFatPercent() {
        return composition.percent(Component.MILK_FAT);
    }

    /** {@return milk solids not fat, those of whey included, % by mass} */
    public double milkSolidsNotFatPercent() {
        return composition.per100g(Tally.MILK_SOLIDS_NOT_FAT)
                + composition.per100g(Tally.WHEY_SOLIDS);
    }

    /**
     * {@return everything but water and alcohol, % by mass, 0 to 100: never negative through
     * rounding}
     */
    public double totalSolidsPercent() {
        return Math.max(0, 100 - waterPercent() - alcoholPercent());
    }

    /** {@return sugars of one and two units, lactose included, % by mass} */
    public double sugarsPercent() {
        return composition.percent(Component.Kind.SUGAR);
    }

    /** {@return protein of every origin, % by mass} */
    public double proteinPercent() {
        return composition.percent(Component.Kind.PROTEIN);
    }

    /** {@return ethanol, % by mass} */
    public double alcoholPercent() {
        return composition.percent(Component.ALCOHOL);
    }

    /** {@return added salt, NaCl, % by mass} */
    public double saltPercent() {
        return composition.percent(Component.SALT);
    }

    /** {@return sugars in the water of the mix, g per 100 g of water, infinite without water} */
    public double sugarPer100gWater() {
        return per100gWater(sugarsPercent());
    }

    /** {@return protein in the water of the mix, g per 100 g of water, infinite without water} */
    public double proteinPer100gWater() {
        return per100gWater(proteinPercent());
    }

    private double per100gWater(double percent) {
        return percent == 0 ? 0 : 100 * percent / waterPercent();
    }

    /** {@return everything dissolved in the water of the mix, milk salts included} */
    public Solution solution() {
        return DissolvedSolutes.solution(this);
    }

    /** {@return the curve of how much of the water is ice at each temperature} */
    public FreezingCurve freezingCurve() {
        return solution().freezingCurve();
    }

    /** {@return initial freezing point, °C, 0 or below; an error without water} */
    public double initialFreezingPointC() {
        return solution().freezingPointC();
    }

    /** {@return the freezing point by the sucrose-equivalent method, and why it differs} */
    public SucroseEquivalentMethod tradeMethod() {
        return SucroseEquivalentMethod.of(this);
    }

    /**
     * {@return anti-freezing power (PAC) on the trade's scale, sucrose = 100: grams of sucrose with
     * the same power in 1000 g of mix}
     *
     * <p>Definition: for 1000 g of mix, grams of each sugar, polyol, alcohol and salt times its
     * molar mass relative to sucrose: glucose and fructose 190, lactose 100, ethanol 743, salt 586.
     * Milk salts, acids and other ions are left out (common practice, no source).
     *
     * <p>It differs from {@link #initialFreezingPointC}, which is calculated from water activity,
     * because it counts each gram at its dilute value and ignores how little water the mix has.
     */
    public double pac() {
        return 10 * AntiFreezingPower.pacOf100g(composition);
    }

    /**
     * {@return sweetening power (POD) on the trade's scale, sucrose = 100: grams of sucrose that
     * would be as sweet in 1000 g of mix}
     *
     * <p>Definition: for 1000 g of mix, grams of each sugar times its relative sweetness, by the
     * middle of the published lists in {@link Sweetener}: fructose 171.5, glucose 77, lactose 17.5.
     * Tables of the trade differ by 10 to 30 % (common practice, no source).
     *
     * <p>Equal POD doesn't mean an equal freezing point, because molar mass decides on that one.
     */
    public double pod() {
        return 10 * Sweetener.podOf100g(composition);
    }

    /** {@return contributions to the depression, the strongest first, by ingredient and solute} */
    public List<Contribution> contributions() {
        return DissolvedSolutes.contributions(this);
    }

    /** {@return how near its lactose is to turning sandy} */
    public LactoseSaturation lactoseLimit() {
        return LactoseSaturation.of(this);
    }

    /** {@return density without air, near 20 °C, kg/L} */
    public double densityKgPerL() {
        return MixDensity.kgPerL(composition);
    }

    /** {@return volume without air, near 20 °C, L} */
    public double volumeL() {
        return massG / 1000 / densityKgPerL();
    }

    /** {@return the allergens that its ingredients usually contain; labels may name more} */
    public Set<Allergen> allergens() {
        Set<Allergen> all = EnumSet.noneOf(Allergen.class);
        amounts.stream()
                .filter(a -> a.massG() > 0)
                .forEach(a -> all.addAll(a.ingredient().allergens()));
        return Collections.unmodifiableSet(all);
    }

    private String ingredientNames() {
        return amounts.stream().map(a -> a.ingredient().name()).collect(Collectors.joining(", "));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Mix that && amounts.equals(that.amounts);
    }

    @Override
    public int hashCode() {
        return amounts.hashCode();
    }

    @Override
    public String toString() {
        return amounts.stream().map(Amount::toString).collect(Collectors.joining(" + "));
    }
}
