package coldwright.recipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.recipe.LineReading.State;
import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

class IngredientLineTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4 egg yolks | 72 | egg yolk | 4 × 18 g",
                "2 yolks | 36 | egg yolk | 2 × 18 g",
                "1 cup cream | 235.4 | cream 35 % | 236.59 mL at 0.995 kg/L by its composition",
                "2–3 EL Honig | 53.74 | honey | middle of 2–3 EL: 37.5 mL at 1.433 kg/L",
                "1,5 l Milch | 1545 | milk 3.5 % | 1500 mL at 1.03 kg/L by its composition",
                "1.250 kg sugar | 1250 | granulated sugar | 1.25 kg",
                "2 large eggs | 100 | egg | 2 × 50 g",
                "2 small eggs | 76 | egg | 2 × 38 g",
                "a pinch of salt | 0.38 | salt | 0.31 mL at 1.234 kg/L",
                "3 leaves gelatine | 5.1 | gelatine | 3 × 1.7 g",
                "1 can coconut milk | 382 | canned coconut milk | 400 mL at 0.955 kg/L",
                "2 bananas | 236 | banana | 2 × 118 g",
                "1 cup plus 2 tbsp sugar | 226.7 | granulated sugar | 266.16 mL at 0.852 kg/L"
            })
    void showsWhatWasUnderstood(String line, double massG, String name, String how) {
        LineReading read = IngredientLine.read(line);
        assertEquals(State.UNDERSTOOD, read.state(), read::toString);
        assertEquals(massG, read.massG(), 0.01 * massG);
        assertEquals(name, read.parts().get(0).ingredient().name());
        assertEquals(how, read.parts().get(0).how().english());
    }

    /** What a German window writes into a recipe, it reads again as the same ingredient. */
    @Test
    void eachIngredientIsReadByItsGermanName() {
        List<String> others = new ArrayList<>();
        for (Ingredient one : Shelf.all()) {
            String name = one.phrase().in(Locale.GERMAN);
            List<LineReading.Part> parts = IngredientLine.read("100 g " + name).parts();
            boolean read = parts.size() == 1 && parts.get(0).ingredient().equals(one);
            if (!read || Shelf.named(name).filter(one::equals).isEmpty()) {
                others.add(name);
            }
        }
        assertEquals(List.of(), others);
    }

    @Test
    void eachIngredientOfTheShelfHasAGermanName() {
        assertEquals(
                List.of(),
                Shelf.all().stream()
                        .filter(
                                one ->
                                        !one.phrase().key().startsWith("name.")
                                                || !one.phrase().english().equals(one.name()))
                        .toList());
    }

    @Test
    void measuresHaveTheirSource() {
        assertEquals("USDA SR24 01123", IngredientLine.read("3 eggs").parts().get(0).source());
        assertEquals(
                "US cup; USDA SR24 09302",
                IngredientLine.read("1 cup raspberries").parts().get(0).source());
        assertEquals("", IngredientLine.read("120 g eggs").parts().get(0).source());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 lemon | Which part of the fruit?",
                "8 oz cream | Ounces of a liquid: by weight or by volume?",
                "1 pint milk | “pint” is not the same everywhere. Which one?",
                "1.000 g sugar | Is “1.000 g” a thousand or a decimal?",
                "sugar | How much granulated sugar? The line has no amount.",
                "500 milk | Grams or millilitres?",
                "100 g butter or margarine | Which of the two?",
                "2 heaped tbsp cocoa | A heaped spoon holds up to twice as much. Which one?",
                "3 eggs, separated | Whole eggs or only the yolks?",
                "2 cans (400 g) condensed milk | Is that the mass of each or of all?",
                "200 ml milk, light | “light” may change what it is. Use it without?",
                "200 g cream (12 % fat) | There is no cream 35 % of 12 %. Use one of these?"
            })
    void asksWhereItMayMeanTwoThings(String line, String why) {
        LineReading read = IngredientLine.read(line);
        assertEquals(State.ASK, read.state(), read::toString);
        assertEquals(why, read.why().orElseThrow().english());
        assertTrue(read.choices().size() >= 2, read::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "100 g chocolate ice cream | “chocolate ice cream” isn’t on the shelf. Choose one of these, or describe it as your own.",
                "100 g xyzzyqwv | “xyzzyqwv” isn’t on the shelf. Describe it as your own.",
                "1 cup hazelnut chocolate pralines | “hazelnut chocolate pralines” isn’t on the shelf. Choose one of these, or describe it as your own.",
                "10 peppercorns | It isn’t known how much one of these weighs: 10, black pepper. Weigh it.",
                "20000 kg sugar | 20000 kg is more than ten tonnes. Write a smaller amount."
            })
    void namesWhatItDoesNotKnow(String line, String why) {
        LineReading read = IngredientLine.read(line);
        assertEquals(State.UNKNOWN, read.state(), read::toString);
        assertEquals(why, read.why().orElseThrow().english());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "   ", "For the caramel:", "Für den Teig:", "Zutaten", "***", "()", "½"})
    void aHeadingIsNoIngredient(String line) {
        assertTrue(IngredientLine.read(line).parts().isEmpty());
    }

    @Test
    void aNumberAloneInATableIsGramsUnlessPiecesAreAsLikely() {
        assertEquals(120, IngredientLine.amount("120", Shelf.SUCROSE).massG());
        assertEquals(2.345, IngredientLine.amount("2.345 g", Shelf.SUCROSE).massG(), 1e-9);
        assertEquals(32.6667, IngredientLine.amount("32.6667", Shelf.SUCROSE).massG(), 1e-9);
        LineReading yolks = IngredientLine.amount("4", Shelf.EGG_YOLK);
        assertEquals(State.ASK, yolks.state());
        assertEquals(
                List.of(72.0, 4.0),
                yolks.choices().stream().map(c -> c.parts().get(0).massG()).toList());
        assertEquals(120, IngredientLine.amount("120", Shelf.EGG_YOLK).massG());
        assertEquals(
                "“much” isn’t an amount. Write it like 120 g, 2 tbsp or 3.",
                IngredientLine.amount("much", Shelf.SUCROSE).why().orElseThrow().english());
    }

    @Test
    void anIngredientOfOnesOwnComesFirst() {
        Ingredient own =
                Ingredient.own("house syrup", Composition.NOTHING.with(100, Component.WATER));
        assertEquals(
                own,
                IngredientLine.read("80 g house syrup", List.of(own)).parts().get(0).ingredient());
    }

    @Test
    void speaksGerman() {
        assertEquals(
                "Welcher Teil der Frucht?",
                IngredientLine.read("1 Zitrone").why().orElseThrow().in(Locale.GERMAN));
        assertEquals(
                "Mitte von 2–3 EL: 37,5 mL zu 1,433 kg/L",
                IngredientLine.read("2–3 EL Honig").parts().get(0).how().in(Locale.GERMAN));
    }
}
