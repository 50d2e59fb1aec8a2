package coldwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.science.crystal.Method;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** A recipe that is written and read is the same recipe, whatever was typed into it. */
class RecipeFileLawsTest {
    /** A file has six decimals of a gram for what is measured in spoons. */
    private static final double WRITTEN_G = 1e-6;

    private static final BatchLineage FIRST = BatchLineage.first(1);

    private static String number(Draw draw, double least, double most) {
        return BigDecimal.valueOf(draw.doubleIn(least, most))
                .setScale(draw.intIn(0, 6), RoundingMode.DOWN)
                .toPlainString();
    }

    /** What a field keeps: one line without space around it. */
    private static String typed(Draw draw, int most) {
        return draw.text(most).replaceAll("\\R+", " ").strip();
    }

    private static RecipeLine finished(Draw draw) {
        Ingredient one = draw.oneOf(Shelf.all());
        return new RecipeLine(
                number(draw, 0, 1000) + draw.oneOf(" g", " kg", " mg", "kg"), one.name());
    }

    private static RecipeLine line(Draw draw) {
        RecipeLine any =
                draw.from(
                        RecipeFileLawsTest::finished,
                        one -> new RecipeLine("", one.oneOf(Shelf.all()).name()),
                        one -> new RecipeLine(typed(one, 12), typed(one, 30)),
                        one -> new RecipeLine(typed(one, 12), one.oneOf(Shelf.all()).name()),
                        one -> finished(one).withAmount(typed(one, 5)));
        // a bare number is read with its g, and spoons by their grams: a law of their own below
        boolean weighed = any.amount().text().matches("[0-9.]+ *(g|kg|mg)");
        RecipeLine bare = any.counts() && !weighed ? finished(draw) : any;
        return draw.intIn(0, 2) > 0
                ? bare
                : bare.bound(
                        draw.from(one -> "", one -> number(one, 0, 500), one -> typed(one, 5)),
                        draw.from(one -> "", one -> number(one, 500, 1000) + " kg"),
                        draw.anyBoolean() && bare.counts());
    }

    private static FreezingSetup setup(Draw draw) {
        FreezingSetup setup = FreezingSetup.TUB.by(draw.oneOf(Method.values()));
        for (SetupField field : SetupField.values()) {
            String text =
                    draw.from(
                            one -> "",
                            one -> number(one, -40, 0),
                            one -> number(one, 0, 20),
                            one -> typed(one, 8));
            if (!text.isEmpty()) {
                setup = setup.with(field, text);
            }
        }
        return setup;
    }

    private static Recipe recipe(Draw draw) {
        List<RecipeLine> lines = new ArrayList<>(draw.listOf(0, 12, RecipeFileLawsTest::line));
        lines.removeIf(RecipeLine::isBlank);
        Recipe recipe = Recipe.of("x" + typed(draw, 20), setup(draw), lines);
        return draw.anyBoolean()
                ? recipe
                : recipe.owning("house, syrup", "water 40, sucrose 60")
                        .plus(new RecipeLine("12.5 g", "House, Syrup"));
    }

    private static BatchLineage lineage(Draw draw) {
        return new BatchLineage(
                draw.intIn(1, 999_999),
                draw.intIn(0, 999_999),
                draw.listOf(0, 3, one -> "a" + typed(one, 12)),
                typed(draw, 12),
                draw.listOf(0, 3, one -> "a" + typed(one, 12)));
    }

    @Cases(400)
    void whatIsWrittenIsReadAsItWas(Draw draw) {
        Recipe recipe = draw.one(RecipeFileLawsTest::recipe);
        BatchLineage lineage = draw.one(RecipeFileLawsTest::lineage);
        String text = RecipeFileWriter.text(recipe, lineage);

        RecipeFile back = RecipeFileReader.read("f", text);

        assertEquals(recipe.setup(), back.recipe().setup(), text);
        for (int i = 0; i < recipe.lines().size(); i++) {
            assertEquals(recipe.lines().get(i), back.recipe().lines().get(i), text);
        }
        assertEquals(recipe, back.recipe(), text);
        assertEquals(lineage, back.lineage(), text);
        assertEquals(text, RecipeFileWriter.text(back.recipe(), back.lineage()));
    }

    @Cases(100)
    void spoonsAndBareNumbersAreReadAsTheSameGrams(Draw draw) {
        Recipe recipe =
                Recipe.starter("x")
                        .plus(
                                new RecipeLine(
                                        draw.intIn(1, 20)
                                                + draw.oneOf(" tbsp", " tsp", "/3 cup", ""),
                                        draw.oneOf("rum 40 %", "water", "whole milk")));

        Recipe back = RecipeFileReader.read("f", RecipeFileWriter.text(recipe, FIRST)).recipe();

        assertEquals(recipe.massG(), back.massG(), WRITTEN_G);
    }

    @Cases(100)
    void whatPreventsNothingIsWarnedOfWithItsLine(Draw draw) {
        Recipe recipe =
                Recipe.of("x", FreezingSetup.USUAL, draw.listOf(0, 6, RecipeFileLawsTest::line))
                        .plus(new RecipeLine("100 g", "water"));
        String text = RecipeFileWriter.text(recipe, FIRST);

        RecipeFile file = RecipeFileReader.read("f", text);

        String[] lines = text.split("\n", -1);
        for (RecipeFile.Unfinished one : file.unfinished()) {
            assertTrue(lines[one.line() - 1].startsWith(RecipeFileReader.UNFINISHED), one::words);
        }
        assertEquals(file.unfinished().size(), file.warnings().size());
        assertEquals(recipe.mix(), file.mix());
    }
}
