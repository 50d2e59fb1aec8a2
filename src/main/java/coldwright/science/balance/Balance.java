package coldwright.science.balance;

import coldwright.science.Require;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds amounts that meet targets within bounds.
 *
 * <pre>{@code
 * var found = Balance.of(1000)
 *         .using(HEAVY_CREAM, WHOLE_MILK, SKIM_MILK_POWDER, SUCROSE)
 *         .aiming(14, Trait.FAT).aiming(10, Trait.MILK_SOLIDS_NOT_FAT).aiming(15, Trait.SUCROSE)
 *         .solve();
 * found.mix();
 * }</pre>
 *
 * <p>Bounded least squares: the sum of squared errors is as small as the bounds allow, and the
 * total is exact. Among equally good mixes it takes the one that spreads the total most evenly.
 * Targets that are shares of the mass are exact to the solver's precision, about 1e-6 of the total;
 * others are met by repeated linearisation to {@value #MET} of their unit.
 *
 * @param totalG total mass, g
 * @param choices the ingredients that may be used
 * @param targets the values to meet
 */
public record Balance(double totalG, List<Choice> choices, List<Target> targets) {
    /** A target counts as met when it is missed by no more than this, in its own unit. */
    public static final double MET = 1e-3;

    private static final int MOST_ROUNDS = 25;
    private static final double STILL = 1e-7;

    public Balance {
        Require.positive("totalG", totalG, "g");
        choices = List.copyOf(choices);
        targets = List.copyOf(targets);
    }

    /**
     * A balance without targets.
     *
     * @param totalG total mass, g
     * @return the balance to add to
     */
    public static Balance of(double totalG) {
        return new Balance(totalG, List.of(), List.of());
    }

    /** Allows ingredients in any amount. */
    public Balance using(Ingredient... ingredients) {
        Balance all = this;
        for (Ingredient ingredient : ingredients) {
            all = all.using(Choice.any(ingredient));
        }
        return all;
    }

    /**
     * Allows an ingredient within bounds.
     *
     * @param choice the ingredient and its bounds
     */
    public Balance using(Choice choice) {
        List<Choice> all = new ArrayList<>(choices);
        all.add(choice);
        return new Balance(totalG, all, targets);
    }

    /**
     * Adds a target.
     *
     * @param value target value, in the trait's unit
     */
    public Balance aiming(double value, Trait trait) {
        List<Target> all = new ArrayList<>(targets);
        all.add(new Target(trait, value));
        return new Balance(totalG, choices, all);
    }

    /**
     * Finds the amounts.
     *
     * @return the nearest mix and its shortfalls
     * @throws IllegalArgumentException if nothing may be used, or the bounds can't add up to the
     *     total
     */
    public Balanced solve() {
        requireRoom();
        double[][] shareRows = new double[targets.size()][];
        for (int k = 0; k < shareRows.length; k++) {
            Trait trait = targets.get(k).trait();
            shareRows[k] = trait.isByMass() ? shareRow(trait) : null;
        }
        double[] even = new double[choices.size()];
        Arrays.fill(even, 1.0 / even.length);
        double[] shares = nearTo(even, new double[0][], new double[0]);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] next = step(shareRows, shares);
            double moved = 0;
            for (int i = 0; i < next.length; i++) {
                moved = Math.max(moved, Math.abs(next[i] - shares[i]));
            }
            shares = next;
            if (moved < STILL) {
                break;
            }
        }
        return result(shares);
    }

    private double[] step(double[][] shareRows, double[] shares) {
        Mix here = mixOf(shares);
        double[][] rows = new double[targets.size()][];
        double[] wanted = new double[targets.size()];
        for (int k = 0; k < rows.length; k++) {
            Trait trait = targets.get(k).trait();
            double[] row =
                    shareRows[k] == null ? slopeRow(trait, here, shares) : shareRows[k].clone();
            double value = trait.of(here);
            double reached = 0;
            for (int i = 0; i < row.length; i++) {
                row[i] *= targets.get(k).weight();
                reached += row[i] * shares[i];
            }
            rows[k] = row;
            wanted[k] = reached + targets.get(k).weight() * (targets.get(k).value() - value);
        }
        return nearTo(shares, rows, wanted);
    }

    private double[] nearTo(double[] centre, double[][] rows, double[] wanted) {
        return new BoundedLeastSquares(
                        choices.stream().mapToDouble(c -> c.leastG() / totalG).toArray(),
                        choices.stream()
                                .mapToDouble(c -> Math.min(1, c.mostG() / totalG))
                                .toArray(),
                        centre,
                        rows,
                        wanted)
                .best(centre);
    }

    private double[] shareRow(Trait trait) {
        return choices.stream()
                .mapToDouble(c -> trait.of(Mix.of(Amount.grams(100, c.ingredient()))))
                .toArray();
    }

    private double[] slopeRow(Trait trait, Mix here, double[] shares) {
        double value = trait.of(here);
        double[] row = new double[choices.size()];
        for (int i = 0; i < row.length; i++) {
            double stepG = Math.max(1e-3, 1e-3 * shares[i]) * totalG;
            Mix more = here.with(Amount.grams(stepG, choices.get(i).ingredient()));
            row[i] = (trait.of(more) - value) / (stepG / totalG);
        }
        return row;
    }

    private Balanced result(double[] shares) {
        Mix mix = mixOf(shares);
        List<Shortfall> shortfalls = new ArrayList<>();
        for (Target target : targets) {
            double reached = target.trait().of(mix);
            if (!(Math.abs(reached - target.value()) <= MET)) {
                shortfalls.add(new Shortfall(target, reached, lacks(target, reached)));
            }
        }
        List<Ingredient> atLimit = new ArrayList<>();
        for (int i = 0; i < shares.length; i++) {
            Choice choice = choices.get(i);
            double massG = shares[i] * totalG;
            double close = 1e-6 * totalG;
            if (massG - choice.leastG() < close || choice.mostG() - massG < close) {
                atLimit.add(choice.ingredient());
            }
        }
        return new Balanced(mix, shortfalls, atLimit);
    }

    /**
     * Whether no ingredient that may be used brings more of what is short, or less of what is over.
     */
    private boolean lacks(Target target, double reached) {
        boolean isShort = reached < target.value();
        return target.trait().isByMass()
                && choices.stream()
                        .filter(choice -> choice.mostG() > choice.leastG())
                        .mapToDouble(
                                choice ->
                                        target.trait()
                                                .of(Mix.of(Amount.grams(100, choice.ingredient()))))
                        .noneMatch(
                                value -> isShort ? value > target.value() : value < target.value());
    }

    private Mix mixOf(double[] shares) {
        List<Amount> amounts = new ArrayList<>();
        for (int i = 0; i < shares.length; i++) {
            amounts.add(Amount.grams(shares[i] * totalG, choices.get(i).ingredient()));
        }
        return Mix.of(amounts);
    }

    private void requireRoom() {
        Require.that(!choices.isEmpty(), "the balance has no ingredients; allow at least one");
        double leastG = choices.stream().mapToDouble(Choice::leastG).sum();
        double mostG = choices.stream().mapToDouble(Choice::mostG).sum();
        double roundingG = 1e-9 * totalG;
        Require.that(
                leastG <= totalG + roundingG && mostG >= totalG - roundingG,
                "the ingredients may weigh %s to %s g together, but the total is %s g. Widen a bound or change the total.",
                leastG,
                mostG,
                totalG);
    }
}
