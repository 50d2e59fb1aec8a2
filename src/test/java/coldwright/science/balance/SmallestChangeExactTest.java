package coldwright.science.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;
import coldwright.science.mix.Tally;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Map;

/** Traits, wishes and changes of mixes so simple that they are solved by hand. */
class SmallestChangeExactTest {
    /** The search ends within 0.0001 g of the amount. */
    private static final double SEARCH_G = 2e-4;

    private static final Mix SYRUP = syrup(75, 25);

    private static Mix syrup(double waterG, double sucroseG) {
        return Mix.of(Amount.grams(waterG, Shelf.WATER), Amount.grams(sucroseG, Shelf.SUCROSE));
    }

    @Test
    void eachTraitIsThatOfTheComposition() {
        Composition parts =
                Composition.NOTHING
                        .with(50, Component.WATER)
                        .with(5, Component.MILK_FAT)
                        .with(4, Component.OTHER_FAT)
                        .with(3, Component.MILK_PROTEIN)
                        .with(2, Component.OTHER_PROTEIN)
                        .with(10, Component.SUCROSE)
                        .with(5, Component.LACTOSE)
                        .with(6, Component.GLUCOSE)
                        .with(1, Component.ALCOHOL)
                        .with(0.5, Component.SALT)
                        .with(0.3, Component.STABILISER)
                        .with(0.2, Component.EMULSIFIER)
                        .with(7.5, Tally.MILK_SOLIDS_NOT_FAT)
                        .with(2, Tally.YOLK_SOLIDS);
        Mix mix = Mix.of(Amount.grams(1000, Ingredient.own("all in one", parts)));
        Map.ofEntries(
                        Map.entry("water", 50.0),
                        Map.entry("fat", 9 - 2 * 26.54 / 47.69),
                        Map.entry("total fat", 9.0),
                        Map.entry("milk fat", 5.0),
                        Map.entry("milk solids not fat", 7.5),
                        Map.entry("sugars", 21.0),
                        Map.entry("sucrose", 10.0),
                        Map.entry("lactose", 5.0),
                        Map.entry("protein", 5.0),
                        Map.entry("total solids", 49.0),
                        Map.entry("alcohol", 1.0),
                        Map.entry("salt", 0.5),
                        Map.entry("stabiliser", 0.3),
                        Map.entry("emulsifier", 0.2),
                        Map.entry("yolk solids", 2.0),
                        Map.entry("sweetness", 10 + 5 * 0.175 + 6 * 0.77),
                        Map.entry("sugar per water", 42.0))
                .forEach(
                        (name, value) ->
                                assertEquals(value, Trait.named(name).of(mix), 1e-9, name));
        assertEquals("%", Trait.FAT.unit());
        assertEquals("g/100 g", Trait.SUGAR_PER_WATER.unit());
        assertEquals("°C", Trait.INITIAL_FREEZING_POINT.unit());
        assertEquals("% of the water", Trait.iceAt(-18).unit());
        assertEquals("ice at −18 °C", Trait.named("ice at -18 °C").toString());
        assertEquals(mix.initialFreezingPointC(), Trait.INITIAL_FREEZING_POINT.of(mix), "in °C");
    }

    @Test
    void aWishIncludesItsBounds() {
        for (double[] bounds : new double[][] {{75, 80}, {70, 75}, {75, 75}}) {
            assertTrue(wish(bounds[0], bounds[1]).grantedBy(SYRUP), bounds[0] + " to " + bounds[1]);
        }
        assertFalse(wish(75.1, 80).grantedBy(SYRUP));
        assertFalse(wish(70, 74.9).grantedBy(SYRUP));
        assertThrows(IllegalArgumentException.class, () -> wish(80, 75));
        Wish kept = Wish.without("dry", SYRUP, Trait.WATER, Shelf.RUM_40::equals);
        assertEquals(74.5, kept.least());
        assertEquals(75.5, kept.most());
        assertTrue(kept.grantedBy(SYRUP.with(Amount.grams(0, Shelf.RUM_40))));
        assertFalse(kept.grantedBy(SYRUP.with(Amount.grams(0.1, Shelf.RUM_40))));
        assertEquals(SYRUP, kept.cleared(SYRUP.with(Amount.grams(20, Shelf.RUM_40))));
    }

    private static Wish wish(double least, double most) {
        return Wish.within("wet enough", Trait.WATER, least, most);
    }

    /** Water must rise to 76.08 %, a fiftieth of the width inside the nearer edge. */
    @Test
    void moreWaterByLeastMass() {
        double aim = 0.7608;
        List<BatchFix> fixes = SmallestChange.ranked(SYRUP, wish(76, 80), List.of());
        assertEquals(3, fixes.size());
        assertChange(fixes.get(0), 0, -(100 - 75 / aim), "sucrose");
        assertChange(fixes.get(1), 0, -(100 * aim - 75), "sucrose");
        assertChange(fixes.get(1), 1, 100 * aim - 75, "water");
        assertChange(fixes.get(2), 0, (100 * aim - 75) / (1 - aim), "water");
        assertEquals(2 * (100 * aim - 75), fixes.get(1).movedG(), 2 * SEARCH_G);
        List<BatchFix> one = SmallestChange.smallest(1, SYRUP, wish(76, 80), List.of());
        assertEquals(1, one.size());
        assertChange(one.get(0), 0, -(100 - 75 / aim), "sucrose");
    }

    /** Water must fall to 73.92 %. */
    @Test
    void lessWaterByLeastMass() {
        double aim = 0.7392;
        List<BatchFix> fixes = SmallestChange.ranked(SYRUP, wish(70, 74), List.of());
        assertEquals(3, fixes.size());
        assertChange(fixes.get(0), 0, 75 / aim - 100, "sucrose");
        assertChange(fixes.get(1), 0, -(75 - 100 * aim), "water");
        assertChange(fixes.get(1), 1, 75 - 100 * aim, "sucrose");
        assertChange(fixes.get(2), 0, -(75 - 100 * aim) / (1 - aim), "water");
    }

    private static void assertChange(BatchFix fix, int index, double massG, String name) {
        AmountChange change = fix.changes().get(index);
        assertEquals(name, change.ingredient().name(), fix::toString);
        assertEquals(massG, change.massG(), SEARCH_G, fix::toString);
    }

    @Test
    void changesAndShortfallsAreRoundedInWords() {
        BatchFix fix =
                new BatchFix(
                        wish(76, 80),
                        List.of(
                                new AmountChange(-12.34, Shelf.SUCROSE),
                                new AmountChange(5, Shelf.WATER)),
                        SYRUP,
                        syrup(80.04, 19.96));
        assertEquals(17.34, fix.movedG(), 1e-9);
        assertEquals(
                "take out 12.3 g sucrose, add 5 g water: water from 75 to 80 %", fix.toString());
        assertEquals(
                "nothing to change: it is wet enough as it is",
                new BatchFix(wish(70, 80), List.of(), SYRUP, SYRUP).toString());
        Target target = new Target(Trait.WATER, 80);
        assertEquals(
                "water reaches 75.13 % where 80 was asked: short by 4.87",
                new Shortfall(target, 75.126).toString());
        assertEquals(
                "water reaches 85.5 % where 80 was asked: over by 5.5",
                new Shortfall(target, 85.5).toString());
    }

    @Test
    void boundsMayJustAddUpToTheTotal() {
        Balance fixed =
                Balance.of(1000)
                        .using(Choice.fixed(300, Shelf.WATER))
                        .using(Choice.fixed(700, Shelf.SUCROSE));
        assertTrue(fixed.aiming(30, Trait.WATER).solve().met());
        Balanced missed = fixed.aiming(31, Trait.WATER).solve();
        assertEquals(-1, missed.shortfalls().get(0).missedBy(), 1e-9);
        assertEquals(List.of(Shelf.WATER, Shelf.SUCROSE), missed.atLimit());
        Balance heavy = Balance.of(999).using(Choice.fixed(1000, Shelf.WATER));
        assertEquals(
                "the ingredients may weigh 1000 to 1000 g together, but the total is 999 g. Widen a bound or change the total.",
                assertThrows(IllegalArgumentException.class, heavy::solve).getMessage());
    }
}
