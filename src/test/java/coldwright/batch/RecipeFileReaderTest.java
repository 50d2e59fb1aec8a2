package coldwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.crystal.Method;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

class RecipeFileReaderTest {
    private static final String SORBET =
            """
            # the Tuesday class
            name: Blood-orange sorbet
            method: bag
            bath: ice 2000 g, salt 0.5 kg
            freezer: 0 °F
            air: 20 %
            own: house syrup = water 40, sucrose 60

            ingredient,grams
            blood orange juice,600
            "sucrose",150 g
            House Syrup, 0.05 kg
            """;

    @Test
    void readsABatch() {
        Recipe batch = RecipeFileReader.read("sorbet.txt", SORBET).recipe();
        assertEquals("Blood-orange sorbet", batch.name());
        assertEquals(Method.BAG, batch.method());
        assertEquals(new FreezingSetup.Bath(2000, 500), batch.bath().orElseThrow());
        assertEquals(-17.78, batch.freezerC(), 0.01);
        assertEquals(20, batch.airPercent());
        assertEquals(800, batch.mix().massG(), 1e-9);
        assertEquals(150, batch.mix().massG(Shelf.SUCROSE), 1e-9);
    }

    @Test
    void readsHowItWasKept() {
        String table = "ingredient,grams\nwater,5\n";
        assertEquals(
                new StorageConditions(7, 3, Optional.of(new StorageConditions.WarmSpell(-6, 2))),
                RecipeFileReader.read(
                                "b.txt",
                                "stored: 1 week, swinging 3 °C, warmed to −6 °C for 120 min\n"
                                        + table)
                        .recipe()
                        .stored()
                        .orElseThrow());
        assertEquals(
                new StorageConditions(0.5, 0, Optional.empty()),
                RecipeFileReader.read("b.txt", "stored: 12 h\n" + table)
                        .recipe()
                        .stored()
                        .orElseThrow());
        assertEquals(Optional.empty(), RecipeFileReader.read("b.txt", table).recipe().stored());
    }

    @Test
    void readsTargetsAndBounds() {
        Recipe batch =
                RecipeFileReader.read(
                                "plan.txt",
                                """
                        target: fat 14 %, milk solids not fat 10 %, ice at -12 °C 70 %
                        total: 100 kg

                        ingredient,min,max,fixed
                        heavy cream,,60 kg,
                        whole milk,10 kg,,
                        sucrose,,,15 kg
                        """)
                        .recipe();
        assertEquals(new RecipeTotal(100_000, false), batch.total().value().orElseThrow());
        assertEquals(3, batch.targets().size());
        assertEquals(70, batch.targets().get(2).value());
        assertEquals("ice at −12 °C", batch.targets().get(2).trait().words());
        assertEquals(60_000, batch.lines().get(0).mostG());
        assertEquals(10_000, batch.lines().get(1).leastG());
        assertEquals(15_000, batch.lines().get(2).grams());
    }

    static Stream<Arguments> faults() {
        return Stream.of(
                Arguments.of(
                        "",
                        "b.txt: the file is empty; it needs a table that begins with the line ingredient,grams"),
                Arguments.of(
                        "name: x\n",
                        "b.txt: the table is missing; after the head write the line ingredient,grams and then one ingredient a line"),
                Arguments.of(
                        "ingredient,grams\n",
                        "b.txt:1: the table lists nothing; write one ingredient a line below it"),
                Arguments.of(
                        "ingredient,grams\nwater,600,5\n",
                        "b.txt:2: this line has 3 values and the table 2 columns; write decimals with a point, and put a name that holds a comma in quotes"),
                Arguments.of(
                        "ingredient,grams\nwater,1\n\nwater,-5\n",
                        "b.txt:4: water is −5 g; an amount must be zero or more: leave the ingredient out instead"),
                Arguments.of(
                        "ingredient,grams\nwater,lots\n",
                        "b.txt:2: \"lots\" isn't an amount; write grams, or spoons and cups as in 2 tbsp"),
                Arguments.of(
                        "ingredient,grams\nwater,NaN\n",
                        "b.txt:2: \"NaN\" isn't an amount; write grams, or spoons and cups as in 2 tbsp"),
                Arguments.of(
                        "ingredient,grams\nwater,1e9\n",
                        "b.txt:2: \"1e9\" isn't an amount; write grams, or spoons and cups as in 2 tbsp"),
                Arguments.of(
                        "ingredient,grams\nwater,20000 kg\n",
                        "b.txt:2: 20000 kg is more than ten tonnes. Write a smaller amount."),
                Arguments.of(
                        "ingredient,grams\n,5\n",
                        "b.txt:2: this line names no ingredient; write its name before the comma"),
                Arguments.of(
                        "ingredient;grams\nwater;5\n",
                        "b.txt:1: the table isn't separated by commas; write it as ingredient,grams"),
                Arguments.of(
                        "ingredient,cups\nwater,5\n",
                        "b.txt:1: the table has a column \"cups\"; the columns are ingredient, grams, min, max, fixed, each once"),
                Arguments.of(
                        "colour: red\ningredient,grams\nwater,5\n",
                        "b.txt:1: there is no key \"colour\"; the keys are name, style, diet, method, bath, freezer, air, serving, stored, own, target, total"),
                Arguments.of(
                        "hello\ningredient,grams\nwater,5\n",
                        "b.txt:1: \"hello\" isn't a line of a head; write it as key: value, and leave a line empty before the table"),
                Arguments.of(
                        "air: 20 %\nair: 30 %\ningredient,grams\nwater,5\n",
                        "b.txt:2: air is already on line 1; keep one of the two"),
                Arguments.of(
                        "bath: ice 2000 g\ningredient,grams\nwater,5\n",
                        "b.txt:1: the bath has no salt, and ice alone stays at 0 °C, where no mix freezes; add about a quarter of the ice's weight in salt"),
                Arguments.of(
                        "freezer: 18 °C\ningredient,grams\nwater,5\n",
                        "b.txt:1: freezer is 18; it must be between −60 and 0 °C"),
                Arguments.of(
                        "stored: for long\ningredient,grams\nwater,5\n",
                        "b.txt:1: stored is \"for long\"; write it as: stored: 7 days, swinging 3 °C, warmed to -6 °C for 2 h"),
                Arguments.of(
                        "stored: swinging 3 °C\ningredient,grams\nwater,5\n",
                        "b.txt:1: stored has no days; write it as: stored: 7 days, swinging 3 °C, warmed to -6 °C for 2 h"),
                Arguments.of(
                        "stored: 7 days, swinging 30 °C\ningredient,grams\nwater,5\n",
                        "b.txt:1: swinging is 30; it must be between 0 and 10 °C"),
                Arguments.of(
                        "stored: 7 moons\ningredient,grams\nwater,5\n",
                        "b.txt:1: stored is given in \"moons\"; write it in days"),
                Arguments.of(
                        "stored: 7 days, warmed to 4 °C for 1 h\ningredient,grams\nwater,5\n",
                        "b.txt:1: warmed is 4; it must be between −40 and −0.5 °C"),
                Arguments.of(
                        "method: blender\ningredient,grams\nwater,5\n",
                        "b.txt:1: there is no method \"blender\"; the methods are bag, tub, shaken and churn"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void tellsWhatIsWrongInOneSentence(String text, String sentence) {
        assertEquals(
                sentence,
                assertThrows(
                                IllegalArgumentException.class,
                                () -> RecipeFileReader.read("b.txt", text))
                        .getMessage());
    }

    @Test
    void suggestsTheNearestIngredient() {
        String message =
                assertThrows(
                                IllegalArgumentException.class,
                                () ->
                                        RecipeFileReader.read(
                                                "b.txt",
                                                "ingredient,grams\nblood oragne juice,600\n"))
                        .getMessage();
        assertEquals("b.txt:2: ", message.substring(0, 9));
        assertEquals(true, message.contains("blood orange juice"), message);
    }

    @Test
    void refusesTenThousandLines() {
        String text = "ingredient,grams\n" + "water,1\n".repeat(10_000);
        assertEquals(
                "b.txt:202: the table has more than 200 ingredients; a batch may list at most that many",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> RecipeFileReader.read("b.txt", text))
                        .getMessage());
    }

    @Test
    void missesAmountsOnlyWhereTheyAreNeeded() {
        RecipeFile batch = RecipeFileReader.read("b.txt", "ingredient,grams\nwater,\nsucrose,0\n");
        assertEquals(
                "b.txt:2: water has no amount; write its grams after a comma",
                assertThrows(IllegalArgumentException.class, batch::mix).getMessage());
        RecipeFile nothing = RecipeFileReader.read("b.txt", "ingredient,grams\nwater,0\n");
        assertEquals(
                "b.txt: all amounts are zero; give at least one ingredient some grams",
                assertThrows(IllegalArgumentException.class, nothing::mix).getMessage());
    }

    @Test
    void readsWhatAnOlderWindowWrote() {
        RecipeFile file =
                RecipeFileReader.read(
                        "old.batch",
                        """
                        # batch: 3 after 2
                        # found: icy
                        # made for: scoopable at −18 °C
                        # taken: Add 39 g glucose.
                        # typed: 12 | sucrox
                        # typed:  | oat drink
                        name: Oat
                        method: bag
                        freezer: -18 °C
                        air: 0 %
                        stored: 7 days, swinging 3 °C, warmed to -6 °C for 2 h

                        ingredient,grams,min,max
                        whole milk,500,,
                        water,100,100,300
                        """);
        assertEquals(
                new BatchLineage(
                        3, 2, List.of("icy"), "scoopable at −18 °C", List.of("Add 39 g glucose.")),
                file.lineage());
        FreezingSetup setup =
                FreezingSetup.USUAL
                        .with(SetupField.DAYS, "7")
                        .with(SetupField.SWING, "3")
                        .with(SetupField.WARM, "-6")
                        .with(SetupField.WARM_FOR, "2");
        assertEquals(
                Recipe.of(
                        "Oat",
                        setup,
                        List.of(
                                new RecipeLine("500 g", "whole milk"),
                                new RecipeLine("100 g", "water").bound("100", "300", false),
                                new RecipeLine("12", "sucrox"),
                                new RecipeLine("", "oat drink"))),
                file.recipe());
        assertEquals(600, file.mix().massG());
        assertEquals(2, file.warnings().size());
        RecipeFile bare =
                RecipeFileReader.read("old.batch", "# typed: 12 | sucrox\n\ningredient,grams\n");
        assertEquals(List.of(new RecipeLine("12", "sucrox")), bare.recipe().lines());
    }

    @Test
    void readsABatchThatListsNothingYetIfAWindowWroteIt() {
        Recipe empty = Recipe.starter("x").of(List.of());

        String text = RecipeFileWriter.text(empty, BatchLineage.first(1));

        assertEquals(empty, RecipeFileReader.read("f", text).recipe());
    }

    @Test
    void keepsAFixedAmountFixed() {
        RecipeLine sucrose = new RecipeLine("150 g", "sucrose").bound("", "", true);
        Recipe recipe = Recipe.starter("x").with(1, sucrose);

        String text = RecipeFileWriter.text(recipe, BatchLineage.first(1));

        assertTrue(text.contains("ingredient,grams,min,max,fixed"), text);
        assertEquals(recipe, RecipeFileReader.read("f", text).recipe());
    }
}
