package coldwright.batch;

import coldwright.science.balance.Balance;
import coldwright.science.balance.Balanced;
import coldwright.science.balance.Choice;
import coldwright.science.balance.Target;
import coldwright.science.balance.Trait;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.style.Style;
import coldwright.science.style.StyleQuantity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the amounts that meet the targets of a recipe file. */
public final class BatchBalance {
    /** The precision of a balance, as a share of the total. */
    private static final double SOLVED = 1e-6;

    /** Rounds after which the density of a mix of given volume moves no more. */
    private static final int DENSITY_ROUNDS = 3;

    private BatchBalance() {}

    /**
     * Finds the amounts.
     *
     * <p>The total is the file's; without one, the sum of its grams; without these, 1000 g. A row
     * marked {@code fixed} keeps its mass; other {@code grams} are only a starting point. Salt is
     * used up to {@link Style#MOST_SALT_PERCENT}, or as much as a target requires.
     *
     * @param file a recipe with targets
     * @return the amounts nearest to its targets
     * @throws IllegalArgumentException if it has no target, or its bounds can't be met
     */
    public static Balanced of(RecipeFile file) {
        return file.ask(RecipeFile.Prevents.EVERYTHING, BatchBalance::of);
    }

    private static Balanced of(Recipe batch) {
        if (batch.targets().isEmpty()) {
            throw Fault.in("no-target");
        }
        double statedG = batch.massG();
        RecipeTotal total =
                batch.total().value().orElse(new RecipeTotal(statedG > 0 ? statedG : 1000, false));
        List<Choice> choices =
                batch.lines().stream()
                        .filter(line -> line.fault().isEmpty())
                        .flatMap(
                                line ->
                                        line.ingredient().value().stream()
                                                .map(
                                                        one ->
                                                                new Choice(
                                                                        one,
                                                                        line.leastG(),
                                                                        line.mostG())))
                        .toList();
        double mostPercent = askedPercent(batch);
        double totalG = total.inLitres() ? 1000 * total.amount() : total.amount();
        Balanced found = within(mostPercent, new Balance(totalG, choices, batch.targets()));
        for (int i = 0; i < DENSITY_ROUNDS && total.inLitres(); i++) {
            totalG = total.massG(found.mix());
            found = within(mostPercent, new Balance(totalG, choices, batch.targets()));
        }
        return found;
    }

    /** Highest salt content allowed, % by mass: the limit of taste, or a target for salt. */
    private static double askedPercent(Recipe batch) {
        return batch.targets().stream()
                .filter(target -> target.trait() == Trait.SALT)
                .mapToDouble(Target::value)
                .reduce(Style.MOST_SALT_PERCENT, Math::max);
    }

    /** Solves again with less of the saltiest ingredient until the mix is not too salty. */
    private static Balanced within(double mostPercent, Balance start) {
        Balance balance = start;
        Balanced found = balance.solve();
        double overG = saltsG(found.mix()) - mostPercent / 100 * balance.totalG();
        while (overG > SOLVED * balance.totalG()) {
            Optional<Choice> salty = saltiest(found.mix(), balance, mostPercent / 100);
            if (salty.isEmpty()) {
                return found;
            }
            Choice was = salty.get();
            double usedG = found.mix().massG(was.ingredient());
            double lessG = overG / shareOfSalts(was.ingredient());
            Choice is =
                    new Choice(
                            was.ingredient(), was.leastG(), Math.max(was.leastG(), usedG - lessG));
            List<Choice> choices = new ArrayList<>(balance.choices());
            choices.set(choices.indexOf(was), is);
            Balance less = new Balance(balance.totalG(), choices, balance.targets());
            if (less.choices().stream().mapToDouble(Choice::mostG).sum() < balance.totalG()) {
                return found;
            }
            balance = less;
            found = balance.solve();
            overG = saltsG(found.mix()) - mostPercent / 100 * balance.totalG();
        }
        return found;
    }

    /** The saltiest ingredient that may be reduced; empty if the file's bounds fix them all. */
    private static Optional<Choice> saltiest(Mix mix, Balance balance, double most) {
        return balance.choices().stream()
                .filter(one -> shareOfSalts(one.ingredient()) > most)
                .filter(
                        one ->
                                mix.massG(one.ingredient())
                                        > one.leastG() + SOLVED * balance.totalG())
                .max(Comparator.comparingDouble(one -> shareOfSalts(one.ingredient())));
    }

    private static double shareOfSalts(Ingredient one) {
        return StyleQuantity.SALT.of(Mix.of(Amount.grams(100, one))) / 100;
    }

    private static double saltsG(Mix mix) {
        return StyleQuantity.SALT.of(mix) / 100 * mix.massG();
    }
}
