package coldwright.desk.batch.model;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.FreezingSetup;
import coldwright.batch.Recipe;
import coldwright.batch.RecipeLine;
import coldwright.desk.batch.search.BatchGoal;
import coldwright.desk.batch.search.BatchGoal.GoalResult;
import coldwright.desk.batch.search.ProposedChange;
import coldwright.science.diagnosis.Diagnosis;
import coldwright.science.diagnosis.Symptom;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.LongStream;

/** The batch page on recipes that nobody would make: findings, tasting and wishes all answer. */
class OddRecipesTest {
    private static final int SEEDS = 4 * Integer.getInteger("laws.cases", 1);

    private static final List<Ingredient> EXTREMES =
            List.of(
                    Shelf.WATER,
                    Shelf.ETHANOL,
                    Shelf.SUCROSE,
                    Shelf.SALT,
                    Shelf.EGG_YOLK,
                    Shelf.BUTTER_OIL,
                    Shelf.SKIM_MILK_POWDER,
                    Shelf.WHISKY_43);

    private static void answers(String which, Recipe recipe) {
        String all = which + "\n" + recipe;
        try {
            BatchAnalysis now = BatchAnalysis.of(recipe);
            for (ProposedChange change : ProposedChange.of(now)) {
                assertFalse(change.words().contains("not a number"), all + change);
                BatchAnalysis.of(change.recipe());
            }
            for (Symptom symptom : Symptom.values()) {
                Diagnosis.of(now.state(), symptom)
                        .forEach(cause -> assertFalse(cause.why().contains("not a number"), all));
            }
            for (BatchGoal wish : BatchGoal.values()) {
                GoalResult answer = wish.of(recipe, 40);
                assertNotEquals(wish.name(), answer.goal(), all + answer.text());
            }
        } catch (RuntimeException e) {
            throw new AssertionError(all, e);
        }
    }

    private static Recipe recipe(List<RecipeLine> lines) {
        return Recipe.of("Odd", FreezingSetup.USUAL, lines);
    }

    @ParameterizedTest
    @CsvSource({"water, 72, ethanol, 28", "water, 93, ethanol, 7", "water, 100, salt, 0"})
    void waterAndOneThing(String first, String firstG, String second, String secondG) {
        answers(
                "named",
                recipe(List.of(new RecipeLine(firstG, first), new RecipeLine(secondG, second))));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, SEEDS);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyOddRecipe(long seed) {
        Random random = new Random(seed);
        List<RecipeLine> lines = new ArrayList<>();
        lines.add(new RecipeLine(grams(random, 500, 1000), "water"));
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            Ingredient one = EXTREMES.get(random.nextInt(EXTREMES.size()));
            lines.add(new RecipeLine(grams(random, 0.001, 150), one.name()));
        }
        answers("seed " + seed, recipe(lines));
    }

    private static String grams(Random random, double least, double most) {
        return String.format(Locale.ROOT, "%.4f", random.nextDouble(least, most));
    }
}
