package coldwright.science.balance;

import coldwright.science.Require;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.style.DietRules;
import coldwright.science.style.Quantity;
import coldwright.science.style.Style;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The smallest changes of one ingredient that grant one wish, ranked by the grams moved.
 *
 * <p>They show what each ingredient does alone. {@code Planner} makes a whole plan: it looks at all
 * faults at once. Each amount is found at the near edge of the wish by Brent's method (Hipparchus).
 * Left out are changes of more than half the batch, and what no plan offers: a new allergen, an
 * animal product, alcohol, much salt.
 */
public final class SmallestChange {
    private static final double MOST_SHARE = 0.5;

    /** How far inside the wish a change aims, as a share of its width. */
    private static final double INSIDE = 0.02;

    private static final double PRECISION_G = 1e-4;

    private SmallestChange() {}

    /**
     * The few smallest changes.
     *
     * @param count how many at most
     * @param mix the batch as it is
     * @param wish the wish
     * @param atHand ingredients that may be added; those in the batch may always be changed
     * @return the changes; one without any if the batch meets the wish already; empty if no
     *     ingredient grants it
     */
    public static List<BatchFix> smallest(
            int count, Mix mix, Wish wish, Collection<Ingredient> atHand) {
        Require.positive("count", count, "changes");
        if (wish.grantedBy(mix)) {
            return List.of(new BatchFix(wish, List.of(), mix, mix));
        }
        Set<Ingredient> movable = new LinkedHashSet<>();
        mix.amounts().forEach(amount -> movable.add(amount.ingredient()));
        movable.addAll(atHand);
        List<BatchFix> found = new ArrayList<>();
        double mostG = MOST_SHARE * mix.massG();
        for (Ingredient one : movable) {
            if (DietRules.AS_IT_IS.mayAdd(mix, one)) {
                tryTo(mix, wish, one, mostG, found);
            }
            if (mix.amounts().size() > 1) {
                tryTo(mix, wish, one, -Math.min(mix.massG(one), mostG), found);
            }
        }
        return found.stream()
                .sorted(Comparator.comparingDouble(BatchFix::movedG))
                .limit(count)
                .toList();
    }

    private static void tryTo(
            Mix mix, Wish wish, Ingredient one, double mostG, List<BatchFix> found) {
        double now = wish.trait().of(mix);
        double inside = INSIDE * (wish.most() - wish.least());
        double aim = Double.isFinite(inside) ? inside : 0;
        double edge = now > wish.most() ? wish.most() - aim : wish.least() + aim;
        UnivariateFunction miss = g -> value(mix, wish, one, g) - edge;
        if (mostG == 0 || !((now - edge) * miss.value(mostG) < 0)) {
            return;
        }
        double g =
                new BracketingNthOrderBrentSolver(1e-9, PRECISION_G, 1e-9, 3)
                        .solve(
                                60,
                                miss,
                                Math.min(0, mostG),
                                Math.max(0, mostG),
                                mostG > 0 ? AllowedSolution.RIGHT_SIDE : AllowedSolution.LEFT_SIDE);
        Mix after = changed(mix, one, g);
        double most = Math.max(Style.MOST_SALT_PERCENT, Quantity.SALT.of(mix));
        if (wish.grantedBy(after) && Quantity.SALT.of(after) <= most) {
            found.add(new BatchFix(wish, List.of(new AmountChange(g, one)), mix, after));
        }
    }

    /** Not a number where the trait has no value, such as without water. */
    private static double value(Mix mix, Wish wish, Ingredient one, double g) {
        try {
            return wish.trait().of(changed(mix, one, g));
        } catch (IllegalArgumentException e) {
            return Double.NaN;
        }
    }

    private static Mix changed(Mix mix, Ingredient one, double g) {
        if (g >= 0) {
            return mix.with(Amount.grams(g, one));
        }
        double leftG = mix.massG(one) + g;
        Mix rest = mix.without(one);
        return leftG > PRECISION_G ? rest.with(Amount.grams(leftG, one)) : rest;
    }
}
