package coldwright.science.mix;

import static coldwright.science.mix.Amount.grams;
import static coldwright.science.mix.Shelf.CREAM_35;
import static coldwright.science.mix.Shelf.RUM_40;
import static coldwright.science.mix.Shelf.SKIM_MILK_POWDER;
import static coldwright.science.mix.Shelf.SUCROSE;
import static coldwright.science.mix.Shelf.WHOLE_MILK;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

import java.util.Set;

class MixTest {
    private final Mix base = Mix.of(grams(500, WHOLE_MILK), grams(130, SUCROSE));

    @Test
    void readsLikeTheTrade() {
        assertEquals(630, base.massG());
        assertEquals(130, base.massG(SUCROSE));
        assertEquals(0, base.massG(RUM_40));
        assertEquals(100 * (500 * .0478 + 130) / 630, base.sugarsPercent(), 1e-9);
        assertEquals(100 * 153.9 / (500 * .8813), base.sugarPer100gWater(), 1e-9);
        assertEquals(500 * .0315 / 630 * 100, base.proteinPercent(), 1e-9);
        assertEquals(Set.of(Allergen.MILK), base.allergens());
        assertEquals("500 g whole milk + 130 g sucrose", base.toString());
    }

    @Test
    void rumLowersTheFreezingPointMoreThanItsWeightOfSugar() {
        double rum = base.with(grams(30, RUM_40)).initialFreezingPointC();
        double sugar = base.with(grams(30, SUCROSE)).initialFreezingPointC();
        assertTrue(rum < sugar, rum + " against " + sugar);
    }

    @Test
    void sameIngredientTwiceIsAddedUp() {
        Mix twice = base.with(grams(70, SUCROSE));
        assertEquals(2, twice.amounts().size());
        assertEquals(200, twice.massG(SUCROSE));
    }

    @Test
    void contributionsNameWhoDoesWhat() {
        Contribution strongest = base.contributions().get(0);
        assertEquals(SUCROSE, strongest.ingredient());
        assertEquals("sucrose", strongest.solute());
        assertTrue(strongest.sharePercent() > 70);
    }

    @Test
    void contributionsSplitASoluteByMass() {
        Mix mix = base.with(grams(50, SKIM_MILK_POWDER));
        double fromMilk = lactose(mix, WHOLE_MILK);
        double fromPowder = lactose(mix, SKIM_MILK_POWDER);
        assertEquals(500 * 4.78 / (50 * 51.98), fromMilk / fromPowder, 1e-6);
    }

    private static double lactose(Mix mix, Ingredient from) {
        return mix.contributions().stream()
                .filter(c -> c.solute().equals("lactose") && c.ingredient().equals(from))
                .mapToDouble(Contribution::depressionC)
                .sum();
    }

    @Test
    void lactoseLimitFallsAsSugarAndFatRise() {
        LactoseSaturation rich =
                Mix.of(
                                grams(450, CREAM_35),
                                grams(300, WHOLE_MILK),
                                grams(150, SUCROSE),
                                grams(100, SKIM_MILK_POWDER))
                        .lactoseLimit();
        assertTrue(rich.sandyInStore());
        assertEquals(
                "milk solids-not-fat are 14.9 %; the trade allows 9.7 % in this mix before lactose turns sandy in storage: use less milk or whey powder",
                rich.verdict());
        assertFalse(base.lactoseLimit().sandyInStore());
        assertEquals(11.9, rich.saturationPer100gWater(), 1e-9);
    }

    /** Zoller and Williams made sand with 10 % fat, 14 % sucrose, 12 % milk solids not fat. */
    @Test
    void theMixOfTheSandTrialsIsSandyAndLessOfItIsNot() {
        assertTrue(ofMilkSolids(12).lactoseLimit().sandyInStore());
        assertFalse(ofMilkSolids(10.8).lactoseLimit().sandyInStore());
        assertEquals(12 / 11.0 * 65 / 64, LactoseSaturation.timesSound(ofMilkSolids(12), 0), 1e-9);
        assertTrue(LactoseSaturation.timesSound(ofMilkSolids(12), -12) > 1);
        assertEquals(1, LactoseSaturation.timesSound(ofMilkSolids(11), -12), 1e-9);
    }

    private static Mix ofMilkSolids(double percent) {
        Composition fatAndSugar =
                Composition.NOTHING
                        .with(76 - percent, Component.WATER)
                        .with(10, Component.MILK_FAT)
                        .with(14, Component.SUCROSE);
        return Mix.of(grams(100, Ingredient.own("mix", MilkSolids.addMilk(fatAndSugar, percent))));
    }

    @Test
    void addedLactoseTurnsSandyWithoutMilk() {
        Mix mix = Mix.of(grams(60, Shelf.WATER), grams(22, SUCROSE), grams(18, Shelf.LACTOSE));
        assertTrue(mix.lactoseLimit().sandyInStore());
        assertEquals(
                "lactose is 18 %, as much as 33 % of milk solids-not-fat bring; the trade allows 11.1 % in this mix before lactose turns sandy in storage: use less lactose or whey",
                mix.lactoseLimit().verdict());
        assertTrue(LactoseSaturation.timesSound(mix, -18) > 1.5);
    }

    @Test
    void solubilityKeepsToItsTables() {
        assertEquals(16.9, SugarSolubility.gPer100gWater(Component.LACTOSE, 15), 1e-9);
        assertMessage(
                "temperatureC is −18; it must be between 0 and 39 °C",
                () -> SugarSolubility.gPer100gWater(Component.LACTOSE, -18));
        assertMessage(
                "there is no solubility table for fructose; use sucrose, lactose or maltose",
                () -> SugarSolubility.gPer100gWater(Component.FRUCTOSE, 10));
    }

    @Test
    void tradeMethodStopsAtTheEndOfItsTable() {
        SucroseEquivalentMethod trade = Mix.of(grams(100, Shelf.HONEY)).tradeMethod();
        assertTrue(trade.beyondTable());
        assertEquals(-13.68, trade.initialFreezingPointC(), 1e-9);
        assertTrue(
                trade.why()
                        .endsWith(
                                " The table ends at 180 g per 100 g of water; the method only shows that the mix freezes below this."));
    }

    @Test
    void badInputIsOneSentence() {
        assertMessage(
                "massG of sucrose is −5; it must be between 0 and 10000000 g",
                () -> grams(-5, SUCROSE));
        assertMessage(
                "massG of sucrose is not a number; it must be between 0 and 10000000 g",
                () -> grams(Double.NaN, SUCROSE));
        assertMessage(
                "massG of the mix is 0 g; it must be more than zero",
                () -> Mix.of(grams(0, SUCROSE)));
        assertMessage("massG of the mix is 0 g; it must be more than zero", Mix::of);
        assertMessage(
                "rum 40 % isn't in this mix, so it can't be left out; the mix has whole milk, sucrose",
                () -> base.without(RUM_40));
        assertMessage("newMassG is 0 g; it must be more than zero", () -> base.scaledTo(0));
        assertMessage(
                "this mix has no water, so it has no freezing point. Add water, milk or juice.",
                () -> Mix.of(grams(100, Shelf.ETHANOL)).initialFreezingPointC());
        assertMessage(
                "the composition adds up to 110 % with 60 % sucrose; it may be at most 100 %",
                () -> Composition.NOTHING.with(50, Component.WATER).with(60, Component.SUCROSE));
    }

    static void assertMessage(String message, Executable action) {
        assertEquals(message, assertThrows(IllegalArgumentException.class, action).getMessage());
    }
}
