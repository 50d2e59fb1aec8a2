package coldwright.science.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.published.PublishedTable;
import coldwright.published.PublishedTable.Row;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.OwnIngredient;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Mix problems that a university course worked by algebra. */
class PublishedBalanceTest {
    private static final double TOTAL_G = 100_000;

    @ParameterizedTest(name = "problem {0}")
    @ValueSource(ints = {1, 2, 3, 4})
    void findsTheWorkedAnswer(int problem) {
        List<Row> rows =
                PublishedTable.read("university-mix-problems").rows().stream()
                        .filter(row -> row.number("problem") == problem)
                        .toList();
        Balance balance = Balance.of(TOTAL_G);
        for (String target : rows.get(0).text("targets").split(",", -1)) {
            String words = target.strip();
            int gap = words.lastIndexOf(' ');
            balance =
                    balance.aiming(
                            Double.parseDouble(words.substring(gap + 1)),
                            Trait.named(words.substring(0, gap)));
        }
        Map<Row, Ingredient> ingredients = new LinkedHashMap<>();
        for (Row row : rows) {
            Ingredient ingredient = OwnIngredient.of(row.text("ingredient"), row.text("parts"));
            ingredients.put(row, ingredient);
            double fixedKg = row.numberOr("fixed_kg", Double.NaN);
            balance =
                    balance.using(
                            Double.isNaN(fixedKg)
                                    ? Choice.any(ingredient)
                                    : Choice.fixed(fixedKg * 1000, ingredient));
        }
        Balanced found = balance.solve();
        assertTrue(found.met(), () -> found.shortfalls().toString());
        ingredients.forEach(
                (row, ingredient) -> {
                    double answerKg = row.numberOr("answer_kg", Double.NaN);
                    if (!Double.isNaN(answerKg)) {
                        assertEquals(
                                answerKg,
                                found.mix().massG(ingredient) / 1000,
                                row.number("uncertainty_kg"),
                                ingredient.name());
                    }
                });
    }
}
