package coldwright.desk.batch.search;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchKitchen;
import coldwright.batch.BatchPreview;
import coldwright.batch.Recipe;
import coldwright.batch.RecipeLine;
import coldwright.batch.SetupField;
import coldwright.desk.messages.Messages;
import coldwright.science.Band;
import coldwright.science.crystal.Texture;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Mix;
import coldwright.science.plan.BatchFault;
import coldwright.science.plan.BatchState;
import coldwright.science.plan.Faults;
import coldwright.science.plan.Finding;
import coldwright.science.plan.Plan;
import coldwright.science.plan.PlanSentences;
import coldwright.science.plan.Planner;
import coldwright.science.sensory.Firmness;
import coldwright.science.style.StyleQuantity;
import coldwright.text.DisplayText;
import coldwright.words.Phrase;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** A goal for a batch, and the search for the smallest plan that reaches it. */
public enum BatchGoal {
    /** Scoopable straight from the freezer. */
    SCOOPABLE(BatchFault.MUCH_ICE, BatchFault.LITTLE_ICE),
    /** Soft-serve within some minutes. */
    READY,
    /** Crystals too small to be felt. */
    SMOOTH(BatchFault.COARSE_CRYSTALS, BatchFault.STORAGE),
    /** Less sweet, with the same ice. */
    LESS_SWEET(BatchFault.MUCH_SWEETNESS),
    /** No egg, as firm as before. */
    NO_EGG(BatchFault.OFF_DIET),
    /** No alcohol, as firm as before. */
    NO_ALCOHOL(BatchFault.OFF_DIET),
    /** Less fat. */
    LESS_FAT(BatchFault.MUCH_FAT);

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

    private static final double LESS = 0.85;

    /** How near the ice must stay where a goal asks for the same softness, % of the water. */
    private static final double SAME_ICE = 0.5;

    private final Set<BatchFault> missed = EnumSet.noneOf(BatchFault.class);

    BatchGoal(BatchFault... missed) {
        this.missed.addAll(List.of(missed));
    }

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
            case SCOOPABLE -> Messages.of(key, freezerC);
            case READY -> Messages.of(key, minutes);
            default -> Messages.of(key);
        };
    }

    /**
     * Searches for plans that reach the goal.
     *
     * @param minutes time limit for {@link #READY}
     * @return the plans, or why there are none
     */
    public GoalResult of(Recipe recipe, double minutes) {
        try {
            String goal = words(recipe.freezerC(), minutes);
            Recipe asked = asked(recipe);
            BatchAnalysis all = BatchAnalysis.of(asked);
            return this == READY
                    ? FasterFreezeSearch.of(recipe, all, goal, minutes)
                    : planned(goal, asked, asked(all.state()));
        } catch (IllegalArgumentException e) {
            return new GoalResult(name(), DisplayText.sentence(e.getMessage()), List.of());
        }
    }

    /** The recipe as the goal has it: served from the freezer, or under another diet. */
    private Recipe asked(Recipe recipe) {
        String diet = recipe.intent().diet().text().strip();
        String more = diet.isEmpty() ? "" : diet + ", ";
        return switch (this) {
            case SCOOPABLE ->
                    recipe.by(
                            recipe.setup()
                                    .with(
                                            SetupField.SERVING,
                                            RecipeLine.number(recipe.freezerC())));
            case NO_EGG -> recipe.meant(recipe.intent().withDiet(more + "no egg"));
            case NO_ALCOHOL -> recipe.meant(recipe.intent().withDiet(more + "no alcohol"));
            default -> recipe;
        };
    }

    /** The batch with the range that the goal asks for. */
    private BatchState asked(BatchState state) {
        double ice = state.of(StyleQuantity.ICE);
        return switch (this) {
            case SCOOPABLE -> {
                Band scoops = Firmness.scoopablePercentAt(state.making().servingC());
                yield state.wanting(StyleQuantity.ICE, scoops.low(), scoops.high());
            }
            case LESS_SWEET -> {
                double most = LESS * state.of(StyleQuantity.SWEETNESS);
                yield state.wanting(StyleQuantity.SWEETNESS, 0, most)
                        .wanting(StyleQuantity.ICE, ice - SAME_ICE, ice + SAME_ICE);
            }
            case NO_EGG, NO_ALCOHOL ->
                    state.wanting(StyleQuantity.ICE, ice - SAME_ICE, ice + SAME_ICE);
            case SMOOTH -> {
                double told = Finding.WORTH_TELLING_STEPS * StyleQuantity.CRYSTALS.step();
                yield state.wanting(StyleQuantity.CRYSTALS, 0, Texture.SMOOTH.upToUm() - told);
            }
            case LESS_FAT ->
                    state.wanting(StyleQuantity.FAT, 0, LESS * state.of(StyleQuantity.FAT));
            default -> state;
        };
    }

    private GoalResult planned(String goal, Recipe recipe, BatchState state) {
        boolean reached =
                Faults.of(state).stream().noneMatch(found -> missed.contains(found.fault()));
        if (reached && this != LESS_SWEET && this != LESS_FAT) {
            return new GoalResult(goal, Messages.of("batch.wish.already"), List.of());
        }
        List<Plan> plans = Planner.plans(state, new BatchKitchen(recipe));
        List<Plan> reaching =
                plans.stream()
                        .filter(
                                plan ->
                                        plan.left().stream()
                                                .noneMatch(
                                                        left ->
                                                                missed.contains(
                                                                        left.fault().fault())))
                        .toList();
        String why =
                reaching.isEmpty() && !plans.isEmpty()
                        ? Messages.of(
                                "batch.wish.cannot",
                                PlanSentences.left(plans.get(0)).stream()
                                        .map(Phrase::shown)
                                        .collect(Collectors.joining("; ")))
                        : "";
        return new GoalResult(goal, why, ProposedChange.of(recipe, reaching));
    }
}
