package coldwright.science.standards;

import static coldwright.science.mix.Amount.grams;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.published.FromTable;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.OwnIngredient;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** Legal figures as printed. */
class PublishedStandardsTest {
    private static final Ledger LEDGER = Ledger.of(PublishedStandardsTest.class);
    private static final Tolerance LEGAL = Tolerance.percent(0.002, "a legal figure");
    private static final Tolerance CONVERTED =
            Tolerance.percent(0.02, "last digit of the conversion");

    /** Rounding of doubles alone. */
    private static final double FAHRENHEIT = 1e-9;

    /** The code rounds its °F to whole °C: half of one, in °F. */
    private static final double WHOLE_DEGREE_C = 0.9;

    @ParameterizedTest
    @FromTable("cfr-21-pasteurisation")
    void holdsAsTabled(Row row) {
        Pasteurisation table = Pasteurisation.valueOf(row.text("table"));
        Pasteurisation.Hold hold = table.holdAt((row.number("temperature_f") - 32) / 1.8);
        LEDGER.at(row, table.rule() + " at " + row.text("temperature_f") + " °F")
                .compare("hold, s", row.number("seconds"), hold.seconds(), LEGAL);
        assertEquals(row.number("temperature_f"), hold.listedTemperatureC() * 1.8 + 32, FAHRENHEIT);
    }

    /**
     * A state that lists pairs between the federal ones asks for no longer a time at any of them.
     */
    @DisplayName("Conn. Agencies Regs. 21a-58-13: 160, 165 and 170 °F")
    @ParameterizedTest(name = "{0} °F for {1} min")
    @CsvSource({"155,30", "160,15", "165,10", "170,5", "175,0.4166666667"})
    void neverShorterThanAStateLists(double temperatureF, double minutes) {
        double seconds = Pasteurisation.MIX.holdAt((temperatureF - 32) / 1.8).seconds();
        assertTrue(seconds >= 60 * minutes - 1e-6, seconds + " s at " + temperatureF + " °F");
    }

    @DisplayName("FDA Food Code 2022, 3-501.14(A), in °F as in °C")
    @ParameterizedTest
    @CsvSource({"57,135", "21,70", "5,41"})
    void coolingIsTheFoodCodes(double temperatureC, double temperatureF) {
        assertTrue(List.of(Cooling.FROM_C, Cooling.FIRST_C, Cooling.COLD_C).contains(temperatureC));
        assertEquals(temperatureF, temperatureC * 1.8 + 32, WHOLE_DEGREE_C);
        assertEquals(2, Cooling.FIRST_HOURS);
        assertEquals(6, Cooling.ALL_HOURS);
    }

    @DisplayName("21 CFR 135.110: nonfat milk solids may fall as milkfat rises")
    @ParameterizedTest(name = "milkfat {0} %, solids {1} %")
    @CsvSource({"10,10", "10.9,10", "11,9", "12,8", "13,7", "14,6", "18,6"})
    void nonfatSolidsByMilkfat(double milkFatPercent, double leastSolidsPercent) {
        assertTrue(named(milkFatPercent, leastSolidsPercent));
        assertFalse(named(milkFatPercent, leastSolidsPercent - 0.1));
    }

    /** The least figure is found by halving and must be the printed one. */
    @ParameterizedTest
    @FromTable("standards-in-figures")
    void leastFigures(Row row) {
        double printed = row.number("least");
        double low = printed / 2;
        double high = 2 * printed;
        assertFalse(allowed(row, low), "half is refused: " + row);
        assertTrue(allowed(row, high), "twice is allowed: " + row);
        while (high - low > 1e-5 * printed) {
            double middle = (low + high) / 2;
            if (allowed(row, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        LEDGER.at(row, row.text("place") + ", " + row.text("name"))
                .compare(
                        "least %s, %s".formatted(row.text("what"), row.text("unit")),
                        printed,
                        high,
                        row.text("unit").equals("%") ? LEGAL : CONVERTED);
    }

    private static boolean allowed(Row row, double value) {
        double overrun = 0;
        String parts;
        switch (row.text("what")) {
            case "milk fat" -> parts = "milk fat %s, milk solids not fat 10, sucrose 15";
            case "yolk solids" ->
                    parts = "milk fat 12, milk solids not fat 10, sucrose 15, yolk solids %s";
            case "milk protein" -> parts = "milk fat 12, milk protein %s, sucrose 15";
            case "weight by volume" -> {
                overrun = overrunAt(value, SOLID_MIX);
                return named(row, SOLID_MIX, overrun);
            }
            case "solids by volume" -> {
                overrun = overrunAt(value / LEAN_MIX.totalSolidsPercent() * 100, LEAN_MIX);
                return named(row, LEAN_MIX, overrun);
            }
            default -> {
                return named(row, sorbet(row.text("what").equals("citrus"), value), 0);
            }
        }
        return named(row, own(parts.formatted(value)), overrun);
    }

    /** Rich in solids, so that its weight fails first. */
    private static final Mix SOLID_MIX = own("milk fat 16, milk solids not fat 12, sucrose 18");

    /** Poor in solids, so that they fail first: below 35.6 %. */
    private static final Mix LEAN_MIX = own("milk fat 10, milk solids not fat 10, sucrose 10");

    private static double overrunAt(double gPerL, Mix mix) {
        double overrun = 100 * (1000 * mix.densityKgPerL() / gPerL - 1);
        return Math.min(300, Math.max(0, overrun));
    }

    private static Mix own(String parts) {
        return Mix.of(grams(100, OwnIngredient.of("mix", parts)));
    }

    private static Mix sorbet(boolean citrus, double fruitPercent) {
        return Mix.of(
                grams(fruitPercent, citrus ? Shelf.LEMON_JUICE : Shelf.MANGO),
                grams(20, Shelf.SUCROSE),
                grams(80 - fruitPercent, Shelf.WATER));
    }

    private static boolean named(Row row, Mix mix, double overrunPercent) {
        return ProductNames.of(mix, overrunPercent).stream()
                .filter(verdict -> verdict.place().equals(row.text("place")))
                .filter(verdict -> verdict.name().equals(row.text("name")))
                .anyMatch(NameVerdict::allowed);
    }

    @Test
    @DisplayName("Nine allergens in the United States, fourteen in the European Union")
    void listsOfAllergens() {
        Mix all =
                Mix.of(Stream.of(Allergen.values()).map(PublishedStandardsTest::carrying).toList());
        assertEquals(
                Set.of(
                        "milk",
                        "egg",
                        "fish",
                        "crustacean shellfish",
                        "tree nuts",
                        "peanuts",
                        "wheat",
                        "soy",
                        "sesame"),
                Set.copyOf(Declarations.unitedStatesAllergens(all)));
        assertEquals(14, Declarations.europeanUnionAllergens(all).size());
    }

    private static Amount carrying(Allergen allergen) {
        return grams(
                10,
                new Ingredient(
                        allergen.name(),
                        List.of(),
                        Shelf.WATER.composition(),
                        OptionalDouble.empty(),
                        Set.of(allergen),
                        "made for a test",
                        ""));
    }

    private static boolean named(double fatPercent, double solidsPercent) {
        Mix mix =
                own(
                        "milk fat %s, milk solids not fat %s, sucrose 15"
                                .formatted(fatPercent, solidsPercent));
        return ProductNames.of(mix).stream()
                .filter(verdict -> verdict.place().equals("United States"))
                .filter(verdict -> verdict.name().equals("ice cream"))
                .anyMatch(NameVerdict::allowed);
    }
}
