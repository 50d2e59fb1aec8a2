package coldwright.desk.brew.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.BatchFault;
import coldwright.batch.BatchFile.Method;
import coldwright.batch.BatchReader;
import coldwright.batch.Reckoning;
import coldwright.batch.ReckoningTree;
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
import java.util.Queue;

class BatchModelTest {
    private static final Story FIRST = Story.first(1);

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
    void eachFigureIsTheTerminals(Method method) throws BatchFault {
        String text = FILE.formatted(method.name().toLowerCase(java.util.Locale.ROOT));
        Map<String, Object> terminal = ReckoningTree.of(Reckoning.of(BatchReader.read("f", text)));

        BatchModel page = model(RecipeText.read("f", text).recipe());

        assertEquals(terminal, ReckoningTree.of(page.figures().get().orElseThrow()));
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
        Map<String, Object> terminal = ReckoningTree.of(Reckoning.of(BatchReader.read(job, text)));

        BatchModel page = model(RecipeText.read(job, text).recipe());

        Reckoning all = page.figures().get().orElseThrow();
        assertEquals(terminal, ReckoningTree.of(all));
        int shared = all.plan().freeze().holder().count(all.plan().volumeL());
        assertEquals(1, shared, "a part of the batch fits its vessel and is not parted again");
    }

    @Test
    void whatIsTakenIsNamedUntilItIsUndone() {
        BatchModel batch = model(Recipe.toBegin("x"));
        batch.take(batch.recipe().get().weighing(400), "half of it");
        assertEquals(List.of("half of it"), batch.story().get().taken());

        batch.undo();
        assertEquals(List.of(), batch.story().get().taken());
        batch.redo();
        assertEquals(List.of("half of it"), batch.story().get().taken());
    }

    @Test
    void whatIsKeptIsReadBackWithItsTargetsBoundsAndStory() throws BatchFault {
        Recipe recipe = RecipeText.read("f", FILE.formatted("churn")).recipe();
        Recipe typed = recipe.plus(new Line("2 tbps", "rum 40 %")).plus(new Line("", "sucr"));
        Story story =
                new Story(
                        3,
                        2,
                        List.of("icy", "hard"),
                        "scoopable at −18 °C",
                        List.of("Add 39 g glucose."));

        RecipeText.Read back = RecipeText.read("f", RecipeText.of(typed, story));

        assertEquals(typed, back.recipe());
        assertEquals(story, back.story());
    }

    @Test
    void howItWasKeptIsReadBack() throws BatchFault {
        Means means = Means.USUAL.kept(new Store("7", "3", "-6", "2"));
        Recipe kept = Recipe.toBegin("x").by(means);

        assertEquals(means, RecipeText.read("f", RecipeText.of(kept)).recipe().means());
        assertEquals(
                Store.UNSAID,
                RecipeText.read("f", RecipeText.of(Recipe.toBegin("x"))).recipe().means().store());
    }

    @Test
    void aBatchOfUnfinishedLinesAloneIsReadBackToo() throws BatchFault {
        Recipe typed = Recipe.toBegin("Empty").of(List.of(new Line("12", "sucrox")));

        Recipe back = RecipeText.read("f", RecipeText.of(typed, FIRST)).recipe();

        assertEquals(typed.lines(), back.lines());
    }

    @Test
    void spoonsAreGramsByDensityAndRefusedWhereTheyAreNotHonest() {
        Line rum = new Line("2 tbsp", "rum 40 %");

        double densityKgPerL = Shelf.RUM_40.densityKgPerL().orElseThrow();
        assertEquals(2 * 14.787 * densityKgPerL, rum.grams(Map.of()), 1e-9);
        assertEquals(0.5, Typed.of("½ cup").count());
        assertEquals(1.5, Typed.of("1 1/2 cups").count());
        assertEquals(
                "\"foo\" is no unit here; there are g, kg, tsp, tbsp, cup, fl oz, ml and l",
                new Line("3 foo", "water").fault(Map.of()).orElseThrow());
        assertTrue(new Line("1,5", "water").fault(Map.of()).orElseThrow().contains("1.5"));
    }

    @Test
    void whileALineIsWrongTheFiguresBeforeItStay() {
        BatchModel batch = model(Recipe.toBegin("x"));
        var before = batch.figures().get();

        batch.change("name 1", batch.recipe().get().with(1, new Line("150", "sucrox")));

        assertEquals(before, batch.figures().get());
        assertTrue(
                batch.recipe()
                        .get()
                        .lines()
                        .get(1)
                        .fault(Map.of())
                        .orElseThrow()
                        .contains("sucro"));
    }

    @Test
    void keysInOnePlaceAreUndoneTogetherAndMadeAgain() {
        BatchModel batch = model(Recipe.toBegin("x"));
        Recipe first = batch.recipe().get();
        for (String typed : List.of("1", "12", "120")) {
            batch.change("amount 1", batch.recipe().get().with(1, new Line(typed, "sucrose")));
        }
        Recipe last = batch.recipe().get();

        batch.undo();
        assertEquals(first, batch.recipe().get());
        assertFalse(batch.canUndo());
        batch.redo();
        assertEquals(last, batch.recipe().get());
    }

    @Test
    void ofManyChangesOnlyTheNewestIsReckonedToTheEnd() {
        Queue<Runnable> waiting = new ArrayDeque<>();
        BatchModel batch = new BatchModel(Recipe.toBegin("x"), FIRST, waiting::add, Runnable::run);
        for (int grams = 100; grams <= 200; grams++) {
            batch.change("a", batch.recipe().get().with(1, new Line("" + grams, "sucrose")));
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
        Recipe recipe = Recipe.toBegin("x").plus(new Line("2 tbsp", "rum 40 %"));

        Recipe half = recipe.weighing(recipe.totalG() / 2);

        assertEquals("1 tbsp", half.lines().get(3).amount());
        assertEquals("300 g", half.lines().get(0).amount());
    }

    @Test
    void aTotalTypedKeyByKeyRoundsOnce() {
        Recipe start = Recipe.toBegin("x");
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
        BatchModel batch = model(Recipe.toBegin("x").of(List.of(new Line("100", "sucrose"))));

        assertEquals(
                "the mix has no water, and water is what freezes; add water, milk or juice",
                batch.trouble().get());
    }
}
