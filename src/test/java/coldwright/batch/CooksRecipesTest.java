package coldwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.balance.AmountChange;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;
import coldwright.science.plan.BatchFault;
import coldwright.science.plan.Finding;
import coldwright.science.plan.IngredientRole;
import coldwright.science.plan.Plan;
import coldwright.science.plan.PlanSentences;
import coldwright.science.style.Style;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Recipes as cooks write them, from memory, and whether a cook would take the advice. */
class CooksRecipesTest {
    private static final String BUTTERMILK =
            """
            Lemon buttermilk sherbet

            Juice and zest of 3 lemons
            1 cup sugar
            2 cups buttermilk
            1/2 cup whole milk
            pinch of salt
            """;

    private static final String BANANA =
            """
            Banana and peanut ice

            4 ripe bananas
            200 ml oat drink
            3 tbsp peanut butter
            2 tbsp maple syrup
            """;

    private static final String SCHOKOLADE =
            """
            Schokoladeneis

            Zutaten:
            500 ml Milch
            250 g Sahne
            4 Eigelb
            120 g Zucker
            150 g Zartbitterschokolade
            1 Prise Salz
            """;

    private static final String PLUM =
            """
            Plum sorbet

            800 g plums
            150 g sugar
            120 ml water
            2 tbsp vodka
            juice of half a lemon
            """;

    private static final String CARAMEL =
            """
            Salted caramel and vanilla, no eggs

            400 ml whole milk
            300 ml heavy cream
            180 g sugar
            1 tsp salt
            1 tbsp corn starch
            1 tsp vanilla extract
            """;

    private static BatchAnalysis of(String text) {
        return BatchAnalysis.of(RecipeFileReader.read("a page", text));
    }

    private static BatchAnalysis of(String head, String table) {
        return of(head + "\n\ningredient,grams\n" + table);
    }

    private static Set<BatchFault> faults(BatchAnalysis all) {
        return all.report().findings().stream().map(Finding::fault).collect(Collectors.toSet());
    }

    private static Set<Ingredient> added(BatchAnalysis all) {
        return all.plans().stream()
                .flatMap(plan -> plan.changes().stream())
                .filter(change -> change.massG() > 0)
                .map(AmountChange::ingredient)
                .collect(Collectors.toSet());
    }

    /** Churning is all that these three lack; nobody is told to change the recipe. */
    @Test
    void aSoundRecipeInAStillTubIsToBeStirredAndNothingElse() {
        for (String text : List.of(BUTTERMILK, SCHOKOLADE)) {
            BatchAnalysis all = of(text);
            assertEquals(Set.of(BatchFault.COARSE_CRYSTALS), faults(all), text);
            for (Plan plan : all.plans()) {
                assertEquals(List.of(), plan.changes());
                assertTrue(plan.resolvesAll());
            }
        }
    }

    @Test
    void aBananaIceIsVeganAndGetsASoftSugar() {
        BatchAnalysis all = of(BANANA);
        assertEquals(Style.VEGAN, all.state().style());
        assertEquals(Set.of(Shelf.DEXTROSE_MONOHYDRATE), added(all));
    }

    /** Once: 4.1 g of locust bean gum, as solids. */
    @Test
    void aThinSorbetGetsSugarAndNoGum() {
        BatchAnalysis all = of(PLUM);
        assertTrue(faults(all).contains(BatchFault.FEW_SOLIDS));
        assertFalse(all.plans().isEmpty());
        for (Ingredient one : added(all)) {
            assertTrue(
                    Set.of(IngredientRole.SUGAR, IngredientRole.DEXTROSE, IngredientRole.SYRUP)
                            .contains(IngredientRole.of(one)),
                    one::name);
        }
    }

    @Test
    void aSweetCaramelGetsLessSugarAndNoMoreSalt() {
        BatchAnalysis all = of(CARAMEL);
        assertTrue(faults(all).contains(BatchFault.MUCH_SWEETNESS));
        for (Plan plan : all.plans()) {
            assertTrue(plan.resolvesAll());
            assertTrue(plan.after().pieces().mix().sugarsPercent() < 21.5);
        }
        assertFalse(added(all).contains(Shelf.SALT));
    }

    /** Once: 64 g of maltodextrin. */
    @Test
    void coffeeWithRumGetsWhatAShopSells() {
        BatchAnalysis all =
                of(
                        "name: Coffee with rum\nmethod: shaken",
                        "espresso,120\nwhole milk,400\ncream 35 %,200\n"
                                + "sweetened condensed milk,120\nsucrose,60\nrum 40 %,40");
        assertTrue(all.plans().get(0).resolvesAll());
        assertFalse(added(all).contains(Shelf.MALTODEXTRIN));
        assertTrue(added(all).contains(Shelf.SKIM_MILK_POWDER));
    }

    /** Once: 0.7 g of gum for a sorbet that is eaten within the week. */
    @Test
    void theStarterNeedsNoGum() {
        String juice = "blood orange juice,600\nsucrose,150\nwater,50";
        assertEquals(Set.of(), faults(of("name: Blood-orange sorbet\nmethod: bag", juice)));
        BatchAnalysis kept = of("name: Blood-orange sorbet\nmethod: bag\nstored: 30 days", juice);
        assertTrue(faults(kept).contains(BatchFault.NO_STABILISER), () -> faults(kept).toString());
    }

    /** Honey is there for its taste: it isn't swapped for sugar. */
    @Test
    void honeyStays() {
        BatchAnalysis all =
                of(
                        "name: Lean frozen yogurt\nmethod: churn",
                        "low-fat yogurt,800\nsucrose,60\nhoney,60\nwater,60");
        for (Plan plan : all.plans()) {
            assertEquals(60, plan.after().batch().massG(Shelf.HONEY), plan.changes()::toString);
        }
    }

    /** Once: take out a fifth of the rum, and it still doesn't freeze. */
    @Test
    void halfRumIsAnotherRecipeAndNoPlanPretendsOtherwise() {
        BatchAnalysis all =
                of("name: Half rum\nmethod: tub", "whole milk,200\nsucrose,150\nrum 40 %,500");
        assertFalse(faults(all).contains(BatchFault.LITTLE_ICE), "that follows from the first");
        Plan plan = all.plans().get(0);
        assertEquals(List.of(), PlanSentences.steps(plan));
        assertEquals(
                Plan.Why.ANOTHER_RECIPE,
                plan.left().stream()
                        .filter(left -> left.fault().fault() == BatchFault.MUCH_ALCOHOL)
                        .findFirst()
                        .orElseThrow()
                        .why());
    }

    /** Once: "may be called water ice" at 12.9 % fat, and a dozen lines of names. */
    @Test
    void namesAreOneLineAndOnlyThoseOfTheStyle() {
        String vegan =
                BatchAnalysisText.of(
                        of(
                                "name: Oat and coconut\nmethod: churn\nstyle: vegan",
                                "oat drink,500\ncoconut milk,330\nsucrose,120\nguar gum,2"));
        assertFalse(vegan.contains("called"), vegan);
        String soft =
                BatchAnalysisText.of(
                        of(
                                "name: Soft serve\nmethod: churn",
                                "whole milk,710\ncream 35 %,110\nskim milk powder,55\nsucrose,130"));
        assertEquals(1, soft.lines().filter(line -> line.contains("be called")).count(), soft);
        assertTrue(soft.contains("served at −6 °C"), soft);
    }

    @Test
    void softServeIsShownAtItsOwnTemperature() {
        BatchPreview soft =
                of(
                                "name: Soft serve\nmethod: churn",
                                "whole milk,710\ncream 35 %,110\nskim milk powder,55\nsucrose,130")
                        .preview();
        assertEquals(-6, soft.servingC());
        assertEquals(
                soft.curve().icePercentAt(-6),
                soft.report().fact("serving_ice_percent_of_water").number());
    }
}
