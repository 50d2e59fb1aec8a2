package coldwright.science.mix;

import static coldwright.science.mix.Amount.grams;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Freezing points of whole mixes against published ones, and the trade's method. */
class PublishedMixFreezingTest {
    /** The goal for mixes. */
    private static final double GOAL_C = 0.1;

    /** One fruit of a kind differs from another by as much with ripeness. */
    private static final double RIPENESS_C = 0.4;

    /** Leighton takes lactose as ideal; at 5 % it lowers the freezing point 2 to 3 % more. */
    private static final double NON_IDEAL_LACTOSE_C = 0.01;

    /** 0.1 % more or less lactose, and the salts of 0.2 % more or less solids. */
    private static final double CARBOHYDRATE_BY_DIFFERENCE_C = 0.015;

    /** The published example carries two decimals. */
    private static final double HALF_LAST_DIGIT = 0.005;

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

    @Test
    @DisplayName("Milk freezes between −0.540 and −0.550 °C")
    void milk() {
        // Leighton's milk: its salts were fitted to his −0.244 °C, so lactose alone is the check.
        assertEquals(-0.55, freezingPointC(LEIGHTONS_MILK), NON_IDEAL_LACTOSE_C);
        // USDA's milks carry their lactose as carbohydrate by difference, ±0.1 %.
        assertEquals(-0.545, freezingPointC(Shelf.WHOLE_MILK), CARBOHYDRATE_BY_DIFFERENCE_C);
        assertEquals(-0.545, freezingPointC(Shelf.SKIMMED_MILK), CARBOHYDRATE_BY_DIFFERENCE_C);
        assertEquals(-0.545, freezingPointC(Shelf.MILK_3_5), CARBOHYDRATE_BY_DIFFERENCE_C);
    }

    @Test
    @DisplayName("Leighton 1927: lactose 0.306 °C and salts 0.244 °C of milk's 0.55 °C")
    void lactoseAndSalts() {
        Mix milk = Mix.of(grams(100, LEIGHTONS_MILK));
        for (Contribution part : milk.contributions()) {
            double published = part.solute().equals("lactose") ? .306 : .244;
            assertEquals(published, part.depressionC(), NON_IDEAL_LACTOSE_C, part.solute());
        }
        assertEquals(2, milk.contributions().size());
        double salts = milk.tradeMethod().milkSaltsDepressionC();
        assertEquals(.244, salts, 0.001, "the trade's 2.37 was made from it");
    }

    @Test
    @DisplayName("Each 1 % of added water warms milk's freezing point by 0.0056 °C")
    void wateredMilk() {
        double milkC = freezingPointC(LEIGHTONS_MILK);
        // The rule takes milk for water: 1 % added to its water is what makes 0.0056 °C.
        Mix watered = Mix.of(grams(100, LEIGHTONS_MILK), grams(.8711, Shelf.WATER));
        assertEquals(0.0056, watered.initialFreezingPointC() - milkC, 0.0002);
        // Added to the milk as a whole it makes a little more.
        Mix byWhole = Mix.of(grams(99, LEIGHTONS_MILK), grams(1, Shelf.WATER));
        assertEquals(0.0056, byWhole.initialFreezingPointC() - milkC, 0.001);
    }

    @Test
    @DisplayName(
            "Ice cream mix, 12 fat, 11 solids not fat, 15 sugar, 0.3 stabiliser: about −2.5 °C")
    void iceCreamMix() {
        Ingredient mix =
                OwnIngredient.of(
                        "mix",
                        "fat 12, milk solids not fat 11, sucrose 15, stabiliser 0.3, water 61.7");
        assertEquals(-2.5, Mix.of(grams(100, mix)).initialFreezingPointC(), GOAL_C);
    }

    @Test
    @DisplayName("Trade method, worked example: SE 22.18, 36.97 g/100 g water, −2.74 °C")
    void tradeMethod() {
        Mix mix = workedExample();
        TradeMethod trade = mix.tradeMethod();
        // The example rounds the syrup's factor to 0.8; its saccharides make 0.797.
        assertEquals(22.18, trade.sugarsEquivalentPercent(), 0.02);
        assertEquals(36.97, trade.equivalentPer100gWater(), 0.03);
        assertEquals(2.27, trade.sucroseTableDepressionC(), HALF_LAST_DIGIT);
        assertEquals(.474, trade.milkSaltsDepressionC(), HALF_LAST_DIGIT);
        assertEquals(-2.74, trade.initialFreezingPointC(), 0.01);
        assertTrue(
                trade.why().startsWith("The trade method gives −2.75 °C and water activity −2."),
                trade::why);
    }

    @Test
    void theTwoMethodsStayWithinThreeTenthsForAnOrdinaryMix() {
        Mix mix = workedExample();
        assertEquals(mix.initialFreezingPointC(), mix.tradeMethod().initialFreezingPointC(), 0.3);
    }

    @ParameterizedTest(name = "{0} g sucrose per 100 g water")
    @CsvFileSource(resources = "/published/leighton-1927-sucrose-table.csv", numLinesToSkip = 4)
    void tableAsTyped(double sucroseG, double depressionC) {
        Mix mix = Mix.of(grams(sucroseG, Shelf.SUCROSE), grams(100, Shelf.WATER));
        assertEquals(depressionC, -mix.tradeMethod().initialFreezingPointC(), 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/ashrae-fruit-freezing-points.csv", numLinesToSkip = 6)
    void fruit(String name, double freezingPointF) {
        Mix fruit = Mix.of(grams(100, Shelf.find(name)));
        assertEquals((freezingPointF - 32) / 1.8, fruit.initialFreezingPointC(), RIPENESS_C);
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
