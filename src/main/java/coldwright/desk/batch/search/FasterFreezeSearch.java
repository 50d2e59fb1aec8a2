package coldwright.desk.batch.search;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchPreview;
import coldwright.batch.BatchReport;
import coldwright.batch.FreezingSetup;
import coldwright.batch.Recipe;
import coldwright.batch.RecipeLine;
import coldwright.batch.SetupField;
import coldwright.desk.batch.model.BatchDifferences;
import coldwright.desk.batch.search.BatchGoal.GoalResult;
import coldwright.desk.messages.Messages;
import coldwright.science.Require;
import coldwright.science.crystal.Method;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** Soft-serve within some minutes: more salt in the bath, a smaller batch, or another method. */
final class FasterFreezeSearch {
    /** Salt per gram of ice above which ice and salt get no colder (eutectic, 23 %). */
    private static final double MOST_SALT_PER_ICE = 0.3;

    private static final double LEAST_SHARE = 0.25;
    private static final int HALVINGS = 6;

    private FasterFreezeSearch() {}

    static GoalResult of(Recipe recipe, BatchAnalysis now, String wish, double minutes) {
        Require.within("minutes", minutes, new Require.Range(1, 10_000, "min"));
        double stands = now.plan().minutesToSoftServe();
        if (stands <= minutes) {
            return new GoalResult(
                    wish,
                    Messages.of("batch.wish.ready-already", BatchReport.time(stands)),
                    List.of());
        }
        List<ProposedChange> offers = new ArrayList<>();
        if (recipe.setup().inBath()) {
            double iceG =
                    recipe.setup().text(SetupField.ICE).isBlank()
                            ? FreezingSetup.ICE_PER_BATCH * now.mix().massG()
                            : now.batch().bath().map(bathSetup -> bathSetup.iceG()).orElse(0.0);
            double saltG =
                    now.batch()
                            .bath()
                            .map(bathSetup -> bathSetup.saltG())
                            .orElse(FreezingSetup.SALT_PER_ICE * iceG);
            least(
                            recipe,
                            minutes,
                            saltG,
                            MOST_SALT_PER_ICE * iceG,
                            salt -> salted(recipe, iceG, salt))
                    .ifPresent(offers::add);
        }
        double massG = now.mix().massG();
        least(recipe, minutes, massG, LEAST_SHARE * massG, recipe::weighing).ifPresent(offers::add);
        if (!recipe.setup().inBath()) {
            Recipe bag = recipe.by(recipe.setup().by(Method.BAG));
            if (minutesOf(bag) <= minutes) {
                offers.add(offer(recipe, bag));
            }
        }
        String said =
                offers.isEmpty()
                        ? Messages.of(
                                recipe.setup().inBath()
                                        ? "batch.wish.not-ready"
                                        : "batch.wish.not-ready-in-freezer",
                                BatchReport.time(stands))
                        : Messages.of("batch.wish.ready-now", BatchReport.time(stands));
        return new GoalResult(wish, said, offers);
    }

    private static Recipe salted(Recipe recipe, double iceG, double saltG) {
        return recipe.by(
                recipe.setup()
                        .with(SetupField.ICE, RecipeLine.number(Math.rint(iceG)))
                        .with(SetupField.SALT, RecipeLine.number(Math.rint(saltG))));
    }

    /** The smallest step from one amount to another that is fast enough, if the full step is. */
    private static Optional<ProposedChange> least(
            Recipe recipe, double minutes, double from, double to, DoubleFunction<Recipe> at) {
        if (from == to || minutesOf(at.apply(to)) > minutes) {
            return Optional.empty();
        }
        double late = from;
        double soon = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (late + soon) / 2;
            if (minutesOf(at.apply(middle)) <= minutes) {
                soon = middle;
            } else {
                late = middle;
            }
        }
        return Optional.of(offer(recipe, at.apply(soon)));
    }

    private static ProposedChange offer(Recipe was, Recipe is) {
        String words =
                Messages.of(
                        "batch.wish.ready-by",
                        String.join("; ", BatchDifferences.between(was, is)),
                        BatchReport.time(minutesOf(is)));
        return new ProposedChange(
                words,
                BatchDifferences.between(
                        BatchPreview.of(was).report(), BatchPreview.of(is).report()),
                is);
    }

    private static double minutesOf(Recipe recipe) {
        return BatchAnalysis.minutesToSoftServe(recipe);
    }
}
