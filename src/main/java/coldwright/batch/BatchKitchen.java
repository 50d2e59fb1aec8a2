package coldwright.batch;

import coldwright.science.Band;
import coldwright.science.bath.IceAndSalt;
import coldwright.science.freezer.Cold;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;
import coldwright.science.mix.Mix;
import coldwright.science.plan.BatchState;
import coldwright.science.plan.Frozen;
import coldwright.science.plan.Kitchen;
import coldwright.science.plan.Making;
import coldwright.science.plan.Plan;
import coldwright.science.style.DietRules;
import coldwright.science.style.Pieces;
import coldwright.science.style.Style;
import coldwright.science.style.StyleGuess;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The kitchen of a recipe: its freezer, its bath and its storage. A plan is frozen and stored by
 * the same models as the recipe itself, and each batch once in each way.
 */
public final class BatchKitchen implements Kitchen {
    /** How much warmer than its bath at the start a batch stays at the best, °C; judgement. */
    private static final double ABOVE_BATH_C = 4;

    private final Recipe recipe;
    private final Map<List<Object>, Frozen> known = new ConcurrentHashMap<>();

    /** The kitchen of a recipe, whose freezer, portions and storage count. */
    public BatchKitchen(Recipe recipe) {
        this.recipe = recipe;
    }

    @Override
    public Frozen freeze(Mix batch, Making making) {
        return known.computeIfAbsent(List.of(batch, making), key -> frozen(batch, making));
    }

    private Frozen frozen(Mix batch, Making making) {
        Recipe made = recipe.by(setup(making));
        try {
            FreezeMethodSetup setup = FreezeMethodSetup.of(made, batch);
            return frozen(setup, CrystalsInStorage.of(made, batch, setup));
        } catch (IllegalArgumentException | IllegalStateException e) {
            return Frozen.of(false, made.freezerC(), Optional.empty(), Optional.empty());
        }
    }

    /** What a setup makes of a batch. */
    Frozen frozen(FreezeMethodSetup setup, Optional<CrystalsInStorage> crystals) {
        FreezePlan plan = setup.plan();
        boolean bath = plan.freeze().cold() instanceof Cold.Bath;
        Optional<IceAndSalt> least = bath ? Optional.of(plan.leastBath()) : Optional.empty();
        return new Frozen(
                plan.reaches(Stage.SOFT_SERVE),
                setup.coldC() + (bath ? ABOVE_BATH_C : 0),
                setup.vessels() * least.map(IceAndSalt::iceG).orElse(0.0),
                setup.vessels() * least.map(IceAndSalt::saltG).orElse(0.0),
                crystals.map(one -> one.drawn().meanUm()),
                crystals.map(BatchKitchen::eaten),
                crystals.flatMap(CrystalsInStorage::steady)
                        .map(steady -> grown(crystals.get().drawn().meanUm(), steady.meanUm())),
                recipe.stored().stream().mapToDouble(StorageConditions::days).findFirst());
    }

    private static Band eaten(CrystalsInStorage crystals) {
        return grown(crystals.drawn().meanUm(), crystals.tasted().meanUm());
    }

    /** Storage never makes crystals smaller than they were before. */
    static Band grown(Band before, Band um) {
        return um.middle() >= before.middle() ? um : before;
    }

    private FreezingSetup setup(Making making) {
        FreezingSetup setup =
                recipe.setup()
                        .by(making.method())
                        .with(SetupField.AIR, RecipeLine.number(making.overrunPercent()))
                        .with(SetupField.ICE, grams(making.iceG()))
                        .with(SetupField.SALT, grams(making.saltG()));
        return making.steady() ? setup.steady() : setup;
    }

    private static String grams(double g) {
        return g > 0 ? RecipeLine.number(g) : "";
    }

    /** How the recipe is made, as a plan may change it. */
    Making making(Style style) {
        return new Making(
                recipe.method(),
                recipe.bath().map(FreezingSetup.Bath::iceG).orElse(0.0),
                recipe.bath().map(FreezingSetup.Bath::saltG).orElse(0.0),
                recipe.airPercent(),
                recipe.setup().value(SetupField.SERVING).orElse(style.servingC()),
                recipe.stored().filter(StorageConditions::disturbed).isEmpty());
    }

    /**
     * The recipe's batch as it is judged.
     *
     * @param style what it is meant to be
     * @param diet what it must not contain
     * @throws IllegalArgumentException if it can't be analysed
     */
    public BatchState state(Style style, DietRules diet) {
        return BatchState.of(recipe.mix(), style, diet, making(style), this);
    }

    /** The batch as it is judged, in the style and under the diet of the recipe. */
    BatchState state(Mix batch, Frozen frozen) {
        Style style = style(batch);
        return BatchState.of(batch, style, diet(), making(style), frozen);
    }

    /** The style that the recipe states, or that is guessed from it. */
    Style style(Mix batch) {
        return recipe.intent()
                .style()
                .value()
                .orElseGet(
                        () ->
                                StyleGuess.of(
                                        recipe.name(), Pieces.of(batch).mix(), recipe.method()));
    }

    /** The diet that the recipe states; otherwise it is respected as it is. */
    DietRules diet() {
        return recipe.intent().diet().value().orElse(DietRules.AS_IT_IS);
    }

    /**
     * The recipe with a plan: amounts, method, bath, overrun, storage, serving temperature, style.
     *
     * @param plan a plan for this recipe
     */
    public Recipe with(Plan plan) {
        Making was = plan.before().making();
        Making is = plan.after().making();
        Recipe changed = recipe.changed(plan.changes());
        if (!is.equals(was)) {
            FreezingSetup setup = setup(is);
            if (is.servingC() != was.servingC()) {
                setup = setup.with(SetupField.SERVING, RecipeLine.number(is.servingC()));
            }
            changed = changed.by(setup);
        }
        Style style = plan.after().style();
        return style == plan.before().style()
                ? changed
                : changed.meant(recipe.intent().withStyle(style.words()));
    }
}
