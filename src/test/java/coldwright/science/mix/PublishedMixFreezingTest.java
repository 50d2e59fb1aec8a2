package coldwright.science.mix;

import static coldwright.science.mix.Amount.grams;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.published.FromTable;
import coldwright.published.Goal;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.Band;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

import java.util.Map;
import java.util.stream.Collectors;

/** Freezing points of whole mixes against published ones, and the trade's method. */
class PublishedMixFreezingTest {
    private static final Ledger LEDGER = Ledger.of(PublishedMixFreezingTest.class);

    private static final Tolerance RIPENESS =
            Tolerance.of(0.1, "no uncertainty is stated; asked for by the project");

    private static final Tolerance MILK =
            Tolerance.of(0.0005, "half the last digit of the range").judgedBy(Goal.MIXES);

    private static final Tolerance MIX = Tolerance.toMeet(Goal.MIXES);

    private static final Tolerance NON_IDEAL_LACTOSE =
            Tolerance.of(0.01, "Leighton takes lactose as ideal; at 5 % it does 2 to 3 % more");

    private static final Tolerance LAST_DIGIT = Tolerance.of(0.0002, "last digit");
    private static final Tolerance AS_TYPED = Tolerance.of(1e-9, "the table of the program");
    private static final Tolerance ROUNDED_PERCENT = Tolerance.of(1, "rounded to 1 %");

    private static final Tolerance ROUNDED_TABLE =
            Tolerance.of(3.8, "half a digit of the table is 2.8 % at 3 g, and 1 % is rounded");

    private static final Tolerance SERVED = Tolerance.of(0, "the range as it is remembered");

    /** Leighton 1927, after Van Slyke: fat 3.9, solids not fat 8.99, lactose 4.9, water 87.11. */
    private static final Ingredient LEIGHTONS_MILK =
            Ingredient.own(
                    "average milk",
                    Composition.NOTHING
                            .with(87.11, Component.WATER)
                            .with(3.9, Component.MILK_FAT)
                            .with(4.9, Component.LACTOSE)
                            .with(3.2, Component.MILK_PROTEIN)
                            .with(.89, Component.MILK_SALTS)
                            .with(8.99, Tally.MILK_SOLIDS_NOT_FAT));

    private static final Ingredient ICE_CREAM_MIX =
            OwnIngredient.of(
                    "mix",
                    "fat 12, milk solids not fat 11, sucrose 15, stabiliser 0.3, water 61.7");

    @ParameterizedTest
    @FromTable("published-mix-freezing-points")
    void milkAndMix(Row row) {
        String what = row.text("what");
        boolean mix = what.equals("ice cream mix");
        Ingredient ingredient =
                switch (what) {
                    case "Leighton's milk" -> LEIGHTONS_MILK;
                    case "ice cream mix" -> ICE_CREAM_MIX;
                    default -> Shelf.find(what);
                };
        LEDGER.at(row, what)
                .compare(
                        "initial freezing point of %s, °C".formatted(mix ? "a mix" : "milk"),
                        row.between("cold_c", "warm_c"),
                        Band.exactly(freezingPointC(ingredient)),
                        mix ? MIX : MILK);
    }

    /** Leighton 1927: lactose 0.306 °C and salts 0.244 °C of milk's 0.55 °C. */
    @ParameterizedTest
    @FromTable("leighton-1927-milk")
    void lactoseAndSalts(Row row) {
        Mix milk = Mix.of(grams(100, LEIGHTONS_MILK));
        Map<String, Double> parts =
                milk.contributions().stream()
                        .collect(Collectors.toMap(Contribution::solute, Contribution::depressionC));
        assertEquals(2, parts.size());
        double saltsC = row.number("saltsC");
        Ledger.At at = LEDGER.at(row, "share of lactose");
        if (saltsC == 0) {
            at.compare(
                    "share of milk's depression, °C",
                    row.number("depressionC"),
                    parts.get("lactose"),
                    NON_IDEAL_LACTOSE);
        } else {
            LEDGER.at(row, "share of salts")
                    .compare(
                            "share of milk's depression, °C",
                            saltsC,
                            parts.get("milk salts"),
                            NON_IDEAL_LACTOSE);
            LEDGER.at(row, "salts by the trade")
                    .compare(
                            "salts by the trade's constant, °C",
                            saltsC,
                            milk.tradeMethod().milkSaltsDepressionC(),
                            Tolerance.of(0.001, "2.37 for 2.364"));
        }
    }

    @ParameterizedTest
    @FromTable("watered-milk")
    void wateredMilk(Row row) {
        double milkC = freezingPointC(LEIGHTONS_MILK);
        double addedG = 0.8711 * row.number("added_percent");
        // The rule takes milk for water: 1 % added to its water is what makes 0.0056 °C.
        Mix watered = Mix.of(grams(100, LEIGHTONS_MILK), grams(addedG, Shelf.WATER));
        LEDGER.at(row, row.text("added_percent") + " % water")
                .compare(
                        "rise of milk's freezing point, °C",
                        row.number("rise_c"),
                        watered.initialFreezingPointC() - milkC,
                        LAST_DIGIT);
        // Added to the milk as a whole it makes a little more.
        Mix byWhole = Mix.of(grams(99, LEIGHTONS_MILK), grams(1, Shelf.WATER));
        assertEquals(0.0056, byWhole.initialFreezingPointC() - milkC, 0.001);
    }

    @ParameterizedTest
    @FromTable("memory-ice-at-serving")
    void iceAtServing(Row row) {
        var curve = Mix.of(grams(100, ICE_CREAM_MIX)).freezingCurve();
        for (String end : new String[] {"warm_c", "cold_c"}) {
            LEDGER.at(row, "at " + row.text(end) + " °C")
                    .compare(
                            "ice at serving, % of the water",
                            row.between("least_percent", "most_percent"),
                            Band.exactly(curve.icePercentAt(row.number(end))),
                            SERVED);
        }
    }

    @ParameterizedTest
    @FromTable("trade-worked-example")
    void tradeMethod(Row row) {
        SucroseEquivalentMethod trade = workedExample().tradeMethod();
        double computed =
                switch (row.text("step")) {
                    case "syrup solids of 42 DE count as sucrose" -> syrupFactor();
                    case "sucrose equivalents" -> trade.sugarsEquivalentPercent();
                    case "sucrose equivalents in water" -> trade.equivalentPer100gWater();
                    case "depression by the table" -> trade.sucroseTableDepressionC();
                    case "depression by milk salts" -> trade.milkSaltsDepressionC();
                    default -> trade.initialFreezingPointC();
                };
        LEDGER.at(row, row.text("step"))
                .compare(
                        row.text("step") + ", " + row.text("unit"),
                        row.number("value"),
                        computed,
                        Tolerance.of(
                                row.number("uncertainty"),
                                "last digit; the syrup's factor is rounded to 0.8"));
        assertTrue(
                trade.why()
                        .startsWith(
                                "The sucrose-equivalent method gives −2.75 °C and water activity −2."),
                trade::why);
    }

    private static double syrupFactor() {
        Mix mix = Mix.of(grams(10 / .95, Shelf.GLUCOSE_SYRUP_POWDER), grams(100, Shelf.WATER));
        return mix.tradeMethod().sugarsEquivalentPercent() * mix.massG() / 100 / 10;
    }

    @ParameterizedTest
    @FromTable("trade-table-against-handbook")
    void tradeTableAgainstTheHandbook(Row row) {
        for (double g : new double[] {row.number("from_g"), row.number("to_g")}) {
            SucroseEquivalentMethod trade =
                    Mix.of(grams(g, Shelf.SUCROSE), grams(100, Shelf.WATER)).tradeMethod();
            double percentHigh =
                    100 * (trade.initialFreezingPointC() / trade.thermodynamicFreezingPointC() - 1);
            LEDGER.at(row, Math.round(g) + " g per 100 g")
                    .compare(
                            "trade's table over handbook, %",
                            row.between("least_percent", "most_percent"),
                            Band.exactly(percentHigh),
                            g < 12 ? ROUNDED_TABLE : ROUNDED_PERCENT);
        }
    }

    @Test
    void theTwoMethodsStayWithinThreeTenthsForAnOrdinaryMix() {
        Mix mix = workedExample();
        assertEquals(mix.initialFreezingPointC(), mix.tradeMethod().initialFreezingPointC(), 0.3);
    }

    @ParameterizedTest
    @FromTable("leighton-1927-sucrose-table")
    void tableAsTyped(Row row) {
        Mix mix =
                Mix.of(
                        grams(row.number("sucrose_per_100g_water"), Shelf.SUCROSE),
                        grams(100, Shelf.WATER));
        LEDGER.at(row, row.text("sucrose_per_100g_water") + " g")
                .compare(
                        "depression by the trade's table, °C",
                        row.number("depression_c"),
                        -mix.tradeMethod().initialFreezingPointC(),
                        AS_TYPED);
    }

    @ParameterizedTest
    @FromTable("ashrae-fruit-freezing-points")
    void fruit(Row row) {
        Mix fruit = Mix.of(grams(100, Shelf.find(row.text("name"))));
        LEDGER.at(row, row.text("name"))
                .compare(
                        "initial freezing point of fruit, °C",
                        (row.number("freezing_point_f") - 32) / 1.8,
                        fruit.initialFreezingPointC(),
                        RIPENESS);
    }

    private static double freezingPointC(Ingredient ingredient) {
        return Mix.of(grams(100, ingredient)).initialFreezingPointC();
    }

    private static Mix workedExample() {
        return Mix.of(
                grams(10, OwnIngredient.of("solids", "milk solids not fat 100")),
                grams(2, OwnIngredient.of("whey", "whey solids 100")),
                grams(12, Shelf.SUCROSE),
                grams(4 / .95, Shelf.GLUCOSE_SYRUP_POWDER),
                grams(12 - .05 * 4 / .95, OwnIngredient.of("fat", "milk fat 100")),
                grams(60 - .05 * 4 / .95, Shelf.WATER),
                grams(.05 * 4 / .95, OwnIngredient.of("filler", "other carbohydrate 100")));
    }
}
