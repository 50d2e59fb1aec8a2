package coldwright.science.sensory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.published.FromTable;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.Band;
import coldwright.science.freezing.Solute;
import coldwright.science.mix.Amount;
import coldwright.science.mix.AntiFreezingPower;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;
import coldwright.science.mix.Sweetener;

import org.junit.jupiter.params.ParameterizedTest;

import java.util.Locale;

class PublishedSensoryTest {
    private static final Ledger LEDGER = Ledger.of(PublishedSensoryTest.class);

    /** The spread of the lists is the model's own. */
    private static final Tolerance INSIDE = Tolerance.of(1e-9, "within the published range");

    private static final Tolerance HALF_LAST_DIGIT = Tolerance.of(0.005, "half the last digit");
    private static final Tolerance HALF_A_UNIT = Tolerance.of(0.5, "half the last digit");
    private static final Tolerance HALF_A_TENTH = Tolerance.of(0.05, "half the last digit");

    @ParameterizedTest
    @FromTable("sweetness-three-lists")
    void sweetnessSpreadsAsItsSources(Row row) {
        String sugar = row.text("sugar");
        Band published = row.between("low", "high");
        Ledger.At at = LEDGER.at(row, sugar.toLowerCase(Locale.ROOT));
        if (sugar.equals("INVERT")) {
            Mix invert = Mix.of(Amount.grams(50, Shelf.GLUCOSE), Amount.grams(50, Shelf.FRUCTOSE));
            double middle = Sweetness.of(invert).sucroseEquivalentPercent().middle();
            at.compare("sweetness (sucrose 100)", published, Band.exactly(middle), INSIDE);
        } else {
            Band found = Sweetener.valueOf(sugar).relativeSweetness();
            assertEquals(published.low(), found.low());
            assertEquals(published.high(), found.high());
            at.compare("sweetness (sucrose 100)", published, found, INSIDE);
        }
    }

    @ParameterizedTest
    @FromTable("sweetness-of-sweeteners")
    void sweetenersAreAsSweetAsPrinted(Row row) {
        Sweetener sweetener = Sweetener.valueOf(row.text("sweetener"));
        Band published = row.between("low", "high").times(100);
        assertTrue(sweetener.relativeSweetness().holds(published.middle()), row::toString);
        LEDGER.at(row, sweetener.name().toLowerCase(Locale.ROOT))
                .compare(
                        "sweetness (sucrose 100)",
                        published,
                        sweetener.relativeSweetness(),
                        INSIDE);
    }

    @ParameterizedTest
    @FromTable("anti-freezing-power")
    void powerByMolarMass(Row row) {
        Solute solute = Solute.valueOf(row.text("solute"));
        double ionsPower = row.number("ions_power");
        Ledger.At at = LEDGER.at(row, solute.displayName());
        at.compare(
                "power of a gram (sucrose 1)",
                row.number("power"),
                AntiFreezingPower.perGram(solute),
                HALF_LAST_DIGIT);
        at.compare(
                "power of a gram with its ions counted (sucrose 1)",
                ionsPower,
                AntiFreezingPower.perGramOfIons(solute),
                ionsPower > 10 ? HALF_A_TENTH : HALF_LAST_DIGIT);
    }

    @ParameterizedTest
    @FromTable("trade-scales")
    void anIngredientOnTheScalesOfTheTrade(Row row) {
        Ingredient ingredient = Shelf.find(row.text("ingredient"));
        Ledger.At at = LEDGER.at(row, row.text("ingredient"));
        at.compare("PAC (sucrose 100)", row.number("pac"), ingredient.pac(), HALF_A_UNIT);
        at.compare(
                "POD (sucrose 100)",
                row.between("pod_low", "pod_high"),
                Band.exactly(ingredient.pod()),
                INSIDE);
    }

    @ParameterizedTest
    @FromTable("university-syrup-factor")
    void aSyrupByItsSolids(Row row) {
        Ingredient syrup = Shelf.find(row.text("ingredient"));
        LEDGER.at(row, row.text("ingredient"))
                .compare(
                        "PAC of its solids (sucrose 1)",
                        row.number("factor"),
                        syrup.pac() / row.number("solids_percent"),
                        HALF_A_TENTH);
    }

    @ParameterizedTest
    @FromTable("university-overrun")
    void weightOfALitre(Row row) {
        double percent = row.number("overrun_percent");
        LEDGER.at(row, row.text("overrun_percent") + " % overrun")
                .compare(
                        "weight of the product, g/L",
                        row.number("product_g_per_l"),
                        new Overrun(percent).gPerL(row.number("mix_kg_per_l")),
                        Tolerance.ROUNDING);
    }
}
