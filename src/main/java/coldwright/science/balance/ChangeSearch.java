package coldwright.science.balance;

import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleFunction;

/**
 * Tries one kind of change after another and keeps the smallest that grant a wish.
 *
 * <p>Each amount is found by Brent's method (Hipparchus) on the far side of the edge, so that it
 * grants the wish and not only nearly. A change larger than the largest one kept is dropped after
 * one evaluation.
 */
final class ChangeSearch {
    /** How far inside the wish a fix aims, as a share of the wish's width. */
    private static final double INSIDE = 0.02;

    private static final double PRECISION_G = 1e-4;
    private static final int MOST_TRIES = 60;
    private static final int ORDER = 3;

    private final int count;
    private final BatchFix start;
    private final double edge;
    private final double startsOff;
    private final List<BatchFix> kept = new ArrayList<>();

    /**
     * A search that has found nothing yet.
     *
     * @param count how many fixes to keep
     * @param start the changes that every fix includes
     */
    ChangeSearch(int count, BatchFix start) {
        this.count = count;
        this.start = start;
        Wish wish = start.wish();
        double now = wish.trait().of(start.after());
        double inside = INSIDE * (wish.most() - wish.least());
        double aim = Double.isFinite(inside) ? inside : 0;
        edge = now > wish.most() ? wish.most() - aim : wish.least() + aim;
        startsOff = now - edge;
    }

    /** The fixes found, the smallest first. */
    List<BatchFix> found() {
        return List.copyOf(kept);
    }

    /**
     * Tries a kind of change.
     *
     * @param mostG the largest amount of it, g
     * @param changesOf the changes for an amount in grams
     */
    void tryTo(double mostG, DoubleFunction<List<AmountChange>> changesOf) {
        double limitG = mostG;
        if (kept.size() >= count) {
            double barG = kept.get(count - 1).movedG() - start.movedG();
            limitG = Math.min(mostG, barG / changesOf.apply(1).size());
        }
        if (!(limitG > PRECISION_G)) {
            return;
        }
        UnivariateFunction miss = x -> measured(applied(changesOf.apply(x))) - edge;
        double endsOff = miss.value(limitG);
        if (!(startsOff * endsOff < 0)) {
            return;
        }
        double straightG = limitG * startsOff / (startsOff - endsOff);
        double amountG =
                new BracketingNthOrderBrentSolver(1e-9, PRECISION_G, 1e-9, ORDER)
                        .solve(MOST_TRIES, miss, 0, limitG, straightG, AllowedSolution.RIGHT_SIDE);
        keep(changesOf.apply(amountG));
    }

    private void keep(List<AmountChange> more) {
        Mix after = applied(more);
        if (!start.wish().grantedBy(after) || !SuggestionLimits.allow(start.before(), after)) {
            return;
        }
        List<AmountChange> changes = new ArrayList<>(start.changes());
        changes.addAll(more);
        kept.add(new BatchFix(start.wish(), changes, start.before(), after));
        kept.sort(Comparator.comparingDouble(BatchFix::movedG));
        if (kept.size() > count) {
            kept.remove(count);
        }
    }

    /** Not a number where a change takes so much that the trait has no value, such as all water. */
    private double measured(Mix mix) {
        try {
            return start.wish().trait().of(mix);
        } catch (IllegalArgumentException e) {
            return Double.NaN;
        }
    }

    /** Drops ingredients that the change makes too small to weigh; those as small before stay. */
    private Mix applied(List<AmountChange> changes) {
        List<Amount> amounts = new ArrayList<>();
        Set<Ingredient> taken = new LinkedHashSet<>();
        for (Amount amount : start.after().amounts()) {
            double massG = amount.massG();
            for (AmountChange amountChange : changes) {
                if (amountChange.ingredient().equals(amount.ingredient())) {
                    massG += amountChange.massG();
                    taken.add(amountChange.ingredient());
                }
            }
            if (massG > PRECISION_G || massG >= amount.massG()) {
                amounts.add(Amount.grams(massG, amount.ingredient()));
            }
        }
        for (AmountChange amountChange : changes) {
            if (!taken.contains(amountChange.ingredient()) && amountChange.massG() > 0) {
                amounts.add(Amount.grams(amountChange.massG(), amountChange.ingredient()));
            }
        }
        return Mix.of(amounts);
    }
}
