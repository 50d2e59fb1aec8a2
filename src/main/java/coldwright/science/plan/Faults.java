package coldwright.science.plan;

import coldwright.science.Band;
import coldwright.science.crystal.Texture;
import coldwright.science.freezer.Stage;
import coldwright.science.mix.Mix;
import coldwright.science.style.StyleQuantity;
import coldwright.science.style.StyleRange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The faults of a batch, judged against its own style. */
public final class Faults {
    /** Ice when churning stops, % of the water: at least half (university dairy text, read). */
    private static final StyleRange CHURNED =
            new StyleRange(Stage.SOFT_SERVE.icePercent(), 101, "churned");

    private static final StyleRange SMOOTH = new StyleRange(0, Texture.SMOOTH.upToUm(), "smooth");
    private static final StyleRange DISSOLVED =
            new StyleRange(Double.NEGATIVE_INFINITY, 0, "lactose");

    /** Up to here lactose doesn't crystallise; judgement. */
    private static final double SHORT_DAYS = 3;

    /** Up to here nobody notices that nothing stabilises it; judgement. */
    private static final double WEEK_DAYS = 7;

    /** Steps of what makes a batch impossible as it is. */
    static final double IMPOSSIBLE_STEPS = 20;

    private Faults() {}

    /** {@return those worth a sentence; empty for a sound batch} */
    public static List<Finding> of(BatchState state) {
        List<Finding> found = new ArrayList<>();
        for (BatchFault fault : BatchFault.values()) {
            Finding one = measure(fault, state);
            if (one.worthTelling() && judges(fault.quantity(), state)) {
                found.add(one);
            }
        }
        found.sort(Comparator.comparingDouble(Finding::steps).reversed());
        return List.copyOf(found);
    }

    /**
     * As {@link #of}, without what only follows from another of them.
     *
     * @return what a cook is told
     */
    public static List<Finding> told(BatchState state) {
        List<Finding> all = of(state);
        boolean liquid = all.stream().anyMatch(one -> one.fault() == BatchFault.LOW_FREEZING_POINT);
        return liquid
                ? all.stream().filter(one -> one.fault() != BatchFault.LITTLE_ICE).toList()
                : all;
    }

    /** Whether anybody notices a quantity: what stabilises shows only in long storage. */
    static boolean judges(StyleQuantity quantity, BatchState state) {
        return quantity != StyleQuantity.STABILITY || storedDays(state) > WEEK_DAYS;
    }

    private static double storedDays(BatchState state) {
        return state.frozen().storedDays().orElse(state.style().keptDays());
    }

    /** The usual range that decides a fault. */
    static StyleRange range(StyleQuantity quantity, BatchState state) {
        return switch (quantity) {
            case ICE_IN_THE_COLD -> CHURNED;
            case CRYSTALS -> SMOOTH;
            case LACTOSE -> storedDays(state) > SHORT_DAYS ? DISSOLVED : StyleRange.NONE;
            default -> state.style().range(quantity);
        };
    }

    /** {@return its value and range; no steps if it is as usual} */
    public static Finding measure(BatchFault fault, BatchState state) {
        return switch (fault) {
            case SMALL_BATH -> smallBath(state);
            case OFF_DIET -> offDiet(state);
            case COARSE_CRYSTALS -> crystals(state);
            case STORAGE -> storage(state);
            default -> measured(fault, state);
        };
    }

    private static Finding measured(BatchFault fault, BatchState state) {
        StyleQuantity quantity = fault.quantity();
        StyleRange range = state.range(quantity);
        double value = state.of(quantity);
        double beyond = fault.above() ? range.beyond(value) : -range.beyond(value);
        double steps = fault.weight() * Math.max(0, beyond) / quantity.step();
        boolean impossible = fault == BatchFault.LOW_FREEZING_POINT && steps > 0;
        return new Finding(fault, value, range, steps + (impossible ? IMPOSSIBLE_STEPS : 0), state);
    }

    private static Finding smallBath(BatchState state) {
        boolean small =
                !state.frozen().freezes()
                        && state.of(StyleQuantity.ICE_IN_THE_COLD) >= CHURNED.least();
        double least = state.frozen().leastIceG();
        return new Finding(
                BatchFault.SMALL_BATH,
                state.making().iceG(),
                new StyleRange(least, Double.POSITIVE_INFINITY, "bath"),
                small ? IMPOSSIBLE_STEPS : 0,
                state);
    }

    private static Finding offDiet(BatchState state) {
        Mix batch = state.batch();
        double percent =
                100
                        * state.diet().excludedFrom(batch).stream().mapToDouble(batch::massG).sum()
                        / batch.massG();
        return new Finding(
                BatchFault.OFF_DIET,
                percent,
                new StyleRange(0, 0, "diet"),
                percent > 0 ? IMPOSSIBLE_STEPS : 0,
                state);
    }

    private static Finding crystals(BatchState state) {
        double now = state.of(StyleQuantity.CRYSTALS);
        double own = state.frozen().steadyUm().map(one -> Math.min(one.middle(), now)).orElse(now);
        return felt(BatchFault.COARSE_CRYSTALS, own, state.range(StyleQuantity.CRYSTALS), state);
    }

    /** Crystal growth beyond that of the same time in a steady freezer. */
    private static Finding storage(BatchState state) {
        double now = state.of(StyleQuantity.CRYSTALS);
        double steady = state.frozen().steadyUm().map(Band::middle).orElse(now);
        double most = Math.max(steady, state.range(StyleQuantity.CRYSTALS).most());
        return felt(BatchFault.STORAGE, now, new StyleRange(0, most, "steady"), state);
    }

    private static Finding felt(BatchFault fault, double um, StyleRange range, BatchState state) {
        boolean counts = state.style().smooth() && state.frozen().freezes();
        double steps = fault.weight() * range.beyond(um) / StyleQuantity.CRYSTALS.step();
        return new Finding(fault, um, range, counts ? steps : 0, state);
    }
}
