package coldwright.science.balance;

import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;

/**
 * The smallest changes to a batch that grant a wish: one ingredient more or less, or one in place
 * of another at the same weight, ranked by the grams moved.
 *
 * <p>Each amount is found by Brent's method (Hipparchus) at the near edge of the wish, so a mend
 * changes no more than it must. What grants the wish only with more than half the batch's weight is
 * left out.
 */
public final class SmallestChange {
    /** The most that one change may move, as a share of the batch's weight. */
    public static final double MOST_SHARE = 0.5;

    /** How far inside the wish a mend aims, as a share of the wish's width. */
    private static final double INSIDE = 0.02;

    private static final double PRECISION_G = 1e-4;
    private static final int MOST_TRIES = 60;

    private SmallestChange() {}

    /**
     * All mends by one ingredient or one exchange, the smallest first.
     *
     * @param mix the batch as it is
     * @param wish what is wished
     * @param atHand ingredients that may be added; those in the batch may always be changed
     * @return the mends; one without changes if the batch has it already; empty if nothing at hand
     *     grants the wish
     */
    public static List<Mend> ranked(Mix mix, Wish wish, Collection<Ingredient> atHand) {
        if (wish.grantedBy(mix)) {
            return List.of(new Mend(wish, List.of(), mix, mix));
        }
        List<Change> gone = new ArrayList<>();
        for (Amount amount : mix.amounts()) {
            if (wish.unwanted().test(amount.ingredient())) {
                gone.add(new Change(-amount.massG(), amount.ingredient()));
            }
        }
        if (gone.size() == mix.amounts().size()) {
            return List.of();
        }
        Mix rest = wish.cleared(mix);
        if (wish.grantedBy(rest)) {
            return List.of(new Mend(wish, gone, mix, rest));
        }
        Set<Ingredient> movable = new LinkedHashSet<>();
        rest.amounts().forEach(amount -> movable.add(amount.ingredient()));
        atHand.stream().filter(wish.unwanted().negate()).forEach(movable::add);

        List<Mend> mends = new ArrayList<>();
        double mostG = MOST_SHARE * mix.massG();
        for (Ingredient one : movable) {
            double hasG = rest.massG(one);
            tryTo(mends, new Start(mix, rest, wish, gone), mostG, x -> List.of(new Change(x, one)));
            if (hasG > 0 && rest.amounts().size() > 1) {
                tryTo(
                        mends,
                        new Start(mix, rest, wish, gone),
                        Math.min(hasG, mostG),
                        x -> List.of(new Change(-x, one)));
                for (Ingredient other : movable) {
                    if (!other.equals(one)) {
                        tryTo(
                                mends,
                                new Start(mix, rest, wish, gone),
                                Math.min(hasG, mostG),
                                x -> List.of(new Change(-x, one), new Change(x, other)));
                    }
                }
            }
        }
        mends.sort(Comparator.comparingDouble(Mend::movedG));
        return mends;
    }

    private record Start(Mix asItWas, Mix rest, Wish wish, List<Change> gone) {}

    private static void tryTo(
            List<Mend> mends, Start start, double mostG, DoubleFunction<List<Change>> changesOf) {
        Wish wish = start.wish();
        double now = wish.trait().of(start.rest());
        double inside = INSIDE * (wish.most() - wish.least());
        double edge =
                now > wish.most()
                        ? wish.most() - finiteOr(inside, 0)
                        : wish.least() + finiteOr(inside, 0);
        UnivariateFunction miss =
                x -> measured(wish.trait(), applied(start.rest(), changesOf.apply(x))) - edge;
        root(miss, mostG)
                .ifPresent(
                        x -> {
                            List<Change> changes = new ArrayList<>(start.gone());
                            changes.addAll(changesOf.apply(x));
                            Mix after = applied(start.rest(), changesOf.apply(x));
                            if (wish.grantedBy(after)) {
                                mends.add(new Mend(wish, changes, start.asItWas(), after));
                            }
                        });
    }

    /** Not a number where a change takes so much that the trait has no value, such as all water. */
    private static double measured(Trait trait, Mix mix) {
        try {
            return trait.of(mix);
        } catch (IllegalArgumentException e) {
            return Double.NaN;
        }
    }

    private static double finiteOr(double value, double otherwise) {
        return Double.isFinite(value) ? value : otherwise;
    }

    private static Optional<Double> root(UnivariateFunction miss, double mostG) {
        double first = miss.value(0);
        double last = miss.value(mostG);
        if (!(first * last < 0)) {
            return Optional.empty();
        }
        return Optional.of(
                new BrentSolver(1e-9, PRECISION_G, 1e-9).solve(MOST_TRIES, miss, 0, mostG));
    }

    private static Mix applied(Mix mix, List<Change> changes) {
        List<Amount> amounts = new ArrayList<>();
        Set<Ingredient> taken = new LinkedHashSet<>();
        for (Amount amount : mix.amounts()) {
            double massG = amount.massG();
            for (Change change : changes) {
                if (change.ingredient().equals(amount.ingredient())) {
                    massG += change.massG();
                    taken.add(change.ingredient());
                }
            }
            if (massG > PRECISION_G) {
                amounts.add(Amount.grams(massG, amount.ingredient()));
            }
        }
        for (Change change : changes) {
            if (!taken.contains(change.ingredient()) && change.massG() > 0) {
                amounts.add(Amount.grams(change.massG(), change.ingredient()));
            }
        }
        return Mix.of(amounts);
    }
}
