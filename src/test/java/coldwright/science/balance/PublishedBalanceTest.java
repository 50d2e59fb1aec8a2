package coldwright.science.balance;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.published.Goal;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.OwnIngredient;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Mix problems that a university course worked by algebra. */
class PublishedBalanceTest {
    private static final Ledger LEDGER = Ledger.of(PublishedBalanceTest.class);
    private static final Tolerance SOLIDS = Tolerance.of(0.01, "last digit, rounded on the way");
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
        if (problem == 3) {
            Row solids = PublishedTable.read("university-mix-solids").rows().get(0);
            LEDGER.at(solids, "problem 3")
                    .compare(
                            "total solids of the answer, %",
                            solids.number("solids_percent"),
                            found.mix().totalSolidsPercent(),
                            SOLIDS);
        }
        ingredients.forEach(
                (row, ingredient) -> {
                    double answerKg = row.numberOr("answer_kg", Double.NaN);
                    if (!Double.isNaN(answerKg)) {
                        LEDGER.at(row, "problem %d, %s".formatted(problem, ingredient.name()))
                                .compare(
                                        "amount in 100 kg of mix, kg",
                                        answerKg,
                                        found.mix().massG(ingredient) / 1000,
                                        Tolerance.of(
                                                        row.number("uncertainty_kg"),
                                                        problem == 3
                                                                ? "the printed solution rounds on the way: put back it gives 13.998 % fat, not 14"
                                                                : "last digit")
                                                .judgedBy(Goal.BALANCE));
                    }
                });
    }
}
