package coldwright.science.mix;

import static coldwright.science.mix.Amount.grams;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.published.Ledger;
import coldwright.published.PublishedTable;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.ArrayList;
import java.util.List;

/** University mix problems, forwards: the published amounts must give the composition asked for. */
class PublishedBalancingInputsTest {
    private static final Ledger LEDGER = Ledger.of(PublishedBalancingInputsTest.class);

    /** Amounts printed to 0.01 kg. */
    private static final double PRINTED_PERCENT = 0.02;

    private static final Tolerance PRINTED =
            Tolerance.of(PRINTED_PERCENT, "amounts are printed to 0.01 kg in 100 kg");

    @ParameterizedTest(name = "problem {0}")
    @ValueSource(ints = {1, 2, 3, 4})
    void amountsGiveWhatWasAsked(int problem) {
        List<Row> rows =
                PublishedTable.read("university-mix-problems").checks().stream()
                        .filter(row -> row.number("problem") == problem)
                        .toList();
        List<Amount> amounts = new ArrayList<>();
        for (Row row : rows) {
            double kg = row.numberOr("answer_kg", row.numberOr("fixed_kg", 0));
            amounts.add(
                    grams(1000 * kg, OwnIngredient.of(row.text("ingredient"), row.text("parts"))));
        }
        Mix mix = Mix.of(amounts);
        assertEquals(100_000, mix.massG(), 10);
        for (String target : rows.get(0).text("targets").split(",", -1)) {
            String words = target.strip();
            int gap = words.lastIndexOf(' ');
            String what = words.substring(0, gap);
            LEDGER.at(rows.get(0), "problem " + problem)
                    .compare(
                            what + " of the published amounts, %",
                            Double.parseDouble(words.substring(gap + 1)),
                            percent(mix, what),
                            PRINTED);
        }
        if (problem == 2) {
            assertEquals(1, mix.composition().per100g(Tally.YOLK_SOLIDS), PRINTED_PERCENT);
        }
    }

    private static double percent(Mix mix, String what) {
        return switch (what) {
            case "milk fat" -> mix.milkFatPercent();
            case "milk solids not fat" -> mix.milkSolidsNotFatPercent();
            case "sucrose" -> mix.composition().percent(Component.SUCROSE);
            default -> throw new IllegalArgumentException(what);
        };
    }

    @Test
    @DisplayName("14/10/15/.5 with sweetened condensed skim: total solids 39.50")
    void condensed() {
        Mix mix =
                Mix.of(
                        grams(16170, Shelf.SWEETENED_CONDENSED_SKIMMED_MILK),
                        grams(8530, Shelf.SUCROSE),
                        grams(39930, dairy("cream", 32)),
                        grams(34870, dairy("milk", 3.5)),
                        grams(500, OwnIngredient.of("stabiliser", "stabiliser 100")));
        assertEquals(100_000, mix.massG(), 1);
        assertEquals(14, mix.milkFatPercent(), PRINTED_PERCENT);
        assertEquals(10, mix.milkSolidsNotFatPercent(), PRINTED_PERCENT);
        assertEquals(15, mix.composition().percent(Component.SUCROSE), PRINTED_PERCENT);
        assertEquals(39.50, mix.totalSolidsPercent(), PRINTED_PERCENT);
    }

    private static Ingredient dairy(String name, double fatPercent) {
        return OwnIngredient.of(
                name,
                "fat %s, milk solids not fat %s"
                        .formatted(fatPercent, MilkSolids.bySerumRulePercent(fatPercent)));
    }
}
