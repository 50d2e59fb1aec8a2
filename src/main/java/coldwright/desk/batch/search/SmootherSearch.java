package coldwright.desk.batch.search;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchFileException;
import coldwright.batch.CrystalsInStorage;
import coldwright.batch.Recipe;
import coldwright.batch.Recipe.Method;
import coldwright.batch.StorageConditions;
import coldwright.desk.batch.model.BatchDifferences;
import coldwright.desk.batch.model.BatchSentences;
import coldwright.desk.batch.search.BatchGoal.GoalResult;
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
    private record Option(double addedG, Recipe recipe, Band um) {
        boolean smooth() {
            return um.middle() <= SMOOTH_UM;
        }
    }

    static GoalResult of(Recipe recipe, BatchAnalysis now, String wish) {
        if (now.crystals().isEmpty()) {
            return new GoalResult(wish, now.report().fact("verdict").sentence(), List.of());
        }
        Band um = now.crystals().get().tasted().meanUm();
        String size = BatchSentences.size(um);
        String when = BatchSentences.when(now.report());
        if (um.middle() <= SMOOTH_UM) {
            String words = Messages.of("batch.wish.smooth-already", size, when);
            return new GoalResult(wish, words, List.of());
        }
        List<Option> ways = ways(recipe, now);
        List<ProposedChange> offers = offers(recipe, ways);
        if (!offers.isEmpty()) {
            return new GoalResult(wish, Messages.of("batch.wish.smooth-now", size, when), offers);
        }
        String best =
                ways.stream()
                        .map(Option::um)
                        .min(Comparator.comparingDouble(Band::middle))
                        .map(BatchSentences::size)
                        .orElse(size);
        return new GoalResult(
                wish, Messages.of("batch.wish.not-smooth", size, when, best), List.of());
    }

    /** Changes that make it smooth when tasted; empty if it is smooth or no small change helps. */
    static List<ProposedChange> offers(Recipe recipe, BatchAnalysis now) {
        boolean rough =
                now.crystals()
                        .filter(one -> one.tasted().meanUm().middle() > SMOOTH_UM)
                        .isPresent();
        return rough ? offers(recipe, ways(recipe, now)) : List.of();
    }

    private static List<ProposedChange> offers(Recipe recipe, List<Option> ways) {
        return ways.stream()
                .filter(Option::smooth)
                .sorted(Comparator.comparingDouble(Option::addedG))
                .limit(MOST_OFFERS)
                .map(
                        way -> {
                            String words = sized(change(recipe, way.recipe), way.um, recipe);
                            return BatchGoal.offer(recipe, words, way.recipe);
                        })
                .toList();
    }

    /** A proposed change with its resulting crystal size added. */
    static ProposedChange sized(ProposedChange change) {
        return tasted(change.recipe())
                .map(um -> sized(change.words(), um, change.recipe()))
                .map(words -> new ProposedChange(words, change.besides(), change.recipe()))
                .orElse(change);
    }

    /** A change and the crystals that it gives; the arrow replaces its full stop. */
    private static String sized(String change, Band um, Recipe tasted) {
        return Messages.of(
                "batch.sized",
                change.replaceAll("\\.$", ""),
                BatchSentences.size(um),
                BatchSentences.when(tasted));
    }

    /** The same storage time without temperature swings, with the resulting crystal size. */
    static ProposedChange steady(Recipe was) {
        Recipe is = keptSteady(was);
        return sized(BatchGoal.offer(was, change(was, is), is));
    }

    private static Recipe keptSteady(Recipe was) {
        return was.by(was.setup().steady());
    }

    private static String change(Recipe was, Recipe is) {
        return is.equals(keptSteady(was))
                ? Messages.of("batch.keep-steady")
                : DisplayText.sentence(String.join("; ", BatchDifferences.between(was, is)));
    }

    private static List<Option> ways(Recipe recipe, BatchAnalysis now) {
        List<Option> ways = new ArrayList<>();
        Mix mix = now.mix();
        for (Ingredient one : TYING) {
            if (SuggestionLimits.mayAdd(mix, one)) {
                least(recipe, one, MOST_SHARE * mix.massG()).ifPresent(ways::add);
            }
        }
        for (Method moved : moved(now.batch().method())) {
            Recipe other = recipe.by(recipe.setup().by(moved));
            tasted(other).ifPresent(um -> ways.add(new Option(0, other, um)));
        }
        if (now.batch().stored().filter(StorageConditions::disturbed).isPresent()) {
            Recipe steady = keptSteady(recipe);
            tasted(steady).ifPresent(um -> ways.add(new Option(0, steady, um)));
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
    private static Optional<Option> least(Recipe recipe, Ingredient one, double mostG) {
        Optional<Option> most = way(recipe, one, mostG);
        if (most.filter(Option::smooth).isEmpty()) {
            return most;
        }
        double rough = 0;
        double smooth = mostG;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (rough + smooth) / 2;
            if (way(recipe, one, middle).filter(Option::smooth).isPresent()) {
                smooth = middle;
            } else {
                rough = middle;
            }
        }
        return way(recipe, one, Math.ceil(smooth));
    }

    private static Optional<Option> way(Recipe recipe, Ingredient one, double massG) {
        Recipe more = recipe.changed(List.of(new AmountChange(massG, one)));
        return tasted(more).map(um -> new Option(massG, more, um));
    }

    private static Optional<Band> tasted(Recipe recipe) {
        try {
            return CrystalsInStorage.of(recipe).map(crystals -> crystals.tasted().meanUm());
        } catch (BatchFileException e) {
            return Optional.empty();
        }
    }
}
