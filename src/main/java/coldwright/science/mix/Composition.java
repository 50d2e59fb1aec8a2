package coldwright.science.mix;

import coldwright.science.Require;

import java.util.Arrays;
import java.util.Collection;

/**
 * The composition of 100 g of something, by {@link Component}, with its {@link Tally} values.
 *
 * <p>Immutable: {@code Composition.NOTHING.with(40, WATER).with(60, SUCROSE)}.
 */
public final class Composition {
    /** The empty composition, to add to. */
    public static final Composition NOTHING =
            new Composition(
                    new double[Component.values().length], new double[Tally.values().length]);

    /** The sum may exceed 100 % by this much because of rounding in food tables. */
    public static final double ROUNDING_PERCENT = 0.5;

    /**
     * Molecules in the chains of three and more units of a DE 42 syrup, mmol/g: DE 42 means 2.331
     * mmol of reducing ends per gram of solids; 19 % glucose and 14 % maltose take 1.464 of them
     * and leave 0.868 for the other 67 %.
     */
    static final double CHAINS_MMOL_PER_G =
            (42 / 0.180156 / 100 - 190 / 180.156 - 140 / 342.296) / 0.67;

    private static final Require.Range PERCENT = new Require.Range(0, 100, "%");

    private final double[] percents;
    private final double[] tallies;

    private Composition(double[] percents, double[] tallies) {
        this.percents = percents;
        this.tallies = tallies;
    }

    /**
     * The same composition with the share of one component set.
     *
     * <p>Setting {@link Component#HIGHER_SACCHARIDES} also counts their molecules as in a DE 42
     * glucose syrup; if yours differ, set {@link Tally#HIGHER_SACCHARIDES_MMOL} afterwards.
     *
     * @param percent share, % by mass, 0 to 100
     * @throws IllegalArgumentException if the share is out of range or the sum exceeds 100 %
     */
    public Composition with(double percent, Component component) {
        Require.within(component.words().replace(' ', '_') + "Percent", percent, PERCENT);
        double[] changed = percents.clone();
        changed[component.ordinal()] = percent;
        double sum = Arrays.stream(changed).sum();
        Require.that(
                sum <= 100 + ROUNDING_PERCENT,
                "the composition adds up to %s %% with %s %% %s; it may be at most 100 %%",
                sum,
                percent,
                component.words());
        Composition with = new Composition(changed, tallies);
        return component == Component.HIGHER_SACCHARIDES
                ? with.with(percent * CHAINS_MMOL_PER_G, Tally.HIGHER_SACCHARIDES_MMOL)
                : with;
    }

    /**
     * The same composition with one tally set.
     *
     * @param per100g the count per 100 g, in the tally's unit, zero or more
     * @throws IllegalArgumentException if the count is negative or not a number
     */
    public Composition with(double per100g, Tally tally) {
        Require.notNegative(tally.name(), per100g, "per 100 g");
        double[] changed = tallies.clone();
        changed[tally.ordinal()] = per100g;
        return new Composition(percents, changed);
    }

    /**
     * Composition of several amounts together.
     *
     * @param amounts at least one, together more than 0 g
     */
    static Composition ofAll(Collection<Amount> amounts) {
        double[] percents = new double[Component.values().length];
        double[] tallies = new double[Tally.values().length];
        double massG = amounts.stream().mapToDouble(Amount::massG).sum();
        for (Amount amount : amounts) {
            double share = amount.massG() / massG;
            Composition part = amount.ingredient().composition();
            for (int i = 0; i < percents.length; i++) {
                percents[i] += share * part.percents[i];
            }
            for (int i = 0; i < tallies.length; i++) {
                tallies[i] += share * part.tallies[i];
            }
        }
        return new Composition(percents, tallies);
    }

    /** {@return the share of one component, % by mass} */
    public double percent(Component component) {
        return percents[component.ordinal()];
    }

    /**
     * {@return the share of a family of components, % by mass}
     *
     * @param kind the family
     */
    public double percent(Component.Kind kind) {
        double sum = 0;
        for (Component component : Component.values()) {
            if (component.kind() == kind) {
                sum += percents[component.ordinal()];
            }
        }
        return sum;
    }

    /**
     * The value of a tally.
     *
     * @return the count per 100 g, in the tally's unit
     */
    public double per100g(Tally tally) {
        return tallies[tally.ordinal()];
    }

    /**
     * {@return the sum of all components: 100 except for rounding in the sources, or less where a
     * part is unknown, % by mass}
     */
    public double sumPercent() {
        return Arrays.stream(percents).sum();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Composition that
                && Arrays.equals(percents, that.percents)
                && Arrays.equals(tallies, that.tallies);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(percents) + Arrays.hashCode(tallies);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (Component component : Component.values()) {
            double percent = percent(component);
            if (percent > 0) {
                text.append(text.isEmpty() ? "" : ", ")
                        .append(component.words())
                        .append(' ')
                        .append(Require.format(Math.round(percent * 100) / 100.0))
                        .append(" %");
            }
        }
        return text.toString();
    }
}
