package coldwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.science.balance.AmountChange;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;
import coldwright.science.plan.BatchFault;
import coldwright.science.plan.BatchState;
import coldwright.science.plan.Faults;
import coldwright.science.plan.Finding;
import coldwright.science.plan.IngredientRole;
import coldwright.science.plan.Kitchen;
import coldwright.science.plan.Making;
import coldwright.science.plan.Plan;
import coldwright.science.plan.Planner;
import coldwright.science.plan.ScaleRounding;
import coldwright.science.style.DietRules;
import coldwright.science.style.Style;
import coldwright.science.style.StyleQuantity;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What every plan keeps, whatever batch, style and diet it is for. */
class PlanLawsTest {
    /** Rounding to the scales, in steps of a quantity. */
    private static final double ROUNDING_STEPS = 0.03;

    /** Taking other things out may concentrate what is beyond its limit by so much. */
    private static final double AS_MUCH = 1.02;

    /** What makes up most of a batch, and what else may be in it. */
    private static final List<Ingredient> BASES =
            List.of(
                    Shelf.WHOLE_MILK,
                    Shelf.SKIMMED_MILK,
                    Shelf.CREAM_35,
                    Shelf.WATER,
                    Shelf.BLOOD_ORANGE_JUICE,
                    Shelf.RASPBERRIES,
                    Shelf.MANGO,
                    Shelf.YOGURT,
                    Shelf.OAT_DRINK,
                    Shelf.COCONUT_MILK,
                    Shelf.ESPRESSO);

    private record Case(BatchState state, Kitchen kitchen) {}

    private static Case any(Draw draw) {
        Set<Ingredient> used = new HashSet<>();
        java.util.ArrayList<Amount> amounts = new java.util.ArrayList<>();
        for (int i = draw.intIn(1, 4); i > 0; i--) {
            add(amounts, used, draw.oneOf(BASES), draw.doubleIn(50, 900));
        }
        add(amounts, used, Shelf.SUCROSE, draw.doubleIn(20, 300));
        for (int i = draw.intIn(0, 6); i > 0; i--) {
            Ingredient one = draw.oneOf(Shelf.all());
            double most = one.composition().percent(Component.WATER) > 50 ? 300 : 60;
            add(amounts, used, one, draw.doubleIn(0.5, most));
        }
        Style style = draw.oneOf(Style.values());
        Set<DietRules.Rule> rules = EnumSet.noneOf(DietRules.Rule.class);
        if (draw.anyBoolean()) {
            rules.add(draw.oneOf(DietRules.Rule.values()));
        }
        Set<Allergen> asked =
                draw.intIn(0, 4) == 2 ? Set.of(draw.oneOf(Allergen.values())) : Set.of();
        Making making =
                new Making(
                        draw.oneOf(coldwright.science.crystal.Method.values()),
                        0,
                        0,
                        draw.doubleIn(0, 200),
                        style.servingC(),
                        true);
        Kitchen kitchen = Kitchen.at(draw.oneOf(-18.0, -21.0, -12.0));
        return new Case(
                BatchState.of(Mix.of(amounts), style, new DietRules(rules, asked), making, kitchen),
                kitchen);
    }

    private static void add(List<Amount> to, Set<Ingredient> used, Ingredient one, double g) {
        if (used.add(one)) {
            to.add(Amount.grams(ScaleRounding.roundedG(g), one));
        }
    }

    private static Map<BatchFault, Double> steps(BatchState state) {
        Map<BatchFault, Double> steps = new EnumMap<>(BatchFault.class);
        Faults.of(state).forEach(one -> steps.put(one.fault(), one.steps()));
        return steps;
    }

    @Cases(500)
    void aPlanKeepsItsPromises(Draw draw) {
        Case one = any(draw);
        BatchState before = one.state();
        Map<BatchFault, Double> was = steps(before);
        List<Plan> plans = Planner.plans(before, one.kitchen());
        assertEquals(was.isEmpty(), plans.isEmpty(), "a plan for each batch with a finding");
        assertTrue(plans.size() <= 3);
        for (Plan plan : plans) {
            recomputed(plan, one.kitchen());
            nothingNewOrWorse(plan, was);
            noLimitCrossed(plan);
            dietKept(plan);
            noOpposites(plan);
            fewAndWeighable(plan);
        }
    }

    /** The batch of the plan, computed again from its amounts, has exactly the faults left. */
    private static void recomputed(Plan plan, Kitchen kitchen) {
        Mix mix = plan.before().batch();
        for (AmountChange change : plan.changes()) {
            double g = mix.massG(change.ingredient()) + change.massG();
            Mix rest = mix.massG(change.ingredient()) > 0 ? mix.without(change.ingredient()) : mix;
            mix = g >= 0.05 ? rest.with(Amount.grams(g, change.ingredient())) : rest;
        }
        BatchState again =
                BatchState.of(
                        mix,
                        plan.after().style(),
                        plan.before().diet(),
                        plan.after().making(),
                        kitchen);
        assertEquals(
                plan.left().stream().map(left -> left.fault().fault()).toList(),
                Faults.of(again).stream().map(Finding::fault).toList(),
                () -> "the plan's claim: " + plan.changes());
    }

    private static void nothingNewOrWorse(Plan plan, Map<BatchFault, Double> was) {
        for (Plan.Left left : plan.left()) {
            BatchFault fault = left.fault().fault();
            boolean off = plan.before().diet().excludedFrom(plan.before().batch()).isEmpty();
            if (off) {
                assertTrue(
                        left.fault().steps() <= was.getOrDefault(fault, 0.0) + ROUNDING_STEPS,
                        () -> fault + " is new or worse after " + plan.changes());
            }
        }
    }

    private static void noLimitCrossed(Plan plan) {
        boolean cleared = !plan.before().diet().excludedFrom(plan.before().batch()).isEmpty();
        for (StyleQuantity quantity :
                List.of(
                        StyleQuantity.SALT,
                        StyleQuantity.ACID,
                        StyleQuantity.ALCOHOL,
                        StyleQuantity.GUM,
                        StyleQuantity.STARCH,
                        StyleQuantity.SWEETNESS)) {
            double limit = plan.after().style().range(quantity).most();
            double before = plan.before().of(quantity);
            if (!cleared && !plan.changes().isEmpty()) {
                assertTrue(
                        plan.after().of(quantity)
                                <= Math.max(before * AS_MUCH, limit)
                                        + ROUNDING_STEPS * quantity.step(),
                        () -> quantity + " crosses its limit: " + plan.changes());
            }
        }
    }

    private static void dietKept(Plan plan) {
        Mix before = plan.before().batch();
        Set<Allergen> known = EnumSet.noneOf(Allergen.class);
        known.addAll(before.allergens());
        known.addAll(plan.before().diet().asked());
        for (AmountChange change : plan.changes()) {
            if (change.massG() > 0) {
                assertTrue(known.containsAll(change.ingredient().allergens()), change::toString);
                assertFalse(plan.before().diet().excludes(change.ingredient()), change::toString);
                assertEquals(0, change.ingredient().composition().percent(Component.ALCOHOL));
                boolean animal =
                        List.of(Shelf.HONEY, Shelf.GELATINE, Shelf.MONO_AND_DIGLYCERIDES)
                                .contains(change.ingredient());
                assertTrue(!animal || before.massG(change.ingredient()) > 0, change::toString);
            }
        }
        if (plan.before().diet().rules().contains(DietRules.Rule.LESS_SUGAR)
                && plan.before().diet().excludedFrom(before).isEmpty()) {
            assertTrue(
                    plan.after().of(StyleQuantity.SUGARS)
                            <= plan.before().of(StyleQuantity.SUGARS) + 0.05,
                    () -> "more sugar: " + plan.changes());
        }
    }

    /** No ingredient twice, and no role both ways, apart from what the diet takes out. */
    private static void noOpposites(Plan plan) {
        Set<Ingredient> seen = new HashSet<>();
        Map<IngredientRole, Double> signs = new EnumMap<>(IngredientRole.class);
        for (AmountChange change : plan.changes()) {
            assertTrue(seen.add(change.ingredient()), () -> "twice: " + plan.changes());
            if (!plan.before().diet().excludes(change.ingredient())) {
                Double other =
                        signs.put(
                                IngredientRole.of(change.ingredient()),
                                Math.signum(change.massG()));
                assertEquals(null, other, () -> "one role twice: " + plan.changes());
            }
        }
    }

    private static void fewAndWeighable(Plan plan) {
        long own =
                plan.changes().stream()
                        .filter(change -> !plan.before().diet().excludes(change.ingredient()))
                        .count();
        assertTrue(own <= 3, () -> "more than three: " + plan.changes());
        double excludedG =
                plan.changes().stream()
                        .filter(change -> plan.before().diet().excludes(change.ingredient()))
                        .mapToDouble(change -> -change.massG())
                        .sum();
        assertTrue(
                plan.movedShare() <= 0.25 + excludedG / plan.before().pieces().mix().massG(),
                () -> "another recipe: " + plan.changes());
        for (AmountChange change : plan.changes()) {
            double g = Math.abs(change.massG());
            if (!plan.before().diet().excludes(change.ingredient())) {
                assertEquals(ScaleRounding.roundedG(g), g, 1e-9);
            }
        }
    }
}
