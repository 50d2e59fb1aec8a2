package coldwright.science.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

class CrystalLawsTest {
    private static final Mix SORBET =
            Mix.of(Amount.grams(72, Shelf.WATER), Amount.grams(28, Shelf.SUCROSE));

    private static final CrystalStory DRAWN = CrystalStory.of(SORBET).frozenBy(Method.MACHINE);

    /** Long enough for the coldest store to show more than rounding. */
    private static final double DAYS = 30;

    @Cases(12)
    void warmerStorageCoarsensFaster(Draw draw) {
        double storeC = draw.doubleIn(-15, -6);
        double colder = DRAWN.storedAt(storeC).forDays(DAYS).meanUm().middle();
        double warmer = DRAWN.storedAt(storeC + 1).forDays(DAYS).meanUm().middle();
        assertTrue(warmer > colder, colder + " then " + warmer);
    }

    @Cases(12)
    void swingsCoarsenFasterThanSteadyCold(Draw draw) {
        double storeC = draw.doubleIn(-15, -6);
        double swingC = draw.doubleIn(1, 3);
        double steady = DRAWN.storedAt(storeC).forDays(DAYS).meanUm().middle();
        double swung = DRAWN.storedAt(storeC).swinging(swingC).forDays(DAYS).meanUm().middle();
        assertTrue(swung > steady, steady + " then " + swung);
    }

    @Cases(12)
    void widerSwingsCoarsenFaster(Draw draw) {
        double storeC = draw.doubleIn(-15, -8);
        double narrow = DRAWN.storedAt(storeC).swinging(1).forDays(DAYS).meanUm().middle();
        double wide = DRAWN.storedAt(storeC).swinging(3).forDays(DAYS).meanUm().middle();
        assertTrue(wide > narrow);
    }

    @Cases(10)
    void slowerFreezingGivesLargerCrystals(Draw draw) {
        Method method = draw.oneOf(Method.values());
        double timesUsual = draw.doubleIn(0.5, 1.5);
        double minutes = timesUsual * method.usualMinutes().middle();
        double quick = CrystalStory.of(SORBET).frozenBy(method, minutes).meanUm().middle();
        double slow = CrystalStory.of(SORBET).frozenBy(method, 2 * minutes).meanUm().middle();
        assertTrue(slow > quick, quick + " then " + slow);
    }

    @Cases(10)
    void longerStorageNeverMakesThemSmaller(Draw draw) {
        double days = draw.doubleIn(0, 60);
        CrystalStory some = DRAWN.storedAt(-12).forDays(days);
        CrystalStory more = some.storedAt(-12).forDays(DAYS);
        assertTrue(more.meanUm().middle() > some.meanUm().middle());
    }

    @Cases(10)
    void storingTwiceEqualsStoringAtOnce(Draw draw) {
        double days = draw.doubleIn(1, 20);
        double once = DRAWN.storedAt(-12).forDays(2 * days).meanUm().middle();
        double twice =
                DRAWN.storedAt(-12).forDays(days).storedAt(-12).forDays(days).meanUm().middle();
        assertEquals(once, twice, 0.01 * once);
    }

    @Cases(10)
    void heatShockCoarsensAndMoreSoWhenWarmer(Draw draw) {
        double upC = draw.doubleIn(-8, -4);
        CrystalStory hard = DRAWN.storedAt(-18).forDays(1);
        double mild = hard.heatShock(upC - 2, 3).meanUm().middle();
        double strong = hard.heatShock(upC, 3).meanUm().middle();
        assertTrue(mild > hard.meanUm().middle());
        assertTrue(strong > mild);
    }

    @Cases(200)
    void colderSyrupSlowsCoarsening(Draw draw) {
        double temperatureC = draw.doubleIn(-30, -3);
        FrozenMixTable frozenMixTable =
                FrozenMixTable.of(Solution.inWater(75).with(25, Solute.SUCROSE));
        assertTrue(
                frozenMixTable.growthUm3PerS(temperatureC - 0.5)
                        < frozenMixTable.growthUm3PerS(temperatureC));
    }

    @Cases(100)
    void thickerSyrupOfTheSameColdSlowsCoarsening(Draw draw) {
        double temperatureC = draw.doubleIn(-15, -3);
        double maltodextrinG = draw.doubleIn(1, 10);
        Solution syrup = Solution.inWater(75).with(25, Solute.SUCROSE);
        double liquidG = 75 - syrup.freezingCurve().iceG(temperatureC);
        double thin =
                UnfrozenSyrup.of(syrup, UnfrozenSyrup.LongSugars.NONE, liquidG, temperatureC)
                        .growthUm3PerS();
        UnfrozenSyrup.LongSugars long_ = new UnfrozenSyrup.LongSugars(maltodextrinG, 0);
        double thick = UnfrozenSyrup.of(syrup, long_, liquidG, temperatureC).growthUm3PerS();
        assertTrue(thick < thin);
    }

    @Cases(100)
    void smallerSugarsCoarsenFasterInTheSameCold(Draw draw) {
        double temperatureC = draw.doubleIn(-20, -5);
        FrozenMixTable sucrose = FrozenMixTable.of(Solution.inWater(75).with(25, Solute.SUCROSE));
        FrozenMixTable fructose = FrozenMixTable.of(Solution.inWater(75).with(25, Solute.FRUCTOSE));
        assertTrue(fructose.growthUm3PerS(temperatureC) > sucrose.growthUm3PerS(temperatureC));
    }

    @Cases(50)
    void theStoryCoarsensAtLeastAsFastAsCrystalsFarApart(Draw draw) {
        double storeC = draw.doubleIn(-12, -6);
        CrystalStory cold = DRAWN.storedAt(storeC).forDays(2);
        double start = cold.meanUm().middle();
        double end = cold.storedAt(storeC).forDays(10).meanUm().middle();
        double apart =
                Coarsening.of(SORBET)
                        .meanUmAfter(start, new Coarsening.StorageTime(storeC, 10))
                        .middle();
        assertTrue(end > start && apart > start);
        assertTrue(end > 0.9 * apart, end + " against " + apart);
    }

    @Cases(50)
    void heatAndDiffusionBothHoldGrowthBack(Draw draw) {
        double temperatureC = draw.doubleIn(-20, -2.5);
        FrozenMixTable frozenMixTable =
                FrozenMixTable.of(Solution.inWater(75).with(25, Solute.SUCROSE));
        double heatAlone = UnfrozenSyrup.byHeatM3PerS() * 1e18;
        assertTrue(frozenMixTable.growthUm3PerS(temperatureC) < heatAlone);
        FrozenMixTable nearlyWater =
                FrozenMixTable.of(Solution.inWater(1000).with(1, Solute.SUCROSE));
        assertTrue(nearlyWater.growthUm3PerS(-0.02) > 0.5 * heatAlone);
    }
}
