package coldwright.science.diagnosis;

import coldwright.science.Require;
import coldwright.science.balance.BatchFix;
import coldwright.science.balance.SmallestChange;
import coldwright.science.balance.Trait;
import coldwright.science.balance.Wish;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;

import java.util.List;
import java.util.function.Function;

/**
 * Something measured of a batch that may cause a symptom when it lies beyond the usual.
 *
 * @param what the cause in a few words, when it is one
 * @param trait what is measured
 * @param usual what is usual
 * @param side which side of the usual is at fault
 * @param share how much of such an excess shows in the symptom, 0 to 1 (judgement)
 * @param atHand what may be added to mend it
 * @param advice what to do where no amount mends it
 * @param contributions who brings it, in words
 */
record SuspectMeasure(
        String what,
        Trait trait,
        UsualRange usual,
        Side side,
        double share,
        List<Ingredient> atHand,
        String advice,
        Function<Mix, String> contributions) {
    private static final int FIXES_SHOWN = 3;

    enum Side {
        ABOVE,
        BELOW
    }

    double steps(Mix mix) {
        double value = trait.of(mix);
        double steps = side == Side.ABOVE ? usual.above(value) : usual.below(value);
        return Double.isFinite(steps) ? share * steps : 0;
    }

    Cause cause(Mix mix) {
        Wish wish = Wish.within("within the usual", trait, usual.least(), usual.most());
        List<BatchFix> mends =
                SmallestChange.smallest(FIXES_SHOWN, mix, wish, atHand).stream()
                        .filter(batchFix -> !batchFix.changes().isEmpty())
                        .toList();
        String mend = mends.isEmpty() ? advice : mends.get(0) + "; or " + advice;
        return new Cause(what, why(mix), steps(mix), 100, mend, mends);
    }

    private String why(Mix mix) {
        String who = contributions.apply(mix);
        String bound =
                side == Side.ABOVE
                        ? "at most " + Require.format(usual.most())
                        : "at least " + Require.format(usual.least());
        return "%s is %s %s, and %s is usual (%s)%s"
                .formatted(
                        trait.words(),
                        rounded(trait.of(mix)),
                        trait.unit(),
                        bound,
                        usual.source(),
                        who.isEmpty() ? "" : "; " + who);
    }

    private static String rounded(double value) {
        double unit = Math.abs(value) < 10 ? 100 : 10;
        return Require.format(Math.round(value * unit) / unit);
    }
}
