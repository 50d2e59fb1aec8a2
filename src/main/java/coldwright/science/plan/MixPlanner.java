package coldwright.science.plan;

import coldwright.science.balance.AmountChange;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.style.DietRules;
import coldwright.science.style.StyleQuantity;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Finds the amounts of a plan: the hardest faults first, as many as go together. Each way that the
 * linear model offers is computed again as a whole mix before it counts.
 */
final class MixPlanner {
    /** The most that a plan may move, as a share of the batch: more is another recipe. */
    static final double MOST_MOVED = 0.25;

    /** Left for rounding to the scales. */
    private static final double MOST_AIMED = MOST_MOVED - 0.002;

    /** How far inside a range to aim, in steps; the second if rounding or curvature misses. */
    private static final double[] MARGINS = {0.1, 0.35};

    private static final int MOST_TRIED = 8;

    /** What is left below it after a change is taken out whole, g. */
    private static final double LEAST_WEIGHED_G = 0.05;

    /** How much worse a fault that is left may become, steps: rounding of the scales. */
    static final double NO_WORSE = 0.02;

    /** What rounding to the scales may add to a limit of taste, steps. */
    private static final double ROUNDING_STEPS = 0.02;

    private final Map<BatchFault, Double> allowed = new EnumMap<>(BatchFault.class);
    private final List<AmountChange> cleared;
    private final BatchState base;
    private final LinearModel model;

    /** Amounts, and what they leave. */
    record Found(List<AmountChange> changes, BatchState after, List<Plan.Left> left) {}

    MixPlanner(BatchState state, Predicate<Lever> offered) {
        this.cleared = cleared(state);
        this.base = cleared.isEmpty() ? state : state.with(changed(state.batch(), cleared));
        Faults.of(state).forEach(one -> this.allowed.put(one.fault(), one.steps()));
        Faults.of(base).forEach(one -> this.allowed.merge(one.fault(), one.steps(), Math::max));
        this.model =
                new LinearModel(
                        base,
                        Lever.of(base.pieces().mix(), state.diet(), state.style()).stream()
                                .filter(offered)
                                .filter(lever -> keepsSugar(lever, state.diet()))
                                .filter(this::isForStability)
                                .toList());
    }

    /** A gum is for what lacks one; nobody adds it as solids. */
    private boolean isForStability(Lever lever) {
        return lever.sign() < 0
                || lever.role() != IngredientRole.STABILISER
                || allowed.containsKey(BatchFault.NO_STABILISER);
    }

    private static boolean keepsSugar(Lever lever, DietRules diet) {
        return !(diet.rules().contains(DietRules.Rule.LESS_SUGAR)
                && lever.sign() > 0
                && (lever.role() == IngredientRole.SUGAR
                        || lever.role() == IngredientRole.DEXTROSE));
    }

    /** What the diet leaves out, if that is no more than a plan may move. */
    private static List<AmountChange> cleared(BatchState state) {
        Mix batch = state.batch();
        List<AmountChange> out =
                state.diet().excludedFrom(batch).stream()
                        .map(one -> new AmountChange(-batch.massG(one), one))
                        .toList();
        double g = out.stream().mapToDouble(one -> -one.massG()).sum();
        boolean small = g <= MOST_MOVED * batch.massG();
        return small && changed(batch, out).waterPercent() > 0 ? out : List.of();
    }

    /** The plan that resolves the hardest faults, and as many of the others as go together. */
    Found find() {
        Set<BatchFault> all = EnumSet.noneOf(BatchFault.class);
        Faults.of(base).stream()
                .map(Finding::fault)
                .filter(fault -> fault.quantity() != null && !fault.ofMaking())
                .forEach(all::add);
        if (all.isEmpty()) {
            return found(cleared, base, Map.of());
        }
        Optional<Found> whole = verified(all, Map.of());
        if (whole.isPresent()) {
            return whole.get();
        }
        Set<BatchFault> required = EnumSet.noneOf(BatchFault.class);
        Map<BatchFault, Plan.Why> left = new EnumMap<>(BatchFault.class);
        Found best = null;
        for (Finding one : Faults.of(base)) {
            if (!all.contains(one.fault())) {
                continue;
            }
            required.add(one.fault());
            Optional<Found> more =
                    best != null && resolved(one.fault(), best.after())
                            ? Optional.of(best)
                            : verified(required, left);
            if (more.isPresent()) {
                best = more.get();
            } else {
                required.remove(one.fault());
                left.put(one.fault(), why(one.fault()));
            }
        }
        return best == null
                ? found(cleared, base, left)
                : found(best.changes(), best.after(), left);
    }

    private Found found(
            List<AmountChange> changes, BatchState after, Map<BatchFault, Plan.Why> why) {
        List<Plan.Left> left = new ArrayList<>();
        for (Finding one : Faults.of(after)) {
            if (!one.fault().ofMaking()) {
                left.add(
                        new Plan.Left(
                                one,
                                why.getOrDefault(
                                        one.fault(),
                                        one.fault() == BatchFault.OFF_DIET
                                                ? Plan.Why.ANOTHER_RECIPE
                                                : Plan.Why.LIMITS)));
            }
        }
        return new Found(changes, after, left);
    }

    /** Why each fault of the batch is left if nothing is changed. */
    List<Plan.Left> reasons() {
        return Faults.of(base).stream()
                .filter(one -> one.fault().quantity() != null && !one.fault().ofMaking())
                .map(one -> new Plan.Left(one, why(one.fault())))
                .toList();
    }

    private static boolean resolved(BatchFault fault, BatchState after) {
        return Faults.of(after).stream().noneMatch(one -> one.fault() == fault);
    }

    private Optional<Found> verified(Set<BatchFault> required, Map<BatchFault, Plan.Why> left) {
        for (double margin : MARGINS) {
            LinearModel.Rows rows = model.rows(required, margin, MOST_AIMED);
            for (boolean three : new boolean[] {false, true}) {
                int tried = 0;
                for (List<AmountChange> way : ChangeCandidates.of(model, rows, three)) {
                    if (tried++ == MOST_TRIED) {
                        break;
                    }
                    BatchState after = base.with(changed(base.batch(), way));
                    if (holds(required, after)) {
                        List<AmountChange> changes = new ArrayList<>(cleared);
                        changes.addAll(way);
                        return Optional.of(found(changes, after, left));
                    }
                }
            }
        }
        return Optional.empty();
    }

    /**
     * Whether the required faults are gone, none is new or worse, and no limit of taste crossed.
     */
    private boolean holds(Set<BatchFault> required, BatchState after) {
        for (Finding one : Faults.of(after)) {
            double was = allowed.getOrDefault(one.fault(), 0.0);
            if (required.contains(one.fault()) || one.steps() > was + NO_WORSE) {
                return false;
            }
        }
        for (StyleQuantity quantity : LinearModel.TASTED) {
            if (after.of(quantity) > model.most(quantity) + ROUNDING_STEPS * quantity.step()) {
                return false;
            }
        }
        return true;
    }

    /** Why nothing resolves a fault, even alone. */
    private Plan.Why why(BatchFault fault) {
        if (!model.moves(fault)) {
            return Plan.Why.NO_INGREDIENT;
        }
        Set<BatchFault> alone = EnumSet.of(fault);
        boolean within = offers(model, alone, MOST_AIMED);
        LinearModel far = new LinearModel(base, model.levers().stream().map(Lever::free).toList());
        return !within && offers(far, alone, 10) ? Plan.Why.ANOTHER_RECIPE : Plan.Why.LIMITS;
    }

    private static boolean offers(LinearModel model, Set<BatchFault> alone, double mostMoved) {
        return !ChangeCandidates.of(model, model.rows(alone, 0, mostMoved), false).isEmpty();
    }

    /** A batch with changes; what is left too small to weigh is taken out whole. */
    static Mix changed(Mix batch, List<AmountChange> changes) {
        Map<Ingredient, Double> grams = new LinkedHashMap<>();
        for (Amount amount : batch.amounts()) {
            grams.put(amount.ingredient(), amount.massG());
        }
        for (AmountChange change : changes) {
            grams.merge(change.ingredient(), change.massG(), Double::sum);
        }
        List<Amount> amounts = new ArrayList<>();
        grams.forEach(
                (ingredient, g) -> {
                    if (g >= LEAST_WEIGHED_G || g == batch.massG(ingredient)) {
                        amounts.add(Amount.grams(g, ingredient));
                    }
                });
        return Mix.of(amounts);
    }
}
