package coldwright.science.balance;

import coldwright.science.Require;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The smallest changes to a batch that grant a wish: one ingredient more or less, or one in place
 * of another at the same weight, ranked by the grams moved.
 *
 * <p>Each amount is found at the near edge of the wish, so a fix changes no more than it must.
 * Changes of more than half the batch's weight are left out, and so are those that {@link
 * SuggestionLimits} refuses: a new allergen, alcohol, much salt.
 */
public final class SmallestChange {
    /** The most that one change may move, as a share of the batch's weight. */
    public static final double MOST_SHARE = 0.5;

    private SmallestChange() {}

    /**
     * All fixes by one ingredient or one exchange, the smallest first.
     *
     * @param mix the batch as it is
     * @param atHand ingredients that may be added; those in the batch may always be changed
     * @return the fixes; one without changes if the batch meets the wish already; empty if no
     *     ingredient grants it
     */
    public static List<BatchFix> ranked(Mix mix, Wish wish, Collection<Ingredient> atHand) {
        return smallest(Integer.MAX_VALUE, mix, wish, atHand);
    }

    /**
     * The few smallest fixes, found faster than all of them.
     *
     * @param count how many at most
     * @param mix the batch as it is
     * @param atHand ingredients that may be added; those in the batch may always be changed
     * @return as {@link #ranked}, at most {@code count}
     */
    public static List<BatchFix> smallest(
            int count, Mix mix, Wish wish, Collection<Ingredient> atHand) {
        Require.positive("count", count, "fixes");
        if (wish.grantedBy(mix)) {
            return List.of(new BatchFix(wish, List.of(), mix, mix));
        }
        List<AmountChange> gone = new ArrayList<>();
        for (Amount amount : mix.amounts()) {
            if (wish.unwanted().test(amount.ingredient())) {
                gone.add(new AmountChange(-amount.massG(), amount.ingredient()));
            }
        }
        if (gone.size() == mix.amounts().size()) {
            return List.of();
        }
        Mix rest = wish.cleared(mix);
        if (wish.grantedBy(rest)) {
            return List.of(new BatchFix(wish, gone, mix, rest));
        }
        Set<Ingredient> movable = new LinkedHashSet<>();
        rest.amounts().forEach(amount -> movable.add(amount.ingredient()));
        atHand.stream().filter(wish.unwanted().negate()).forEach(movable::add);
        movable.removeIf(one -> !SuggestionLimits.mayAdd(mix, one));

        ChangeSearch search = new ChangeSearch(count, new BatchFix(wish, gone, mix, rest));
        double mostG = MOST_SHARE * mix.massG();
        for (Ingredient one : movable) {
            search.tryTo(mostG, x -> List.of(new AmountChange(x, one)));
        }
        if (rest.amounts().size() > 1) {
            for (Amount amount : rest.amounts()) {
                Ingredient one = amount.ingredient();
                double allG = Math.min(amount.massG(), mostG);
                search.tryTo(allG, x -> List.of(new AmountChange(-x, one)));
                for (Ingredient other : movable) {
                    if (!other.equals(one)) {
                        search.tryTo(
                                allG,
                                x ->
                                        List.of(
                                                new AmountChange(-x, one),
                                                new AmountChange(x, other)));
                    }
                }
            }
        }
        return search.found();
    }
}
