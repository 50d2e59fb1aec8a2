package coldwright.science.diagnosis;

import coldwright.science.balance.BatchFix;
import coldwright.science.balance.SmallestChange;
import coldwright.science.balance.Trait;
import coldwright.science.balance.Wish;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.words.Phrase;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A measure of a batch that may cause a symptom when it is beyond the usual range.
 *
 * @param kind the kind of cause
 * @param trait the trait measured
 * @param usual the usual range
 * @param side which side of the usual range is a fault
 * @param share how much of such an excess shows in the symptom, 0 to 1 (judgement)
 * @param atHand ingredients that may be added to fix it
 * @param advice key of the advice where no amount fixes it
 * @param contributions the ingredients that bring it
 */
record SuspectMeasure(
        CauseKind kind,
        Trait trait,
        UsualRange usual,
        Side side,
        double share,
        List<Ingredient> atHand,
        Phrase advice,
        Function<Mix, Optional<Phrase>> contributions) {
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
        Wish wish = Wish.within("usual", trait, usual.least(), usual.most());
        List<BatchFix> fixes =
                SmallestChange.smallest(FIXES_SHOWN, mix, wish, atHand).stream()
                        .filter(batchFix -> !batchFix.changes().isEmpty())
                        .toList();
        Phrase remedy = fixes.isEmpty() ? advice : phrase("fix-or", fixes.get(0).phrase(), advice);
        return new Cause(kind, reason(mix), steps(mix), 100, remedy, fixes);
    }

    private Phrase reason(Mix mix) {
        boolean above = side == Side.ABOVE;
        Phrase measured =
                phrase(
                        above ? "at-most" : "at-least",
                        trait.name(),
                        rounded(trait.of(mix)),
                        trait.unitName(),
                        above ? usual.most() : usual.least(),
                        usual.source());
        return contributions
                .apply(mix)
                .map(brought -> phrase("with-who", measured, brought))
                .orElse(measured);
    }

    private static Phrase phrase(String key, Object... values) {
        return Phrase.of(ExpectedFindings.AREA, key, values);
    }

    private static double rounded(double value) {
        double unit = Math.abs(value) < 10 ? 100 : 10;
        return Math.round(value * unit) / unit;
    }
}
