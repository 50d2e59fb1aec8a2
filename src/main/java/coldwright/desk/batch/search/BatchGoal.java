package coldwright.desk.batch.search;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchFileException;
import coldwright.batch.BatchPreview;
import coldwright.batch.Recipe;
import coldwright.desk.batch.model.BatchDifferences;
import coldwright.desk.messages.Messages;
import coldwright.science.balance.BatchFix;
import coldwright.science.balance.SmallestChange;
import coldwright.science.balance.SuggestionLimits;
import coldwright.science.balance.Trait;
import coldwright.science.balance.Wish;
import coldwright.science.diagnosis.Situation;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;
import coldwright.text.DisplayText;

import java.util.List;
import java.util.Locale;

/** A goal for a batch, and the search for the smallest change that reaches it. */
public enum BatchGoal {
    /** Scoopable straight from the freezer. */
    SCOOPABLE,
    /** Soft-serve within some minutes. */
    READY,
    /** Crystals too small to be felt after one night. */
    SMOOTH,
    /** Less sweet, with the same ice. */
    LESS_SWEET,
    /** No egg, as firm as before. */
    NO_EGG,
    /** No alcohol, as firm as before. */
    NO_ALCOHOL,
    /** Less fat. */
    LESS_FAT;

    /**
     * The result of a search.
     *
     * @param goal the goal, in plain words
     * @param text that it is reached already, or why it can't be; may be empty
     * @param offers changes that reach it, the smallest first
     */
    public record GoalResult(String goal, String text, List<ProposedChange> offers) {
        public GoalResult {
            offers = List.copyOf(offers);
        }
    }

    private static final int OFFERS = 3;
    private static final double LESS = 0.85;

    /** Common kitchen ingredients; the search leaves out those that a batch must not contain. */
    private static final List<Ingredient> AT_HAND =
            List.of(
                    Shelf.WATER,
                    Shelf.SUCROSE,
                    Shelf.GLUCOSE,
                    Shelf.GLUCOSE_SYRUP_POWDER,
                    Shelf.MALTODEXTRIN,
                    Shelf.WHOLE_MILK,
                    Shelf.SKIM_MILK_POWDER,
                    Shelf.HEAVY_CREAM);

    /**
     * Whether the goal makes sense for a batch.
     *
     * @return false for no egg in a batch without egg, and so on
     */
    public boolean fits(BatchPreview batchPreview) {
        Mix mix = batchPreview.mix();
        return switch (this) {
            case SCOOPABLE, READY, SMOOTH -> true;
            case LESS_SWEET -> mix.sugarsPercent() > 0;
            case NO_EGG -> mix.allergens().contains(Allergen.EGG);
            case NO_ALCOHOL -> mix.alcoholPercent() > 0;
            case LESS_FAT -> mix.fatPercent() >= 1;
        };
    }

    /**
     * The goal in words, such as {@code scoopable at −18 °C}.
     *
     * @param freezerC the freezer's temperature, °C
     * @param minutes time limit, minutes
     */
    public String words(double freezerC, double minutes) {
        String key = "batch.wish." + name().toLowerCase(Locale.ROOT).replace('_', '-');
        return switch (this) {
            case SCOOPABLE -> Messages.of(key, DisplayText.decimals(0, freezerC));
            case READY -> Messages.of(key, DisplayText.decimals(0, minutes));
            default -> Messages.of(key);
        };
    }

    /**
     * Searches for changes that reach the goal.
     *
     * @param minutes time limit for {@link #READY}
     * @return the smallest changes, or why there are none
     */
    public GoalResult of(Recipe recipe, double minutes) {
        try {
            BatchPreview batchPreview = BatchPreview.of(recipe);
            String wish = words(recipe.freezerC(), minutes);
            return switch (this) {
                case READY ->
                        FasterFreezeSearch.of(recipe, BatchAnalysis.of(recipe), wish, minutes);
                case SMOOTH -> SmootherSearch.of(recipe, BatchAnalysis.of(recipe), wish);
                case LESS_SWEET -> SweetnessSearch.less(recipe, batchPreview, wish, LESS);
                default -> offered(recipe, batchPreview, wish);
            };
        } catch (BatchFileException | IllegalArgumentException e) {
            return new GoalResult(name(), DisplayText.sentence(e.getMessage()), List.of());
        }
    }

    private GoalResult offered(Recipe recipe, BatchPreview batchPreview, String words) {
        Mix mix = batchPreview.mix();
        Wish wish =
                switch (this) {
                    case SCOOPABLE -> Wish.scoopableAt(batchPreview.batch().freezerC());
                    case NO_EGG ->
                            Wish.without(
                                    words,
                                    mix,
                                    Trait.iceAt(Situation.SERVING_C),
                                    one -> one.allergens().contains(Allergen.EGG));
                    case NO_ALCOHOL -> Wish.noAlcohol(mix, Situation.SERVING_C);
                    case LESS_FAT ->
                            Wish.within(words, Trait.TOTAL_FAT, 0, LESS * mix.fatPercent());
                    case READY, SMOOTH, LESS_SWEET -> throw new AssertionError(this);
                };
        List<BatchFix> mends = SmallestChange.smallest(OFFERS, mix, wish, AT_HAND);
        if (mends.isEmpty()) {
            return new GoalResult(
                    words,
                    Messages.of(
                            "batch.wish.cannot",
                            wish.trait().name().shown(),
                            DisplayText.decimals(1, wish.trait().of(mix)),
                            DisplayText.decimals(1, wish.least()),
                            DisplayText.decimals(1, wish.most()),
                            wish.trait().unitName().shown(),
                            DisplayText.decimals(1, SuggestionLimits.MOST_SALT_PERCENT)),
                    List.of());
        }
        if (mends.get(0).changes().isEmpty()) {
            return new GoalResult(words, Messages.of("batch.wish.already"), List.of());
        }
        return new GoalResult(
                words, "", mends.stream().map(batchFix -> offer(recipe, batchFix)).toList());
    }

    /** A fix as a proposed change, with its side effects. */
    static ProposedChange offer(Recipe recipe, BatchFix batchFix) {
        return offer(
                recipe,
                DisplayText.sentence(batchFix.phrase().shown()),
                recipe.changed(batchFix.changes()));
    }

    static ProposedChange offer(Recipe was, String words, Recipe is) {
        try {
            return new ProposedChange(
                    words,
                    BatchDifferences.between(
                            BatchPreview.of(was).report(), BatchPreview.of(is).report()),
                    is);
        } catch (BatchFileException e) {
            return new ProposedChange(words, List.of(), is);
        }
    }
}
