package coldwright.science.balance;

import static coldwright.science.mix.Amount.grams;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;

import org.junit.jupiter.api.Test;

import java.util.List;

/** What a balance says of targets out of reach and of bounds, each worked out by hand. */
class BalanceLimitsTest {
    private static Ingredient own(String name, double fat, double sucrose) {
        return Ingredient.own(
                name,
                Composition.NOTHING
                        .with(100 - fat - sucrose, Component.WATER)
                        .with(fat, Component.MILK_FAT)
                        .with(sucrose, Component.SUCROSE));
    }

    private static final Ingredient WATER = own("water", 0, 0);
    private static final Ingredient MILK = own("milk", 4, 0);
    private static final Ingredient CREAM = own("cream", 40, 0);
    private static final Ingredient SUGAR = own("sugar", 0, 100);

    private static double massG(Mix mix, Ingredient ingredient) {
        return mix.amounts().stream()
                .filter(amount -> amount.ingredient().equals(ingredient))
                .mapToDouble(amount -> amount.massG())
                .sum();
    }

    private static Shortfall only(Balanced found) {
        assertEquals(1, found.shortfalls().size());
        assertFalse(found.met());
        return found.shortfalls().get(0);
    }

    /** Milk alone has 4 %: 6 % too little, and nothing at hand is a source of more. */
    @Test
    void whatNothingBringsIsLacking() {
        Shortfall fat = only(Balance.of(500).using(MILK, WATER).aiming(10, Trait.MILK_FAT).solve());
        assertEquals(4, fat.reached(), 1e-3);
        assertEquals(-6, fat.missedBy(), 1e-3);
        assertTrue(fat.lacking());
    }

    /** 100 g of cream in 1 kg: (100 × 40 + 900 × 4) / 1000 = 7.6 %; the cream is a source. */
    @Test
    void whatABoundKeepsShortIsNotLacking() {
        Balanced found =
                Balance.of(1000)
                        .using(MILK)
                        .using(new Choice(CREAM, 0, 100))
                        .aiming(20, Trait.MILK_FAT)
                        .solve();
        Shortfall fat = only(found);
        assertEquals(7.6, fat.reached(), 1e-3);
        assertFalse(fat.lacking());
        assertEquals(List.of(CREAM), found.atLimit());
    }

    /** A fixed amount of cream can't be raised, so it is no source. */
    @Test
    void whatIsFixedIsNoSource() {
        Shortfall fat =
                only(
                        Balance.of(1000)
                                .using(MILK)
                                .using(Choice.fixed(100, CREAM))
                                .aiming(20, Trait.MILK_FAT)
                                .solve());
        assertEquals(7.6, fat.reached(), 1e-3);
        assertTrue(fat.lacking());
    }

    /** From the other side: all have too much, or one that has less is bounded. */
    @Test
    void whatIsOverIsLackingIfNothingHasLess() {
        Shortfall over =
                only(Balance.of(1000).using(MILK, CREAM).aiming(1, Trait.MILK_FAT).solve());
        assertEquals(3, over.missedBy(), 1e-3);
        assertTrue(over.lacking());
        Shortfall bounded =
                only(
                        Balance.of(1000)
                                .using(MILK)
                                .using(new Choice(WATER, 0, 250))
                                .aiming(1, Trait.MILK_FAT)
                                .solve());
        assertEquals(2, bounded.missedBy(), 1e-3);
        assertFalse(bounded.lacking());
    }

    /** What doesn't mix in proportion has no sources to name: −1 °C without anything dissolved. */
    @Test
    void aFreezingPointIsNeverLacking() {
        Shortfall point =
                only(
                        Balance.of(1000)
                                .using(WATER)
                                .aiming(-1, Trait.INITIAL_FREEZING_POINT)
                                .solve());
        assertEquals(1, point.missedBy(), 1e-3);
        assertFalse(point.lacking());
    }

    /** A target missed by a thousandth of its unit is met; by two, it isn't. */
    @Test
    void metIsWithinAThousandth() {
        Balance milk = Balance.of(1000).using(MILK);
        assertTrue(milk.aiming(4.0009, Trait.MILK_FAT).solve().met());
        assertTrue(milk.aiming(3.9991, Trait.MILK_FAT).solve().met());
        assertFalse(milk.aiming(4.002, Trait.MILK_FAT).solve().met());
        assertFalse(milk.aiming(3.998, Trait.MILK_FAT).solve().met());
    }

    /** Sugar at its least, cream at its most, milk and water between: 50 + 100 + 850 g. */
    @Test
    void limitsAreNamedFromBothSides() {
        Balanced found =
                Balance.of(1000)
                        .using(new Choice(SUGAR, 50, 300))
                        .using(new Choice(CREAM, 20, 100))
                        .using(new Choice(MILK, 10, 2000))
                        .aiming(0, Trait.SUCROSE)
                        .aiming(30, Trait.MILK_FAT)
                        .solve();
        assertEquals(List.of(SUGAR, CREAM), found.atLimit());
        assertEquals(50, massG(found.mix(), SUGAR), 1e-6);
        assertEquals(100, massG(found.mix(), CREAM), 1e-6);
        assertEquals(850, massG(found.mix(), MILK), 1e-6);
    }

    /** Bounds that just add up to the total leave one mix; a gram less or more leaves none. */
    @Test
    void boundsThatJustAddUp() {
        Balance most =
                Balance.of(1000).using(new Choice(MILK, 0, 600)).using(new Choice(SUGAR, 0, 400));
        assertEquals(600, massG(most.solve().mix(), MILK), 1e-6);
        assertEquals(List.of(MILK, SUGAR), most.solve().atLimit());
        Balance least =
                Balance.of(1000)
                        .using(new Choice(MILK, 600, 900))
                        .using(new Choice(SUGAR, 400, 900));
        assertEquals(400, massG(least.solve().mix(), SUGAR), 1e-6);
        assertRefused(
                Balance.of(1000).using(new Choice(MILK, 0, 599)).using(new Choice(SUGAR, 0, 400)));
        assertRefused(
                Balance.of(1000)
                        .using(new Choice(MILK, 601, 900))
                        .using(new Choice(SUGAR, 400, 900)));
        assertRefused(Balance.of(1000));
    }

    private static void assertRefused(Balance balance) {
        assertThrows(IllegalArgumentException.class, balance::solve);
    }

    @Test
    void whatCannotBeATargetOrABoundIsRefused() {
        assertThrows(
                IllegalArgumentException.class, () -> new Target(Trait.SUGARS, Double.NaN, true));
        assertThrows(IllegalArgumentException.class, () -> new Choice(MILK, 2, 1));
        assertThrows(IllegalArgumentException.class, () -> new Choice(MILK, -1, 1));
    }

    /** Sugar per water in a mix of water and sugar: 25 g to 100 g is a fifth of the mass. */
    @Test
    void aRatioIsMetStepByStep() {
        Mix mix =
                Balance.of(2000)
                        .using(WATER, SUGAR)
                        .aiming(25, Trait.SUGAR_PER_WATER)
                        .solve()
                        .mix();
        assertEquals(400, massG(mix, SUGAR), 0.1);
    }

    /** Without a target the total is shared out evenly, as far as the bounds allow. */
    @Test
    void withoutATargetTheSharesAreEven() {
        Mix even = Balance.of(900).using(MILK, CREAM, SUGAR).solve().mix();
        assertEquals(300, massG(even, MILK), 1e-6);
        assertEquals(300, massG(even, SUGAR), 1e-6);
        Mix bounded =
                Balance.of(900).using(MILK, CREAM).using(new Choice(SUGAR, 0, 100)).solve().mix();
        assertEquals(400, massG(bounded, MILK), 1e-6);
        assertEquals(400, massG(bounded, CREAM), 1e-6);
    }

    /**
     * Without rows the shares nearest to the centre are wanted, by Lagrange: the missing 0.4 is
     * shared out evenly among those that are free, so 0.1 + 0.2, 0.2 + 0.2 and 0.3 at its bound.
     */
    @Test
    void theNearestSharesByHand() {
        double[] centre = {0.1, 0.2, 0.7};
        double[] least = {0, 0, 0};
        double[] most = {1, 1, 0.3};
        double[] best =
                new BoundedLeastSquares(least, most, centre, new double[0][], new double[0])
                        .best(centre);
        assertArrayEquals(new double[] {0.3, 0.4, 0.3}, best, 1e-9);
        double[] far = {5, -3, 0.2};
        assertArrayEquals(
                best,
                new BoundedLeastSquares(least, most, centre, new double[0][], new double[0])
                        .best(far),
                1e-9);
        double[] floor = {0.5, 0.4, 0};
        double[] low = {0.5, 0.4, 0.1};
        assertArrayEquals(
                low,
                new BoundedLeastSquares(
                                floor, new double[] {1, 1, 1}, low, new double[0][], new double[0])
                        .best(new double[] {1, 1, 1}),
                1e-9);
        assertThrows(
                IllegalStateException.class,
                () ->
                        new BoundedLeastSquares(
                                        least,
                                        new double[] {0.2, 0.2, 0.2},
                                        centre,
                                        new double[0][],
                                        new double[0])
                                .best(centre));
        assertThrows(
                IllegalStateException.class,
                () ->
                        new BoundedLeastSquares(
                                        new double[] {0.5, 0.5, 0.1},
                                        new double[] {1, 1, 1},
                                        centre,
                                        new double[0][],
                                        new double[0])
                                .best(centre));
    }

    @Test
    void changesAndShortfallsInWords() {
        assertEquals("add 12.3 g sugar", new AmountChange(12.34, SUGAR).toString());
        assertEquals("take out 12.3 g sugar", new AmountChange(-12.34, SUGAR).toString());
        Target target = new Target(Trait.MILK_FAT, 10);
        assertTrue(new Shortfall(target, 12, false).toString().contains("2"));
        assertEquals("milk fat", Trait.MILK_FAT.words());
        assertEquals("%", Trait.MILK_FAT.unit());
        assertEquals("°C", Trait.INITIAL_FREEZING_POINT.unit());
        Mix half = Mix.of(grams(50, MILK), grams(50, CREAM));
        assertEquals(
                22,
                Trait.byMass("own fat", mix -> mix.composition().percent(Component.MILK_FAT))
                        .of(half),
                1e-9);
        assertEquals(100, Trait.of("own mass", "g", Mix::massG).of(half), 1e-9);
    }
}
