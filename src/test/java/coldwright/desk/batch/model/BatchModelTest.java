package coldwright.desk.batch.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchAnalysisTree;
import coldwright.batch.BatchLineage;
import coldwright.batch.FreezingSetup;
import coldwright.batch.Recipe;
import coldwright.batch.RecipeFile;
import coldwright.batch.RecipeFileReader;
import coldwright.batch.RecipeFileWriter;
import coldwright.batch.RecipeLine;
import coldwright.batch.SetupField;
import coldwright.science.crystal.Method;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;

class BatchModelTest {
    private static final BatchLineage FIRST = BatchLineage.first(1);

    /** A file with a spoonless table, an own ingredient and a bath, as a cook may bring it. */
    private static final String FILE =
            """
            name: Oat and malt
            method: %s
            bath: ice 2000 g, salt 500 g
            freezer: -20 °C
            air: 15 %%
            own: house syrup = water 40, sucrose 60
            target: fat 5 %%

            ingredient,grams,min,max
            whole milk,500,,
            oat drink,200,100,300
            house syrup,180.25,,
            malted milk powder,40,,
            """;

    private static BatchModel model(Recipe recipe) {
        return new BatchModel(recipe, FIRST, Runnable::run, Runnable::run);
    }

    @ParameterizedTest
    @EnumSource(Method.class)
    void eachFigureIsTheTerminals(Method method) {
        String text = FILE.formatted(FreezingSetup.word(method));
        Map<String, Object> terminal =
                BatchAnalysisTree.of(BatchAnalysis.of(RecipeFileReader.read("f", text)));

        BatchModel page = model(RecipeFileReader.read("f", text).recipe());

        assertEquals(terminal, BatchAnalysisTree.of(page.figures().get().orElseThrow()));
        assertTrue(page.figuresAreOfNow());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lean-sorbet-in-a-bag",
                "rich-custard-in-a-tub",
                "liqueur-that-will-not-set",
                "after-heat-shock",
                "class-of-thirty"
            })
    void eachFigureOfAWholeJobIsTheTerminals(String job) throws Exception {
        Path file = Path.of("src/test/resources/jobs", job + ".batch");
        String text = Files.readString(file);
        Map<String, Object> terminal =
                BatchAnalysisTree.of(BatchAnalysis.of(RecipeFileReader.read(job, text)));

        BatchModel page = model(RecipeFileReader.read(job, text).recipe());

        BatchAnalysis all = page.figures().get().orElseThrow();
        assertEquals(terminal, BatchAnalysisTree.of(all));
        int shared = all.plan().freeze().holder().count(all.plan().volumeL());
        assertEquals(1, shared, "a part of the batch fits its vessel and is not parted again");
    }

    @Test
    void whatIsTakenIsNamedUntilItIsUndone() {
        BatchModel batch = model(Recipe.starter("x"));
        batch.take(batch.recipe().get().weighing(400), "half of it");
        assertEquals(List.of("half of it"), batch.lineage().get().taken());

        batch.undo();
        assertEquals(List.of(), batch.lineage().get().taken());
        batch.redo();
        assertEquals(List.of("half of it"), batch.lineage().get().taken());
    }

    @Test
    void whatIsKeptIsReadBackWithItsTargetsBoundsAndStory() {
        Recipe recipe = RecipeFileReader.read("f", FILE.formatted("churn")).recipe();
        Recipe typed =
                recipe.plus(new RecipeLine("2 tbps", "rum 40 %")).plus(new RecipeLine("", "sucr"));
        BatchLineage batchLineage =
                new BatchLineage(
                        3,
                        2,
                        List.of("icy", "hard"),
                        "scoopable at −18 °C",
                        List.of("Add 39 g glucose."));

        RecipeFile back = RecipeFileReader.read("f", RecipeFileWriter.text(typed, batchLineage));

        assertEquals(typed, back.recipe());
        assertEquals(batchLineage, back.lineage());
    }

    @Test
    void howItWasKeptIsReadBack() {
        FreezingSetup freezingSetup =
                FreezingSetup.USUAL
                        .with(SetupField.DAYS, "7")
                        .with(SetupField.SWING, "3")
                        .with(SetupField.WARM, "-6")
                        .with(SetupField.WARM_FOR, "2");
        Recipe kept = Recipe.starter("x").by(freezingSetup);

        assertEquals(
                freezingSetup,
                RecipeFileReader.read("f", RecipeFileWriter.text(kept, FIRST)).recipe().setup());
        assertEquals(
                Optional.empty(),
                RecipeFileReader.read("f", RecipeFileWriter.text(Recipe.starter("x"), FIRST))
                        .recipe()
                        .stored());
    }

    @Test
    void aBatchOfUnfinishedLinesAloneIsReadBackToo() {
        Recipe typed = Recipe.starter("Empty").of(List.of(new RecipeLine("12", "sucrox")));

        Recipe back = RecipeFileReader.read("f", RecipeFileWriter.text(typed, FIRST)).recipe();

        assertEquals(typed.lines(), back.lines());
    }

    @Test
    void anUnfinishedLineKeepsItsLeastAndMost() {
        RecipeLine bound = new RecipeLine("", "oat drink").bound("100", "300", false);
        Recipe typed = Recipe.starter("Oat").plus(bound);

        Recipe back = RecipeFileReader.read("f", RecipeFileWriter.text(typed, FIRST)).recipe();

        assertEquals(typed.lines(), back.lines());
    }

    @Test
    void anUnfinishedLineWithALeastIsReadBackAlsoIfItIsTheOnlyOne() {
        RecipeLine bound = new RecipeLine("", "oat drink").bound("100", "300", false);
        Recipe typed = Recipe.starter("Oat").of(List.of(bound));

        Recipe back = RecipeFileReader.read("f", RecipeFileWriter.text(typed, FIRST)).recipe();

        assertEquals(typed.lines(), back.lines());
    }

    @Test
    void aFieldThatIsWrongIsReadBackToo() {
        Recipe typed = Recipe.starter("x");
        Recipe wrong = typed.by(typed.setup().with(SetupField.FREEZER, "cold"));

        Recipe back = RecipeFileReader.read("f", RecipeFileWriter.text(wrong, FIRST)).recipe();

        assertEquals(wrong.setup(), back.setup());
    }

    @Test
    void spoonsAreGramsByDensityAndRefusedWhereTheyAreNotHonest() {
        RecipeLine rum = new RecipeLine("2 tbsp", "rum 40 %");

        double densityKgPerL = Shelf.RUM_40.densityKgPerL().orElseThrow();
        assertEquals(2 * 14.787 * densityKgPerL, rum.grams(), 1e-9);
        double cupG = new RecipeLine("1 cup", "orange juice").grams();
        assertEquals(248, cupG, 0.5);
        assertEquals(0.5 * cupG, new RecipeLine("½ cup", "orange juice").grams(), 1e-9);
        assertEquals(1.5 * cupG, new RecipeLine("1 1/2 cups", "orange juice").grams(), 1e-9);
        assertEquals(72, new RecipeLine("4 pieces", "egg yolk").grams(), 1e-9);
        assertEquals("72 g", new RecipeLine("4 pieces", "egg yolk").weighs().orElseThrow().shown());
        assertEquals("Grams or pieces?", new RecipeLine("4", "egg yolk").fault().orElseThrow());
        assertEquals(
                "\"3 foo\" isn't an amount; write grams, or spoons and cups as in 2 tbsp",
                new RecipeLine("3 foo", "water").fault().orElseThrow());
        assertEquals(1.5, new RecipeLine("1,5", "water").grams(), 1e-9);
    }

    @Test
    void whileALineIsWrongTheFiguresBeforeItStay() {
        BatchModel batch = model(Recipe.starter("x"));
        var before = batch.figures().get();

        batch.change("name 1", batch.recipe().get().with(1, new RecipeLine("150", "sucrox")));

        assertEquals(before, batch.figures().get());
        assertTrue(batch.recipe().get().lines().get(1).fault().orElseThrow().contains("sucro"));
    }

    @Test
    void keysInOnePlaceAreUndoneTogetherAndMadeAgain() {
        BatchModel batch = model(Recipe.starter("x"));
        Recipe first = batch.recipe().get();
        for (String typed : List.of("1", "12", "120")) {
            batch.change(
                    "amount 1", batch.recipe().get().with(1, new RecipeLine(typed, "sucrose")));
        }
        Recipe last = batch.recipe().get();

        batch.undo();
        assertEquals(first, batch.recipe().get());
        batch.undo();
        assertEquals(first, batch.recipe().get());
        batch.redo();
        assertEquals(last, batch.recipe().get());
    }

    @Test
    void ofManyChangesOnlyTheNewestIsReckonedToTheEnd() {
        Queue<Runnable> waiting = new ArrayDeque<>();
        BatchModel batch = new BatchModel(Recipe.starter("x"), FIRST, waiting::add, Runnable::run);
        for (int grams = 100; grams <= 200; grams++) {
            batch.change("a", batch.recipe().get().with(1, new RecipeLine("" + grams, "sucrose")));
        }
        int pieces = 0;
        while (!waiting.isEmpty()) {
            waiting.remove().run();
            pieces++;
        }

        assertEquals(200, batch.figures().get().orElseThrow().mix().massG(Shelf.SUCROSE));
        assertEquals(2, pieces);
    }

    @Test
    void aTotalScalesAllLinesAndSpoonsToo() {
        Recipe recipe = Recipe.starter("x").plus(new RecipeLine("2 tbsp", "rum 40 %"));

        Recipe half = recipe.weighing(recipe.massG() / 2);

        assertEquals("1 tbsp", half.lines().get(3).amount().text());
        assertEquals("300 g", half.lines().get(0).amount().text());
    }

    @Test
    void aTotalTypedKeyByKeyRoundsOnce() {
        Recipe start = Recipe.starter("x");
        BatchModel page = model(start);
        for (double typed : new double[] {1, 12, 120, 1200}) {
            page.change("total", page.from("total").weighing(typed));
        }
        assertEquals(start.weighing(1200), page.recipe().get());
        page.undo();
        assertEquals(start, page.recipe().get());
        assertEquals(start, page.from("total"));
    }

    @Test
    void aBatchWithoutWaterSaysSo() {
        BatchModel batch = model(Recipe.starter("x").of(List.of(new RecipeLine("100", "sucrose"))));

        assertEquals(
                "the mix has no water, and water is what freezes; add water, milk or juice",
                batch.trouble().get());
    }
}
