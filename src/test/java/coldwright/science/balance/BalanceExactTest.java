package coldwright.science.balance;

import static coldwright.science.mix.Amount.grams;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Tally;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;

/** Balances and traits that can be worked out by hand. */
class BalanceExactTest {
    private static final double SAME_G = 0.05;
    private static final double EXACT = 1e-9;

    private static Ingredient own(String name, double fat, double sucrose, double msnf) {
        return Ingredient.own(
                name,
                Composition.NOTHING
                        .with(100 - fat - sucrose - msnf, Component.WATER)
                        .with(fat, Component.MILK_FAT)
                        .with(sucrose, Component.SUCROSE)
                        .with(0.55 * msnf, Component.LACTOSE)
                        .with(0.37 * msnf, Component.MILK_PROTEIN)
                        .with(0.08 * msnf, Component.MILK_SALTS)
                        .with(msnf, Tally.MILK_SOLIDS_NOT_FAT));
    }

    private static final Ingredient MILK = own("milk", 4, 0, 9);
    private static final Ingredient CREAM = own("cream", 40, 0, 5);
    private static final Ingredient SUGAR = own("sugar", 0, 100, 0);
    private static final Ingredient POWDER = own("powder", 0, 0, 96);

    private static double massG(Mix mix, Ingredient ingredient) {
        return mix.amounts().stream()
                .filter(amount -> amount.ingredient().equals(ingredient))
                .mapToDouble(amount -> amount.massG())
                .sum();
    }

    /** The square of Pearson: 4 and 40 % to a wanted share, by the differences. */
    @ParameterizedTest
    @CsvSource({"10, 833.333, 166.667", "22, 500, 500", "4, 1000, 0", "40, 0, 1000"})
    void milkAndCreamByTheSquare(double fat, double milkG, double creamG) {
        Mix mix = Balance.of(1000).using(MILK, CREAM).aiming(fat, Trait.MILK_FAT).solve().mix();
        assertEquals(milkG, massG(mix, MILK), SAME_G);
        assertEquals(creamG, massG(mix, CREAM), SAME_G);
    }

    /**
     * Sugar 15 %, fat 12 %, milk solids not fat 10 %: sugar 150 g; of milk m, cream c and powder p,
     * 4m + 40c = 12000, 9m + 5c + 96p = 10000, m + c + p = 850: m 568.678, c 243.132, p 38.190.
     */
    @Test
    void threeTargetsByThreeEquations() {
        Mix mix =
                Balance.of(1000)
                        .using(MILK, CREAM, SUGAR, POWDER)
                        .aiming(12, Trait.MILK_FAT)
                        .aiming(15, Trait.SUCROSE)
                        .aiming(10, Trait.MILK_SOLIDS_NOT_FAT)
                        .solve()
                        .mix();
        double[] solved = solved();
        assertEquals(150, massG(mix, SUGAR), SAME_G);
        assertEquals(solved[0], massG(mix, MILK), 5 * SAME_G);
        assertEquals(solved[1], massG(mix, CREAM), 5 * SAME_G);
        assertEquals(solved[2], massG(mix, POWDER), 5 * SAME_G);
    }

    /** c = 300 − m/10; 9m + 1500 − m/2 + 96(550 − 9m/10) = 10000. */
    private static double[] solved() {
        double milk = (1500 + 96 * 550 - 10_000) / (96 * 0.9 - 8.5);
        double cream = 300 - milk / 10;
        return new double[] {milk, cream, 850 - milk - cream};
    }

    /** A fixed mass stays, a bound is kept, and what is left does the work. */
    @Test
    void boundsAreKept() {
        Mix mix =
                Balance.of(1000)
                        .using(Choice.fixed(200, SUGAR))
                        .using(MILK)
                        .using(new Choice(CREAM, 0, 100))
                        .aiming(20, Trait.MILK_FAT)
                        .solve()
                        .mix();
        assertEquals(200, massG(mix, SUGAR), 1e-6);
        assertEquals(100, massG(mix, CREAM), SAME_G);
        assertEquals(700, massG(mix, MILK), SAME_G);
    }

    /** One row, two shares: minimise (2x − 0.5)² + 0.001(x − 0.5)² + 0.001(y − 0.5)², x + y = 1. */
    @Test
    void leastSquaresByHand() {
        double[] none = {0, 0};
        double[] all = {1, 1};
        double[] even = {0.5, 0.5};
        double x = (1 + 0.001) / (4 + 0.002);
        double[][] row = {{2, 0}};
        assertArrayEquals(
                new double[] {x, 1 - x},
                new BoundedLeastSquares(none, all, even, row, new double[] {0.5}).best(even),
                EXACT);
    }

    @Test
    void traitsByHand() {
        Mix mix = Mix.of(grams(500, MILK), grams(300, CREAM), grams(150, SUGAR), grams(50, POWDER));
        assertEquals(14, Trait.MILK_FAT.of(mix), EXACT);
        assertEquals(14, Trait.FAT.of(mix), EXACT);
        assertEquals(14, Trait.TOTAL_FAT.of(mix), EXACT);
        assertEquals(15, Trait.SUCROSE.of(mix), EXACT);
        double msnf = 4.5 + 1.5 + 4.8;
        assertEquals(msnf, Trait.MILK_SOLIDS_NOT_FAT.of(mix), EXACT);
        assertEquals(0.55 * msnf, Trait.LACTOSE.of(mix), EXACT);
        assertEquals(15 + 0.55 * msnf, Trait.SUGARS.of(mix), EXACT);
        assertEquals(0.37 * msnf, Trait.PROTEIN.of(mix), EXACT);
        double water = 100 - 14 - 15 - msnf;
        assertEquals(water, Trait.WATER.of(mix), EXACT);
        assertEquals(100 - water, Trait.TOTAL_SOLIDS.of(mix), EXACT);
        assertEquals(100 * (15 + 0.55 * msnf) / water, Trait.SUGAR_PER_WATER.of(mix), 1e-6);
        assertEquals(mix.initialFreezingPointC(), Trait.INITIAL_FREEZING_POINT.of(mix), EXACT);
        assertEquals(mix.freezingCurve().icePercentAt(-12), Trait.iceAt(-12).of(mix), EXACT);
        assertEquals(15 + 0.175 * 0.55 * msnf, Trait.SWEETNESS.of(mix), 1e-9);
        for (Trait none :
                List.of(Trait.ALCOHOL, Trait.STABILISER, Trait.EMULSIFIER, Trait.YOLK_SOLIDS)) {
            assertEquals(0, none.of(mix), EXACT, none::toString);
        }
        assertEquals(Trait.MILK_FAT, Trait.named(" Milk Fat "));
        assertEquals("ice at −18 °C", Trait.named("ice at -18 °C").words());
    }
}
