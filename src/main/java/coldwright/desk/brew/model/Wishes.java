package coldwright.desk.brew.model;

import coldwright.batch.BatchFault;
import coldwright.batch.BatchFile;
import coldwright.batch.BatchReader;
import coldwright.batch.Reckoning;
import coldwright.desk.say.Say;
import coldwright.science.balance.Mend;
import coldwright.science.balance.SmallestChange;
import coldwright.science.balance.SuggestionLimits;
import coldwright.science.balance.Trait;
import coldwright.science.balance.Wish;
import coldwright.science.diagnosis.Situation;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;
import coldwright.text.Written;

import java.util.List;
import java.util.Locale;

/** What a cook may wish of a batch, and the smallest change that grants it. */
public enum Wishes {
    /** A spoon goes in straight from the freezer. */
    SCOOPABLE,
    /** Soft-serve within some minutes. */
    READY,
    /** Crystals too small to be felt after one night. */
    SMOOTH,
    /** Less sweet, the ice as before. */
    LESS_SWEET,
    /** No egg, as firm as before. */
    NO_EGG,
    /** No alcohol, as firm as before. */
    NO_ALCOHOL,
    /** Less fat. */
    LESS_FAT;

    private static final int OFFERS = 3;
    private static final double LESS = 0.85;

    /** What a kitchen has; what a batch may not get is left out in the search. */
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
     * Whether it makes sense of a batch.
     *
     * @param glance the batch
     * @return false of no egg where there is none, and the like
     */
    public boolean fits(Glance glance) {
        Mix mix = glance.mix();
        return switch (this) {
            case SCOOPABLE, READY, SMOOTH -> true;
            case LESS_SWEET -> mix.sugarsPercent() > 0;
            case NO_EGG -> mix.allergens().contains(Allergen.EGG);
            case NO_ALCOHOL -> mix.alcoholPercent() > 0;
            case LESS_FAT -> mix.fatPercent() >= 1;
        };
    }

    /**
     * In words.
     *
     * @param freezerC the freezer's temperature, °C
     * @param minutes how soon it shall be ready
     * @return such as {@code scoopable at −18 °C}
     */
    public String words(double freezerC, double minutes) {
        String key = "batch.wish." + name().toLowerCase(Locale.ROOT).replace('_', '-');
        return switch (this) {
            case SCOOPABLE -> Say.of(key, Written.decimals(0, freezerC));
            case READY -> Say.of(key, Written.decimals(0, minutes));
            default -> Say.of(key);
        };
    }

    /**
     * Grants it if it can be.
     *
     * @param recipe the recipe
     * @param minutes how soon it shall be ready, for {@link #READY}
     * @return the smallest changes, or why there is none
     */
    public Answer of(Recipe recipe, double minutes) {
        try {
            BatchFile batch = BatchReader.read("batch", RecipeText.of(recipe));
            Glance glance = Glance.of(batch);
            String wish = words(batch.freezerC(), minutes);
            return switch (this) {
                case READY -> Sooner.of(recipe, Reckoning.of(batch), wish, minutes);
                case SMOOTH -> Smoother.of(recipe, Reckoning.of(batch), wish);
                case LESS_SWEET -> Sweeter.less(recipe, glance, wish, LESS);
                default -> offered(recipe, glance, wish);
            };
        } catch (BatchFault | IllegalArgumentException e) {
            String words = e.getMessage().replaceFirst("^batch:([0-9]+:)? ", "");
            return new Answer(name(), Written.sentence(words), List.of());
        }
    }

    private Answer offered(Recipe recipe, Glance glance, String words) {
        Mix mix = glance.mix();
        Wish wish =
                switch (this) {
                    case SCOOPABLE -> Wish.scoopableAt(glance.batch().freezerC());
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
        List<Mend> mends = SmallestChange.smallest(OFFERS, mix, wish, AT_HAND);
        if (mends.isEmpty()) {
            return new Answer(
                    words,
                    Say.of(
                            "batch.wish.cannot",
                            wish.trait().words(),
                            Written.decimals(1, wish.trait().of(mix)),
                            Written.decimals(1, wish.least()),
                            Written.decimals(1, wish.most()),
                            wish.trait().unit(),
                            Written.decimals(1, SuggestionLimits.MOST_SALT_PERCENT)),
                    List.of());
        }
        if (mends.get(0).changes().isEmpty()) {
            return new Answer(words, Say.of("batch.wish.already"), List.of());
        }
        return new Answer(words, "", mends.stream().map(mend -> offer(recipe, mend)).toList());
    }

    /** A mend as an offer, with all that it changes besides. */
    static Offer offer(Recipe recipe, Mend mend) {
        return offer(recipe, Written.sentence(mend.toString()), recipe.changed(mend.changes()));
    }

    static Offer offer(Recipe was, String words, Recipe is) {
        try {
            return new Offer(
                    words,
                    Differences.between(
                            Glance.of(BatchReader.read("batch", RecipeText.of(was))),
                            Glance.of(BatchReader.read("batch", RecipeText.of(is)))),
                    is);
        } catch (BatchFault e) {
            return new Offer(words, List.of(), is);
        }
    }
}
