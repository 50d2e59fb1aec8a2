package coldwright.desk.batch.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.FreezingSetup;
import coldwright.batch.Recipe;
import coldwright.batch.RecipeLine;
import coldwright.desk.batch.search.BatchGoal;
import coldwright.desk.batch.search.ProposedChange;
import coldwright.desk.batch.search.TastingDiagnosis;
import coldwright.science.crystal.Method;
import coldwright.science.diagnosis.Symptom;
import coldwright.science.mix.Mix;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

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
            List<RecipeLine> all = new ArrayList<>();
            for (String line : lines) {
                int space = line.indexOf(' ');
                all.add(new RecipeLine(line.substring(0, space), line.substring(space + 1)));
            }
            Recipe made = Recipe.of(name(), FreezingSetup.USUAL, all);
            for (String one : own) {
                String[] parts = one.split(" = ", -1);
                made = made.owning(parts[0], parts[1]);
            }
            recipe = made;
        }
    }

    private static BatchAnalysis of(Recipe recipe) {
        return BatchAnalysis.of(recipe);
    }

    @ParameterizedTest
    @EnumSource(Batch.class)
    void noOfferOfAnyKindBringsAnAllergenAlcoholOrTooMuchSalt(Batch batch) {
        Recipe tub = batch.recipe.by(batch.recipe.setup().by(Method.STILL_TUB));
        List<ProposedChange> offers = new ArrayList<>();
        // the freezing changes which findings there are, not what may be offered: two by two ways
        // do
        boolean both = batch == Batch.OAT_AND_COCONUT || batch == Batch.CUSTARD;
        for (Recipe recipe : both ? List.of(batch.recipe, tub) : List.of(tub)) {
            BatchAnalysis all = of(recipe);
            offers.addAll(ProposedChange.of(all));
            for (Symptom symptom : symptoms(batch)) {
                offers.addAll(TastingDiagnosis.of(symptom, all).offers());
            }
            for (BatchGoal wish : BatchGoal.values()) {
                offers.addAll(wish.of(recipe, 30).offers());
            }
        }
        assertFalse(offers.isEmpty());
        Mix was = batch.recipe.mix();
        for (ProposedChange proposedChange : offers) {
            Mix is = proposedChange.recipe().mix();
            assertTrue(was.allergens().containsAll(is.allergens()), proposedChange::toString);
            assertTrue(
                    is.saltPercent()
                            <= Math.max(MOST_SALT_PERCENT, was.saltPercent()) + ROUNDED_PERCENT,
                    proposedChange::toString);
            if (was.alcoholPercent() == 0) {
                assertEquals(0, is.alcoholPercent(), proposedChange::toString);
            }
        }
    }

    /** A third of them for each batch, so that two batches have each; all in long runs. */
    private static List<Symptom> symptoms(Batch batch) {
        boolean all = Integer.getInteger("laws.cases", 1) > 1;
        return Stream.of(Symptom.values())
                .filter(one -> all || one.ordinal() % 3 == batch.ordinal() % 3)
                .toList();
    }

    @ParameterizedTest
    @EnumSource(
            value = Batch.class,
            names = {"OAT_AND_COCONUT", "SORBET", "UNKNOWN_PASTE"})
    void noAnswerInWordsNamesMilkOrEgg(Batch batch) {
        BatchAnalysis all = of(batch.recipe);
        List<String> said = new ArrayList<>();
        for (BatchGoal wish : List.of(BatchGoal.SCOOPABLE, BatchGoal.READY, BatchGoal.SMOOTH)) {
            said.add(wish.of(batch.recipe, 5).text());
        }
        all.report().findings().forEach(one -> said.add(BatchSentences.finding(one).get(2)));
        for (String words : said) {
            String plain = words.replace("coconut milk", "");
            assertFalse(plain.matches("(?is).*\\b(milk|cream|egg|yolk)\\b.*"), words);
        }
    }
}
