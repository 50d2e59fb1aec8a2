package coldwright.desk.batch.search;

import coldwright.batch.BatchPreview;
import coldwright.batch.Recipe;
import coldwright.desk.batch.search.BatchGoal.GoalResult;
import coldwright.desk.messages.Messages;
import coldwright.science.balance.AmountChange;
import coldwright.science.balance.Balance;
import coldwright.science.balance.Balanced;
import coldwright.science.balance.Choice;
import coldwright.science.balance.SuggestionLimits;
import coldwright.science.balance.Trait;
import coldwright.science.diagnosis.Situation;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;
import coldwright.text.DisplayText;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Changes the sweetness at the same ice: swaps sugars, and all else stays. */
final class SweetnessSearch {
    private static final double MOSTLY_SUGAR_PERCENT = 50;
    private static final double WORTH_MOVING_G = 0.5;

    private SweetnessSearch() {}

    /**
     * Less sweet.
     *
     * @param share the share of its sweetness that is left
     */
    static GoalResult less(Recipe recipe, BatchPreview batchPreview, String wish, double share) {
        Mix mix = batchPreview.mix();
        Set<Ingredient> moved = new LinkedHashSet<>();
        Balance balance = Balance.of(mix.massG());
        for (Amount amount : mix.amounts()) {
            Ingredient one = amount.ingredient();
            if (sugary(one) || one.equals(Shelf.WATER)) {
                moved.add(one);
                double mostG = freely(mix, one) ? mix.massG() : amount.massG();
                balance = balance.using(new Choice(one, 0, mostG));
            } else {
                balance = balance.using(Choice.fixed(amount.massG(), one));
            }
        }
        for (Ingredient one :
                List.of(Shelf.GLUCOSE, Shelf.GLUCOSE_SYRUP_POWDER, Shelf.MALTODEXTRIN)) {
            if (moved.add(one)) {
                balance = balance.using(new Choice(one, 0, mix.massG()));
            }
        }
        Balanced found =
                balance.aiming(share * Trait.SWEETNESS.of(mix), Trait.SWEETNESS)
                        .aiming(
                                batchPreview.curve().icePercentAt(Situation.SERVING_C),
                                Trait.iceAt(Situation.SERVING_C))
                        .solve();
        if (!found.met()) {
            return new GoalResult(
                    wish,
                    Messages.of(
                            "batch.wish.not-met",
                            found.shortfalls().stream()
                                    .map(one -> one.phrase().shown())
                                    .collect(Collectors.joining("; "))),
                    List.of());
        }
        List<AmountChange> changes = new ArrayList<>();
        for (Ingredient one : moved) {
            double byG = found.mix().massG(one) - mix.massG(one);
            if (Math.abs(byG) >= WORTH_MOVING_G) {
                changes.add(new AmountChange(byG, one));
            }
        }
        String words =
                changes.stream()
                        .map(change -> change.phrase().shown())
                        .collect(Collectors.joining(", "));
        return new GoalResult(
                wish,
                "",
                List.of(
                        BatchGoal.offer(
                                recipe, DisplayText.sentence(words), recipe.changed(changes))));
    }

    /** Whether more may be added; salty ingredients, such as a caramel, may only shrink. */
    private static boolean freely(Mix mix, Ingredient one) {
        return SuggestionLimits.mayAdd(mix, one)
                && SuggestionLimits.saltsPercent(Mix.of(Amount.grams(100, one))) == 0;
    }

    private static boolean sugary(Ingredient one) {
        double sugars = one.composition().percent(Component.Kind.SUGAR);
        return sugars > MOSTLY_SUGAR_PERCENT;
    }
}
