package coldwright.science.emulsion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;

class EmulsionTest {
    /** Common practice, no source: cold cream under the whisk, 8 to 10 minutes (fitted). */
    @Test
    void whiskedCreamTurnsToButterInTheUsualTime() {
        double minutes =
                new Churning(38, 8, false, false).minutesToButter(Churning.Motion.WHISK).middle();
        assertTrue(minutes > 8 && minutes < 10, minutes + " min");
    }

    @Test
    void yolkIsSeenInTheMixAndHomogenisingHelps() {
        Mix rich =
                Mix.of(
                        Amount.grams(300, Shelf.WHOLE_MILK),
                        Amount.grams(400, Shelf.HEAVY_CREAM),
                        Amount.grams(120, Shelf.SUCROSE));
        Churning plain = Churning.of(rich, 4);
        Churning custard = Churning.of(rich.with(Amount.grams(80, Shelf.find("egg yolk"))), 4);
        assertTrue(custard.emulsified() && !plain.emulsified());
        double now = plain.clumpedPercent(10, Churning.Motion.WHISK).middle();
        assertTrue(
                plain.withFineGlobules().clumpedPercent(10, Churning.Motion.WHISK).middle() < now);
    }

    @Test
    void liquidFatNeverChurns() {
        Churning warm = new Churning(38, 40, false, false);
        assertEquals(0, warm.clumpedPercent(60, Churning.Motion.WHISK).middle());
        assertEquals(
                Double.POSITIVE_INFINITY, warm.minutesToButter(Churning.Motion.WHISK).middle());
    }

    @Test
    void theVerdictNamesButterAndCallsItATrend() {
        String said = new Churning(38, 8, false, true).verdict(20, Churning.Motion.WHISK);
        assertTrue(said.startsWith("butter: about"), said);
        assertTrue(said.endsWith("a trend"), said);
    }

    @Test
    void aThickMixCreamsSlowerThanMilk() {
        Mix thick =
                Mix.of(
                        Amount.grams(500, Shelf.WHOLE_MILK),
                        Amount.grams(250, Shelf.HEAVY_CREAM),
                        Amount.grams(130, Shelf.SUCROSE),
                        Amount.grams(4, Shelf.find("locust bean gum")));
        Creaming mix = Creaming.in(MixViscosity.of(thick), 5);
        Creaming milk =
                Creaming.in(MixViscosity.of(Mix.of(Amount.grams(1000, Shelf.WHOLE_MILK))), 5);
        assertTrue(mix.umPerS(3) < 0.1 * milk.umPerS(3));
        assertTrue(milk.serum().densityGapKgPerM3() > 80);
    }

    @Test
    void yolkAddsCover() {
        Mix plain =
                Mix.of(
                        Amount.grams(500, Shelf.WHOLE_MILK),
                        Amount.grams(200, Shelf.HEAVY_CREAM),
                        Amount.grams(120, Shelf.SUCROSE));
        Mix custard = plain.with(Amount.grams(80, Shelf.find("egg yolk")));
        GlobuleSizes sizes = GlobuleSizes.homogenised();
        double perFatPlain =
                new FatSurface(plain, sizes).timesCovered().middle() * plain.fatPercent();
        double perFatCustard =
                new FatSurface(custard, sizes).timesCovered().middle() * custard.fatPercent();
        assertTrue(perFatCustard > perFatPlain);
    }

    @Test
    void noFatNeedsNoCover() {
        Mix sorbet = Mix.of(Amount.grams(70, Shelf.WATER), Amount.grams(30, Shelf.SUCROSE));
        FatSurface surface = new FatSurface(sorbet, GlobuleSizes.homogenised());
        assertEquals(0, surface.m2Per100g());
        assertEquals(Double.POSITIVE_INFINITY, surface.timesCovered().middle());
    }

    @Test
    void cookedStarchThickensRawStarchDoesNot() {
        Mix mix =
                Mix.of(
                        Amount.grams(900, Shelf.WHOLE_MILK),
                        Amount.grams(30, Shelf.find("corn starch")),
                        Amount.grams(120, Shelf.SUCROSE));
        double raw = MixViscosity.of(mix).mPaSAt(20).middle();
        double cooked = MixViscosity.of(mix).withStarchCooked().mPaSAt(20).middle();
        assertTrue(cooked > 2 * raw, raw + " then " + cooked);
        assertTrue(MixViscosity.of(mix).notes().get(0).startsWith("raw starch"));
    }

    @Test
    void aGumIsKnownByItsName() {
        assertEquals(Thickener.XANTHAN, Thickener.of(Shelf.find("xanthan gum")));
        assertEquals(Thickener.UNKNOWN_BLEND, Thickener.of(Shelf.WHOLE_MILK));
    }

    @Test
    void kelvinIsRefused() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> MilkFat.solidPercent(283));
        assertEquals("temperatureC is 283; it must be between −20 and 40 °C", e.getMessage());
    }
}
