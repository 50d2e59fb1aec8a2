package coldwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.Band;
import coldwright.science.balance.AmountChange;
import coldwright.science.crystal.Method;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;
import coldwright.science.plan.BatchFault;
import coldwright.science.plan.BatchState;
import coldwright.science.plan.Faults;
import coldwright.science.plan.Finding;
import coldwright.science.plan.IngredientRole;
import coldwright.science.plan.Plan;
import coldwright.science.plan.Planner;
import coldwright.science.sensory.Firmness;
import coldwright.science.style.DietRules;
import coldwright.science.style.Pieces;
import coldwright.science.style.Style;
import coldwright.science.style.StyleQuantity;

import org.junit.jupiter.api.Test;

import java.util.ArrayList;
import java.util.List;

/** Twelve batches that once got advice which no cook would take. */
class TwelveCasesTest {
    private static final FreezingSetup CHURN = FreezingSetup.USUAL.by(Method.MACHINE);

    private static Recipe recipe(FreezingSetup setup, String... lines) {
        List<RecipeLine> all = new ArrayList<>();
        for (String one : lines) {
            int space = one.indexOf(' ');
            all.add(new RecipeLine(one.substring(0, space) + " g", one.substring(space + 1)));
        }
        return Recipe.of("A batch", setup, all);
    }

    private static Recipe oat() {
        return recipe(
                        CHURN.with(SetupField.AIR, "35"),
                        "500 oat drink",
                        "250 coconut milk",
                        "120 sucrose",
                        "2 guar gum",
                        "20 coconut oil")
                .owning("malt paste", "water 20, sucrose 30, other sugars 45, protein 3")
                .plus(new RecipeLine("40 g", "malt paste"));
    }

    private static BatchState state(Recipe recipe, Style style) {
        return new BatchKitchen(recipe).state(style, DietRules.AS_IT_IS);
    }

    private static List<Plan> plans(Recipe recipe, BatchState state) {
        return Planner.plans(state, new BatchKitchen(recipe));
    }

    private static List<BatchFault> faults(BatchState state) {
        return Faults.of(state).stream().map(Finding::fault).toList();
    }

    private static double moreG(Plan plan, Ingredient ingredient) {
        return plan.changes().stream()
                .filter(change -> change.ingredient().equals(ingredient))
                .mapToDouble(AmountChange::massG)
                .sum();
    }

    /** Once: 23 to 25 g of salt to make it scoopable at −18 °C. */
    @Test
    void scoopableFromTheFreezerIsNeverSalted() {
        BatchState served = state(oat(), Style.VEGAN);
        BatchState asked = served.servedAt(-18);
        assertEquals(BatchFault.MUCH_ICE, faults(asked).get(0));
        List<Plan> plans = plans(oat(), asked);
        assertFalse(plans.isEmpty());
        for (Plan plan : plans) {
            assertEquals(0, moreG(plan, Shelf.SALT) + moreG(plan, Shelf.SODIUM_CHLORIDE));
            assertTrue(plan.after().of(StyleQuantity.SALT) <= asked.of(StyleQuantity.SALT) + 0.001);
        }
        assertTrue(
                plans.stream().anyMatch(plan -> plan.after().making().servingC() > -15),
                "the cook is told to let it warm");
    }

    /** Once: a custard with 0.5 g of salt was to get 2.4 g more. */
    @Test
    void aCustardGetsNoSaltEither() {
        Recipe recipe =
                recipe(
                        CHURN,
                        "560 whole milk",
                        "180 cream 35 %",
                        "60 egg yolk",
                        "110 sucrose",
                        "0.5 salt");
        BatchState state = state(recipe, Style.CUSTARD);
        assertTrue(faults(state).contains(BatchFault.MUCH_ICE));
        for (Plan plan : plans(recipe, state)) {
            assertEquals(0, moreG(plan, Shelf.SALT));
        }
    }

    /** Once: 37.8 g of skim milk powder or egg yolk for a vegan mix. */
    @Test
    void aVeganBatchIsNeverOfferedMilkOrEgg() {
        Recipe lean =
                recipe(CHURN, "650 oat drink", "120 coconut milk", "90 sucrose", "1 guar gum");
        BatchState state = state(lean, Style.VEGAN);
        List<Plan> plans = plans(lean, state);
        assertFalse(plans.isEmpty());
        DietRules vegan = DietRules.named("vegan");
        for (Plan plan : plans) {
            assertEquals(List.of(), vegan.excludedFrom(plan.after().batch()));
        }
        assertTrue(plans.get(0).resolvesAll(), () -> plans.get(0).left().toString());
    }

    /** Once: 157 g cream, 32 g sugar, and 140 µm after two weeks. */
    @Test
    void ordinarySoftServeIsSound() {
        Recipe recipe =
                recipe(
                        CHURN.with(SetupField.AIR, "40"),
                        "710 whole milk",
                        "110 cream 35 %",
                        "55 skim milk powder",
                        "120 sucrose",
                        "20 glucose syrup powder");
        BatchState state = state(recipe, Style.SOFT_SERVE);
        assertEquals(6, state.of(StyleQuantity.FAT), 0.6);
        assertEquals(12, state.of(StyleQuantity.MSNF), 0.6);
        assertEquals(-6, state.making().servingC());
        assertEquals(List.of(), faults(state));
        BatchReport report =
                BatchAnalysis.of(recipe.meant(RecipeIntent.NONE.withStyle("soft serve"))).report();
        assertEquals(
                report.fact("drawn_mean_micrometres").number(),
                report.fact("tasted_mean_micrometres").number());
        assertTrue(report.fact("verdict").sentence().contains("at draw"));
    }

    /** Once: faulted for being hard. */
    @Test
    void aLollyMayBeHard() {
        Recipe recipe =
                recipe(CHURN.by(Method.STILL_TUB), "700 apple juice", "50 sucrose", "250 water");
        assertEquals(List.of(), faults(state(recipe, Style.LOLLY)));
    }

    /** Once: 92.7 g sucrose in, 12.9 g honey out as too sweet, or 249 g of cream. */
    @Test
    void aLeanFrozenYogurtGetsOnePlanThatAgreesWithItself() {
        Recipe recipe = recipe(CHURN, "800 low-fat yogurt", "60 sucrose", "60 honey", "60 water");
        BatchState state = state(recipe, Style.FROZEN_YOGURT);
        Plan plan = plans(recipe, state).get(0);
        assertTrue(plan.resolvesAll(), () -> plan.left().toString());
        assertTrue(plan.movedShare() < 0.12, plan.changes()::toString);
        boolean sugarIn =
                plan.changes().stream()
                        .anyMatch(
                                change ->
                                        change.massG() > 0
                                                && IngredientRole.of(change.ingredient())
                                                        == IngredientRole.SUGAR);
        assertFalse(sugarIn && moreG(plan, Shelf.HONEY) < 0, plan.changes()::toString);
    }

    /** Once: the raisins' sugar counted as syrup, and 78 of 90 g of rum were to go. */
    @Test
    void raisinsAreFoldedIn() {
        Recipe recipe =
                recipe(
                                CHURN,
                                "520 whole milk",
                                "250 cream 35 %",
                                "80 egg yolk",
                                "110 sucrose",
                                "90 rum 40 %")
                        .owning("raisins", "water 15, glucose 28, fructose 31, fibre 4")
                        .plus(new RecipeLine("120 g", "raisins"));
        Pieces pieces = Pieces.of(recipe.mix());
        assertEquals(1, pieces.folded().size());
        assertEquals(120 / 1170.0 * 100, pieces.sharePercent(), 1e-9);
        assertEquals(7.08, pieces.sugarGivenUpG().orElseThrow(), 0.01);
        BatchState state = state(recipe, Style.ADULT);
        for (Plan plan : plans(recipe, state)) {
            assertTrue(moreG(plan, Shelf.RUM_40) > -45, plan.changes()::toString);
            assertEquals(
                    120,
                    plan.after().pieces().folded().get(0).massG(),
                    "the raisins stay as they are");
        }
    }

    /** Once: "nothing that binds water … cook egg yolk into it". */
    @Test
    void yolkStabilises() {
        Recipe recipe =
                recipe(CHURN, "500 whole milk", "240 cream 35 %", "105 egg yolk", "155 sucrose");
        BatchState state = state(recipe, Style.CUSTARD);
        assertEquals(10.5, 100 * 105 / state.batch().massG(), 0.01);
        assertTrue(state.of(StyleQuantity.STABILITY) > 0.3);
        assertFalse(faults(state).contains(BatchFault.NO_STABILISER));
    }

    /** Once: never soft-serve, yet "expect it to be hard", crystals "smooth 36 µm". */
    @Test
    void aBathThatCantFreezeItIsTheFirstFinding() {
        Recipe recipe =
                recipe(
                        FreezingSetup.USUAL.with(SetupField.ICE, "200").with(SetupField.SALT, "50"),
                        "600 blood orange juice",
                        "150 sucrose",
                        "50 water",
                        "2 locust bean gum");
        BatchState state = state(recipe, Style.SORBET);
        assertFalse(state.frozen().freezes());
        assertEquals(List.of(BatchFault.SMALL_BATH), faults(state));
        Finding found = Faults.of(state).get(0);
        assertEquals(200, found.value());
        assertTrue(found.range().least() > 400, "it takes more ice");
        assertTrue(state.frozen().crystalsUm().isEmpty(), "no verdict on crystals");
        BatchAnalysis all = BatchAnalysis.of(recipe);
        assertTrue(all.crystals().isEmpty(), "nor in the report");
        assertEquals(1, all.report().findings().size());
        Plan plan = plans(recipe, state).get(0);
        assertTrue(plan.changes().isEmpty());
        assertTrue(plan.after().frozen().freezes());
        assertTrue(plan.after().making().iceG() >= found.range().least());
        assertTrue(plan.resolvesAll());
    }

    /** Once, at 0 % ice: "expect ice you can feel". */
    @Test
    void whatDoesNotFreezeHasNoCrystals() {
        Recipe recipe =
                recipe(
                        FreezingSetup.USUAL.by(Method.STILL_TUB),
                        "200 whole milk",
                        "150 sucrose",
                        "500 rum 40 %");
        BatchState state = state(recipe, Style.ADULT);
        assertFalse(state.frozen().freezes());
        assertTrue(state.frozen().crystalsUm().isEmpty());
        assertFalse(faults(state).contains(BatchFault.COARSE_CRYSTALS));
        assertFalse(faults(state).contains(BatchFault.STORAGE));
        assertEquals(BatchFault.LOW_FREEZING_POINT, faults(state).get(0));
    }

    /** Once: a still tub's mean crystal shrank in store. */
    @Test
    void storageNeverMakesCrystalsSmaller() {
        for (Method method : Method.values()) {
            Recipe recipe =
                    recipe(
                            FreezingSetup.USUAL.by(method),
                            "480 whole milk",
                            "240 heavy cream",
                            "90 egg yolk",
                            "160 sucrose");
            BatchState state = state(recipe, Style.CUSTARD);
            Band drawn = state.frozen().drawnUm().orElseThrow();
            Band kept = state.frozen().crystalsUm().orElseThrow();
            assertTrue(kept.middle() >= drawn.middle(), method + ": " + drawn + " to " + kept);
            BatchReport report = BatchAnalysis.of(recipe).report();
            double night = report.fact("after_a_night_mean_micrometres").number();
            assertTrue(
                    night >= report.fact("drawn_mean_micrometres").number(),
                    method + " in the report");
            assertTrue(
                    report.fact("after_two_weeks_mean_micrometres").number() >= night,
                    method + " after two weeks");
        }
    }

    /** Once: "scoopable" and "too much of it is ice" of the same −12 °C. */
    @Test
    void firmnessAndFindingsAgree() {
        for (double sugar = 60; sugar <= 320; sugar += 5) {
            Mix mix =
                    Mix.of(
                            coldwright.science.mix.Amount.grams(560, Shelf.WHOLE_MILK),
                            coldwright.science.mix.Amount.grams(240, Shelf.CREAM_35),
                            coldwright.science.mix.Amount.grams(sugar, Shelf.SUCROSE));
            BatchState state =
                    BatchState.of(
                            mix,
                            Style.ICE_CREAM,
                            DietRules.AS_IT_IS,
                            new BatchKitchen(recipe(CHURN, "1 water")).making(Style.ICE_CREAM),
                            coldwright.science.plan.Kitchen.at(-18));
            Firmness firmness = Firmness.of(mix, state.making().servingC());
            List<BatchFault> faults = faults(state);
            assertFalse(
                    firmness == Firmness.SCOOPABLE
                            && (faults.contains(BatchFault.MUCH_ICE)
                                    || faults.contains(BatchFault.LITTLE_ICE)),
                    sugar + " g: " + firmness + " and " + faults);
        }
    }
}
