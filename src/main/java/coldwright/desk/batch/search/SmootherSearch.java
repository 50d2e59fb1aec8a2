package coldwright.desk.batch.search;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchFileException;
import coldwright.batch.CrystalsInStorage;
import coldwright.batch.Recipe;
import coldwright.batch.Recipe.Method;
import coldwright.batch.StorageConditions;
import coldwright.desk.batch.model.BatchDifferences;
import coldwright.desk.batch.model.BatchSentences;
import coldwright.desk.messages.Messages;
import coldwright.science.Band;
import coldwright.science.balance.AmountChange;
import coldwright.science.balance.SuggestionLimits;
import coldwright.science.crystal.Texture;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;
import coldwright.text.DisplayText;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Smooth after one night: more of an ingredient that binds water, or more stirring. */
final class SmootherSearch {
    /** Mean size below which crystals aren't felt, µm; the source is given in {@link Texture}. */
    static final double SMOOTH_UM = Texture.SMOOTH.upToUm();

    /** No more than this share of the batch is added. */
    private static final double MOST_SHARE = 0.15;

    /** Ingredients that bind water. */
    private static final List<Ingredient> TYING =
            List.of(
                    Shelf.SKIM_MILK_POWDER,
                    Shelf.GLUCOSE_SYRUP_POWDER,
                    Shelf.MALTODEXTRIN,
                    Shelf.SUCROSE);

    private static final int HALVINGS = 6;
    private static final int MOST_OFFERS = 2;

    private SmootherSearch() {}

    /** A way to smaller crystals, with the resulting size. */
    private record SmootherOption(double addedG, Recipe recipe, Band um) {}

    static GoalResult of(Recipe recipe, BatchAnalysis now, String wish) {
        if (now.crystals().isEmpty()) {
            return new GoalResult(wish, now.report().fact("verdict").sentence(), List.of());
        }
        Band stands = now.crystals().get().tasted().meanUm();
        if (stands.middle() <= SMOOTH_UM) {
            return new GoalResult(
                    wish,
                    Messages.of(
                            "batch.wish.smooth-already",
                            BatchSentences.size(stands),
                            BatchSentences.when(now.report())),
                    List.of());
        }
        List<ProposedChange> offers = offers(recipe, now);
        if (offers.isEmpty()) {
            String best =
                    ways(recipe, now).stream()
                            .map(SmootherOption::um)
                            .min(Comparator.comparingDouble(Band::middle))
                            .map(BatchSentences::size)
                            .orElse(BatchSentences.size(stands));
            return new GoalResult(
                    wish,
                    Messages.of(
                            "batch.wish.not-smooth",
                            BatchSentences.size(stands),
                            BatchSentences.when(now.report()),
                            best),
                    List.of());
        }
        return new GoalResult(
                wish,
                Messages.of(
                        "batch.wish.smooth-now",
                        BatchSentences.size(stands),
                        BatchSentences.when(now.report())),
                offers);
    }

    /** Changes that make it smooth when tasted; empty if it is smooth or no small change helps. */
    static List<ProposedChange> offers(Recipe recipe, BatchAnalysis now) {
        boolean rough =
                now.crystals()
                        .filter(one -> one.tasted().meanUm().middle() > SMOOTH_UM)
                        .isPresent();
        if (!rough) {
            return List.of();
        }
        return ways(recipe, now).stream()
                .filter(smootherOption -> smootherOption.um().middle() <= SMOOTH_UM)
                .sorted(Comparator.comparingDouble(SmootherOption::addedG))
                .limit(MOST_OFFERS)
                .map(smootherOption -> offer(recipe, smootherOption))
                .toList();
    }

    /** A proposed change with its resulting crystal size added. */
    static ProposedChange sized(ProposedChange proposedChange) {
        return tasted(proposedChange.recipe())
                .map(
                        um ->
                                new ProposedChange(
                                        Messages.of(
                                                "batch.sized",
                                                bare(proposedChange.words()),
                                                BatchSentences.size(um),
                                                BatchSentences.when(proposedChange.recipe())),
                                        proposedChange.besides(),
                                        proposedChange.recipe()))
                .orElse(proposedChange);
    }

    /** The same storage time without temperature swings, with the resulting crystal size. */
    static ProposedChange steady(Recipe was) {
        Recipe is = keptSteady(was);
        return sized(BatchGoal.offer(was, change(was, is), is));
    }

    private static Recipe keptSteady(Recipe was) {
        return was.by(was.setup().steady());
    }

    private static ProposedChange offer(Recipe was, SmootherOption smootherOption) {
        return BatchGoal.offer(
                was,
                Messages.of(
                        "batch.sized",
                        bare(change(was, smootherOption.recipe())),
                        BatchSentences.size(smootherOption.um()),
                        BatchSentences.when(was)),
                smootherOption.recipe());
    }

    private static String change(Recipe was, Recipe is) {
        return is.equals(keptSteady(was))
                ? Messages.of("batch.keep-steady")
                : DisplayText.sentence(String.join("; ", BatchDifferences.between(was, is)));
    }

    private static List<SmootherOption> ways(Recipe recipe, BatchAnalysis now) {
        List<SmootherOption> ways = new ArrayList<>();
        Mix mix = now.mix();
        for (Ingredient one : TYING) {
            if (SuggestionLimits.mayAdd(mix, one)) {
                least(recipe, one, MOST_SHARE * mix.massG()).ifPresent(ways::add);
            }
        }
        for (Method moved : moved(now.batch().method())) {
            Recipe other = recipe.by(recipe.setup().by(moved));
            tasted(other).ifPresent(um -> ways.add(new SmootherOption(0, other, um)));
        }
        if (now.batch().stored().filter(StorageConditions::disturbed).isPresent()) {
            Recipe steady = keptSteady(recipe);
            tasted(steady).ifPresent(um -> ways.add(new SmootherOption(0, steady, um)));
        }
        return ways;
    }

    private static List<Method> moved(Method method) {
        return switch (method) {
            case TUB -> List.of(Method.SHAKEN, Method.BAG);
            case SHAKEN, CHURN -> List.of(Method.BAG);
            case BAG -> List.of();
        };
    }

    /** The least of an ingredient that makes it smooth, or all of it if that isn't enough. */
    private static Optional<SmootherOption> least(Recipe recipe, Ingredient one, double mostG) {
        Optional<SmootherOption> most = way(recipe, one, mostG);
        if (most.filter(smootherOption -> smootherOption.um().middle() <= SMOOTH_UM).isEmpty()) {
            return most;
        }
        double rough = 0;
        SmootherOption smooth = most.get();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (rough + smooth.addedG()) / 2;
            Optional<SmootherOption> tried = way(recipe, one, middle);
            if (tried.filter(smootherOption -> smootherOption.um().middle() <= SMOOTH_UM)
                    .isPresent()) {
                smooth = tried.get();
            } else {
                rough = middle;
            }
        }
        return way(recipe, one, Math.ceil(smooth.addedG()));
    }

    private static Optional<SmootherOption> way(Recipe recipe, Ingredient one, double massG) {
        Recipe more = recipe.changed(List.of(new AmountChange(massG, one)));
        return tasted(more).map(um -> new SmootherOption(massG, more, um));
    }

    private static Optional<Band> tasted(Recipe recipe) {
        try {
            return CrystalsInStorage.of(recipe).map(crystals -> crystals.tasted().meanUm());
        } catch (BatchFileException e) {
            return Optional.empty();
        }
    }

    /** Removes the full stop, because an arrow follows. */
    private static String bare(String sentence) {
        return sentence.replaceAll("\\.$", "");
    }
}
