package coldwright.science.plan;

import coldwright.science.crystal.Method;
import coldwright.science.style.Style;
import coldwright.science.style.StyleQuantity;
import coldwright.science.style.StyleRange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Makes up to three plans for a batch, each of another character, each frozen and judged again as a
 * whole.
 *
 * <pre>{@code
 * var state = BatchState.of(mix, Style.SORBET, DietRules.AS_IT_IS, making, Kitchen.at(-18));
 * Planner.plans(state, Kitchen.at(-18)).get(0).changes();
 * }</pre>
 */
public final class Planner {
    /** Of the ice that a bath needs at least, what to take: a quarter more, then still more. */
    private static final double[] BATHS = {1.25, 1.6, 2.2};

    /** Step in which serving temperatures are tried, °C. */
    private static final double STEP_C = 0.5;

    /** Another way counts if it moves less than this share of what the first plan moves. */
    private static final double LESS = 0.7;

    /** A second plan may leave this much more than the first, steps. */
    private static final double AS_GOOD = 0.1;

    /** Fat that a water ice may have, % (German Leitsätze für Speiseeis: less than 3). */
    private static final double WATER_ICE_FAT_PERCENT = 3;

    private final BatchState start;
    private final Kitchen kitchen;
    private final Map<BatchFault, Double> faults = new EnumMap<>(BatchFault.class);
    private final List<Plan> plans = new ArrayList<>();

    /** What plans do, so that none does the same as another, or nothing. */
    private final Set<List<Object>> done = new HashSet<>();

    private Planner(BatchState start, Kitchen kitchen) {
        this.start = start;
        this.kitchen = kitchen;
        Faults.of(start).forEach(one -> faults.put(one.fault(), one.steps()));
        done.add(List.of(List.of(), start.making(), start.style()));
    }

    /**
     * The plans for a batch.
     *
     * @param kitchen freezes it again after each change
     * @return the one that resolves most with the smallest change first; empty for a sound batch
     */
    public static List<Plan> plans(BatchState state, Kitchen kitchen) {
        Planner planner = new Planner(state, kitchen);
        if (planner.faults.isEmpty()) {
            return List.of();
        }
        BatchState made = planner.making(state, 0);
        planner.add(planner.by(made, Plan.Character.LEAST));
        if (planner.plans.stream().allMatch(plan -> buys(plan, state))) {
            planner.add(planner.by(made, Plan.Character.NOTHING_TO_BUY));
        }
        planner.otherWay(made).ifPresent(planner::add);
        if (planner.plans.isEmpty()) {
            planner.plans.add(
                    planner.finished(
                            Plan.Character.LEAST,
                            new MixPlanner.Found(
                                    List.of(),
                                    state,
                                    new MixPlanner(state, one -> true).reasons())));
        }
        return planner.plans.stream().sorted(Comparator.comparingDouble(Planner::left)).toList();
    }

    private static boolean buys(Plan plan, BatchState state) {
        return plan.changes().stream()
                .anyMatch(
                        change ->
                                change.massG() > 0
                                        && !(state.batch().massG(change.ingredient()) > 0));
    }

    /** Adds a plan unless it does nothing, another does the same, or it brings a new fault. */
    private void add(Plan plan) {
        boolean impossible =
                plan.left().stream()
                        .anyMatch(one -> one.fault().steps() >= Faults.IMPOSSIBLE_STEPS);
        boolean asGood = plans.isEmpty() || left(plan) <= left(plans.get(0)) + AS_GOOD;
        if (!impossible && asGood && !worse(plan) && done.add(deeds(plan))) {
            plans.add(plan);
        }
    }

    private static List<Object> deeds(Plan plan) {
        return List.of(plan.changes(), plan.after().making(), plan.after().style());
    }

    /** Whether a plan brings a new fault or makes one worse. */
    private boolean worse(Plan plan) {
        return plan.left().stream()
                .anyMatch(
                        one ->
                                one.fault().steps()
                                        > faults.getOrDefault(one.fault().fault(), 0.0)
                                                + MixPlanner.NO_WORSE);
    }

    private static double left(Plan plan) {
        return plan.left().stream().mapToDouble(one -> one.fault().steps()).sum();
    }

    private Plan by(BatchState made, Plan.Character character) {
        boolean buys = character != Plan.Character.NOTHING_TO_BUY;
        return finished(character, new MixPlanner(made, lever -> buys || !lever.bought()).find());
    }

    /** Freezes what was found again, and names what is left of all kinds. */
    private Plan finished(Plan.Character character, MixPlanner.Found found) {
        BatchState after = found.after();
        if (!found.changes().isEmpty()) {
            after = making(refrozen(after, after.making()), 0);
        }
        List<Plan.Left> left = new ArrayList<>();
        for (Finding one : Faults.of(after)) {
            Plan.Why why =
                    found.left().stream()
                            .filter(known -> known.fault().fault() == one.fault())
                            .map(Plan.Left::why)
                            .findFirst()
                            .orElse(one.fault().ofMaking() ? Plan.Why.NO_METHOD : Plan.Why.LIMITS);
            left.add(new Plan.Left(one, why));
        }
        return new Plan(character, found.changes(), start, after, left);
    }

    /** The batch made so that the faults of its making are gone, as far as that goes. */
    private BatchState making(BatchState state, int skip) {
        BatchState now = state;
        for (Finding one : Faults.of(state)) {
            Making making = now.making();
            switch (one.fault()) {
                case SMALL_BATH -> now = biggerBath(now);
                case STORAGE -> now = refrozen(now, making.keptSteady());
                case COARSE_CRYSTALS -> now = smoother(now, skip);
                case MUCH_AIR ->
                        now =
                                refrozen(
                                        now,
                                        making.withOverrun(
                                                state.style().range(StyleQuantity.OVERRUN).most()));
                default -> {}
            }
        }
        return now;
    }

    private BatchState refrozen(BatchState state, Making making) {
        return state.with(making, kitchen.freeze(state.batch(), making));
    }

    private BatchState biggerBath(BatchState state) {
        for (double times : BATHS) {
            double ice = 10 * Math.ceil(times * state.frozen().leastIceG() / 10);
            double salt = 10 * Math.ceil(times * state.frozen().leastSaltG() / 10);
            BatchState other = refrozen(state, state.making().inBath(ice, salt));
            if (other.frozen().freezes()) {
                return other;
            }
        }
        return state;
    }

    /** By the first method whose crystals aren't felt, after some that are skipped. */
    private BatchState smoother(BatchState state, int skip) {
        int skipped = 0;
        for (Method method : gentler(state.making().method())) {
            BatchState other = refrozen(state, state.making().by(method));
            boolean smooth =
                    other.frozen().freezes()
                            && Faults.measure(BatchFault.COARSE_CRYSTALS, other).steps() == 0;
            if (smooth && skipped++ == skip) {
                return other;
            }
        }
        return state;
    }

    private static List<Method> gentler(Method method) {
        return switch (method) {
            case STILL_TUB -> List.of(Method.SHAKEN_TUB, Method.BAG, Method.MACHINE);
            case SHAKEN_TUB -> List.of(Method.BAG, Method.MACHINE);
            default -> List.of();
        };
    }

    /** Another serving temperature, method or style. */
    private Optional<Plan> otherWay(BatchState made) {
        if (faults.containsKey(BatchFault.MUCH_ICE) || faults.containsKey(BatchFault.LITTLE_ICE)) {
            Optional<Plan> tempered =
                    served(made)
                            .map(
                                    served ->
                                            by(
                                                    made.with(served, made.frozen()),
                                                    Plan.Character.OTHER_WAY))
                            .filter(
                                    plan ->
                                            plans.isEmpty()
                                                    || plan.movedShare()
                                                            < LESS * plans.get(0).movedShare());
            if (tempered.isPresent()) {
                return tempered;
            }
        }
        if (faults.containsKey(BatchFault.COARSE_CRYSTALS)) {
            BatchState other = making(start, 1);
            if (!other.making().equals(start.making()) && !other.making().equals(made.making())) {
                return Optional.of(by(other, Plan.Character.OTHER_WAY));
            }
        }
        boolean moves = !plans.isEmpty() && plans.get(0).changes().isEmpty();
        return moves ? Optional.empty() : otherStyle(made);
    }

    /** The serving temperature nearest to now, within the style's range, at which ice is usual. */
    private Optional<Making> served(BatchState made) {
        StyleRange usual = made.style().range(StyleQuantity.SERVING);
        StyleRange ice = made.range(StyleQuantity.ICE);
        double now = made.making().servingC();
        double far = Math.max(usual.most() - now, now - usual.least());
        for (double by = STEP_C; by <= far; by += STEP_C) {
            for (int sign : new int[] {1, -1}) {
                Making other = made.making().servedAt(now + sign * by);
                boolean within = usual.beyond(other.servingC()) == 0;
                if (within
                        && ice.beyond(made.with(other, made.frozen()).of(StyleQuantity.ICE)) == 0) {
                    return Optional.of(other);
                }
            }
        }
        return Optional.empty();
    }

    /** Another style in which the batch is sound as it is. */
    private Optional<Plan> otherStyle(BatchState made) {
        for (Style style : Style.values()) {
            BatchState other = made.as(style);
            if (style != made.style() && !unlike(style, made) && Faults.of(other).isEmpty()) {
                return Optional.of(
                        finished(
                                Plan.Character.OTHER_WAY,
                                new MixPlanner.Found(List.of(), other, List.of())));
            }
        }
        return Optional.empty();
    }

    /** Whether a batch has nothing of what makes a style. */
    private static boolean unlike(Style style, BatchState made) {
        boolean milk = made.pieces().mix().milkSolidsNotFatPercent() > 1;
        return switch (style) {
            case CUSTARD, FROZEN_YOGURT, LOW_SUGAR, SOFT_SERVE, VEGAN -> true;
            case ADULT -> made.of(StyleQuantity.ALCOHOL) < 1;
            case SORBET, GRANITA, LOLLY ->
                    milk || made.of(StyleQuantity.FAT) > WATER_ICE_FAT_PERCENT;
            default -> !milk;
        };
    }
}
