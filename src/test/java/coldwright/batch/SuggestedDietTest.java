package coldwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.print.MakeSheet;
import coldwright.print.PaperSize;
import coldwright.science.balance.Balanced;
import coldwright.science.diagnosis.Diagnosis;
import coldwright.science.diagnosis.Symptom;
import coldwright.science.mix.Mix;
import coldwright.science.plan.Finding;
import coldwright.science.plan.Plan;
import coldwright.science.plan.PlanSentences;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.List;

/** Recipes whose advice must keep to what they are: no milk, no egg, no salt to soften. */
class SuggestedDietTest {
    /** Of the mass, %; the limit is written out here so that nobody moves it unseen. */
    private static final double MOST_SALT_PERCENT = 0.5;

    private static final double ROUNDING = 1e-4;

    private enum Recipe {
        OAT_AND_COCONUT(
                "name: Oat and coconut\nmethod: tub\n",
                "oat drink,500\ncanned coconut milk,300\nsucrose,110\nglucose,20\nsalt,2\n"),
        SORBET(
                "name: Blood-orange sorbet\nmethod: bag\n",
                "blood orange juice,600\nwater,200\nsucrose,60\nsalt,0.5\n"),
        CUSTARD(
                "name: Custard\nmethod: churn\n",
                "whole milk,500\nheavy cream,200\negg yolk,80\nsucrose,60\nsalt,0.5\n"),
        MILK_ONLY(
                "name: Thin milk ice\nmethod: tub\nair: 60 %\n",
                "whole milk,500\nwater,300\nsucrose,60\nvanilla extract,4\n"),
        UNKNOWN_PASTE(
                "name: Malt paste\nmethod: tub\nown: malt paste = water 30, sucrose 50\n",
                "water,500\nmalt paste,150\nsucrose,50\n");

        private final String text;

        Recipe(String head, String rows) {
            text = head + "\ningredient,grams\n" + rows;
        }

        BatchAnalysis reckoned() {
            return BatchAnalysis.of(RecipeFileReader.read(name(), text));
        }
    }

    private static List<Finding> causes(BatchAnalysis all) {
        return List.of(Symptom.values()).stream()
                .flatMap(symptom -> Diagnosis.of(all.state(), symptom).stream())
                .toList();
    }

    @ParameterizedTest
    @EnumSource(Recipe.class)
    void noFixBringsAnAllergenAlcoholOrTooMuchSalt(Recipe recipe) {
        BatchAnalysis all = recipe.reckoned();
        Mix was = all.mix();
        int fixes = 0;
        for (Plan plan : all.plans()) {
            Mix is = plan.after().batch();
            fixes++;
            assertTrue(was.allergens().containsAll(is.allergens()), plan::toString);
            assertTrue(is.saltPercent() <= MOST_SALT_PERCENT + ROUNDING, plan::toString);
            assertTrue(
                    is.alcoholPercent() * is.massG()
                            <= was.alcoholPercent() * was.massG() + ROUNDING,
                    plan::toString);
        }
        assertTrue(fixes > 0, "some plans are left to check");
    }

    @ParameterizedTest
    @EnumSource(
            value = Recipe.class,
            names = {"OAT_AND_COCONUT", "SORBET", "UNKNOWN_PASTE"})
    void theWordsOfAdviceNameNoMilkOrEgg(Recipe recipe) {
        BatchAnalysis all = recipe.reckoned();
        for (Finding cause : causes(all)) {
            String advice = cause.mend().replace("coconut milk", "");
            assertFalse(advice.matches("(?s).*\\b(milk|cream|butter|egg|yolk)\\b.*"), advice);
        }
    }

    @Test
    void milkWithoutEggIsNotToldToTakeYolk() {
        for (Finding cause : causes(Recipe.MILK_ONLY.reckoned())) {
            assertFalse(cause.mend().matches("(?s).*\\b(egg|yolk)\\b.*"), cause.mend());
        }
    }

    @Test
    void aPlanForTheMixWithoutMilkOrEggNamesNone() {
        for (Plan plan : Recipe.OAT_AND_COCONUT.reckoned().plans()) {
            String steps =
                    PlanSentences.steps(plan).toString().replaceAll("coconut (milk|cream)", "");
            assertFalse(steps.matches("(?s).*\\b(milk|cream|butter|egg|yolk)\\b.*"), steps);
        }
    }

    @ParameterizedTest
    @EnumSource(Recipe.class)
    void nothingPrintedSaysThatAllergensAreAbsent(Recipe recipe) {
        BatchAnalysis all = recipe.reckoned();
        for (String printed :
                List.of(
                        BatchAnalysisText.of(all),
                        BatchAnalysisTree.of(all).toString(),
                        MakeSheet.html(all, PaperSize.A4))) {
            String words = printed.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
            assertFalse(words.contains("none of the listed"), words);
            assertFalse(
                    words.matches("(?i).*\\b(no|none|without|free of) [a-z ]*allergen.*"), words);
            assertTrue(words.contains("Check "), words);
            assertTrue(words.contains("every label"), words);
        }
    }

    @Test
    void anOwnIngredientIsNamedAsUnknown() {
        String sentence = Recipe.UNKNOWN_PASTE.reckoned().report().declarations().get(0).english();
        assertTrue(sentence.contains("Not known: what is in malt paste"), sentence);
        String sheet = MakeSheet.html(Recipe.UNKNOWN_PASTE.reckoned(), PaperSize.A4);
        assertEquals(2, sheet.split("what is in malt paste", -1).length, sheet);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ",0,200", ",0,20"})
    void aBalanceStaysBelowTheLimitOfSalt(String bounds) {
        String columns = bounds.isEmpty() ? "ingredient" : "ingredient,min,max";
        String none = bounds.isEmpty() ? "" : ",,";
        Balanced found =
                BatchBalance.of(
                        RecipeFileReader.read(
                                "b",
                                """
                                target: ice at -12 °C 66 %%, fat 8 %%
                                total: 932 g

                                %s
                                whole milk%s
                                heavy cream%s
                                salted butter%s
                                sucrose%s
                                salt%s
                                """
                                        .formatted(
                                                columns,
                                                none,
                                                none,
                                                none,
                                                bounds.isEmpty() ? "" : ",0,60",
                                                bounds)));
        assertTrue(found.mix().saltPercent() <= MOST_SALT_PERCENT + ROUNDING, found::toString);
    }

    @Test
    void saltThatTheCookFixesOrAsksForStays() {
        String rows = "\nwater,,\nsucrose,,\nsalt,,%s\n";
        String head = "target: sucrose 20 %%%s\ntotal: 1000 g\n\ningredient,grams,fixed";
        Balanced fixed =
                BatchBalance.of(RecipeFileReader.read("b", (head + rows).formatted("", "8")));
        assertEquals(0.8 * 0.998, fixed.mix().saltPercent(), 1e-3);
        Balanced asked =
                BatchBalance.of(
                        RecipeFileReader.read("b", (head + rows).formatted(", salt 1 %", "")));
        assertTrue(asked.met(), asked::toString);
    }
}
