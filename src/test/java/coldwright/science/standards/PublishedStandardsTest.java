package coldwright.science.standards;

import static coldwright.science.mix.Amount.grams;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.published.FromTable;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.mix.Mix;
import coldwright.science.mix.OwnIngredient;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Legal figures as printed. */
class PublishedStandardsTest {
    private static final Ledger LEDGER = Ledger.of(PublishedStandardsTest.class);
    private static final Tolerance LEGAL = Tolerance.percent(1e-4, "a legal figure");

    @ParameterizedTest
    @FromTable("cfr-21-pasteurisation")
    void holdsAsTabled(Row row) {
        Pasteurisation table = Pasteurisation.valueOf(row.text("table"));
        Pasteurisation.Hold hold = table.holdAt((row.number("temperature_f") - 32) / 1.8);
        LEDGER.at(row, table.rule() + " at " + row.text("temperature_f") + " °F")
                .compare("hold, s", row.number("seconds"), hold.seconds(), LEGAL);
        assertFalse(hold.interpolated());
    }

    @DisplayName("21 CFR 135.110: nonfat milk solids may fall as milkfat rises")
    @ParameterizedTest(name = "milkfat {0} %, solids {1} %")
    @CsvSource({"10,10", "10.9,10", "11,9", "12,8", "13,7", "14,6", "18,6"})
    void nonfatSolidsByMilkfat(double milkFatPercent, double leastSolidsPercent) {
        assertTrue(named("United States", "ice cream", milkFatPercent, leastSolidsPercent));
        assertFalse(named("United States", "ice cream", milkFatPercent, leastSolidsPercent - 0.1));
    }

    @DisplayName(
            "UK: 5 % fat and 2.5 % milk protein; Germany: Eiscreme 10 %, Rahmeis 18 % milk fat")
    @ParameterizedTest(name = "{1}: fat {2} %")
    @CsvSource({"United Kingdom,dairy ice cream,5", "Germany,Eiscreme,10", "Germany,Rahmeis,18"})
    void leastFat(String place, String name, double leastFatPercent) {
        assertTrue(named(place, name, leastFatPercent, 10));
        assertFalse(named(place, name, leastFatPercent - 0.1, 10));
    }

    private static boolean named(
            String place, String name, double fatPercent, double solidsPercent) {
        Mix mix =
                Mix.of(
                        grams(
                                100,
                                OwnIngredient.of(
                                        "mix",
                                        "milk fat %s, milk solids not fat %s, sucrose 15"
                                                .formatted(fatPercent, solidsPercent))));
        return ProductNames.of(mix).stream()
                .filter(verdict -> verdict.place().equals(place))
                .filter(verdict -> verdict.name().equals(name))
                .anyMatch(NameVerdict::allowed);
    }
}
