package coldwright.desk.brew.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.BatchFault;
import coldwright.batch.BatchReader;
import coldwright.batch.Reckoning;
import coldwright.science.diagnosis.Symptom;
import coldwright.science.mix.Mix;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import java.util.ArrayList;
import java.util.List;

/** All that the page offers with one press keeps to what a batch is. */
class DietOffersTest {
    private static final double MOST_SALT_PERCENT = 0.5;

    /** Amounts on the page are rounded to a tenth of a gram in a batch of some 700 g. */
    private static final double ROUNDED_PERCENT = 0.02;

    private enum Batch {
        OAT_AND_COCONUT(
                List.of(),
                "500 oat drink",
                "300 canned coconut milk",
                "110 sucrose",
                "20 glucose",
                "2 salt"),
        SORBET(List.of(), "600 blood orange juice", "200 water", "60 sucrose", "0.5 salt"),
        CUSTARD(
                List.of(),
                "500 whole milk",
                "200 heavy cream",
                "80 egg yolk",
                "60 sucrose",
                "0.5 salt"),
        MILK_ONLY(List.of(), "500 whole milk", "300 water", "60 sucrose", "4 vanilla extract"),
        CARAMEL(List.of(), "500 soy drink", "100 sunflower oil", "90 dulce de leche", "1 salt"),
        UNKNOWN_PASTE(
                List.of("malt paste = water 30, sucrose 50"),
                "500 water",
                "150 malt paste",
                "50 sucrose");

        private final Recipe recipe;

        Batch(List<String> own, String... lines) {
            List<Line> all = new ArrayList<>();
            for (String line : lines) {
                int space = line.indexOf(' ');
                all.add(new Line(line.substring(0, space), line.substring(space + 1)));
            }
            recipe = new Recipe(name(), Means.USUAL, own, List.of(), all);
        }
    }

    private static Reckoning of(Recipe recipe) throws BatchFault {
        return Reckoning.of(BatchReader.read("t", RecipeText.of(recipe)));
    }

    @ParameterizedTest
    @EnumSource(Batch.class)
    void noOfferOfAnyKindBringsAnAllergenAlcoholOrTooMuchSalt(Batch batch) throws BatchFault {
        Recipe tub =
                batch.recipe.by(batch.recipe.means().by(coldwright.batch.BatchFile.Method.TUB));
        List<Offer> offers = new ArrayList<>();
        for (Recipe recipe : List.of(batch.recipe, tub)) {
            Reckoning all = of(recipe);
            Foreseen.of(recipe, all).forEach(one -> offers.addAll(one.offers()));
            for (Symptom symptom : Symptom.values()) {
                Tasting.of(symptom, recipe, all)
                        .suspects()
                        .forEach(one -> offers.addAll(one.offers()));
            }
            for (Wishes wish : Wishes.values()) {
                offers.addAll(wish.of(recipe, 30).offers());
            }
        }
        assertFalse(offers.isEmpty());
        Mix was = of(batch.recipe).mix();
        for (Offer offer : offers) {
            Mix is = of(offer.recipe()).mix();
            assertTrue(was.allergens().containsAll(is.allergens()), offer::toString);
            assertTrue(
                    is.saltPercent()
                            <= Math.max(MOST_SALT_PERCENT, was.saltPercent()) + ROUNDED_PERCENT,
                    offer::toString);
            if (was.alcoholPercent() == 0) {
                assertEquals(0, is.alcoholPercent(), offer::toString);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Batch.class,
            names = {"OAT_AND_COCONUT", "SORBET", "UNKNOWN_PASTE"})
    void noAnswerInWordsNamesMilkOrEgg(Batch batch) throws BatchFault {
        Reckoning all = of(batch.recipe);
        List<String> said = new ArrayList<>();
        for (Wishes wish : List.of(Wishes.SCOOPABLE, Wishes.READY, Wishes.SMOOTH)) {
            said.add(wish.of(batch.recipe, 5).said());
        }
        all.findings().forEach(one -> said.add(Told.finding(one).get(2)));
        for (String words : said) {
            String plain = words.replace("coconut milk", "");
            assertFalse(plain.matches("(?is).*\\b(milk|cream|egg|yolk)\\b.*"), words);
        }
    }
}
