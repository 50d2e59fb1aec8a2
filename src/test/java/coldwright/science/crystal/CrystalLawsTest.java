package coldwright.science.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class CrystalLawsTest {
    private static final Mix SORBET =
            Mix.of(Amount.grams(72, Shelf.WATER), Amount.grams(28, Shelf.SUCROSE));

    private static final CrystalStory DRAWN = CrystalStory.of(SORBET).frozenBy(Method.MACHINE);

    /** Long enough for the coldest store to show more than rounding. */
    private static final double DAYS = 30;

    @Property(tries = 12)
    void warmerStorageCoarsensFaster(@ForAll @DoubleRange(min = -15, max = -6) double storeC) {
        double colder = DRAWN.storedAt(storeC).forDays(DAYS).meanUm().middle();
        double warmer = DRAWN.storedAt(storeC + 1).forDays(DAYS).meanUm().middle();
        assertTrue(warmer > colder, colder + " then " + warmer);
    }

    @Property(tries = 12)
    void swingsCoarsenFasterThanSteadyCold(
            @ForAll @DoubleRange(min = -15, max = -6) double storeC,
            @ForAll @DoubleRange(min = 1, max = 3) double swingC) {
        double steady = DRAWN.storedAt(storeC).forDays(DAYS).meanUm().middle();
        double swung = DRAWN.storedAt(storeC).swinging(swingC).forDays(DAYS).meanUm().middle();
        assertTrue(swung > steady, steady + " then " + swung);
    }

    @Property(tries = 12)
    void widerSwingsCoarsenFaster(@ForAll @DoubleRange(min = -15, max = -8) double storeC) {
        double narrow = DRAWN.storedAt(storeC).swinging(1).forDays(DAYS).meanUm().middle();
        double wide = DRAWN.storedAt(storeC).swinging(3).forDays(DAYS).meanUm().middle();
        assertTrue(wide > narrow);
    }

    @Property(tries = 10)
    void slowerFreezingGivesLargerCrystals(
            @ForAll Method method, @ForAll @DoubleRange(min = 0.5, max = 1.5) double timesUsual) {
        double minutes = timesUsual * method.usualMinutes().middle();
        double quick = CrystalStory.of(SORBET).frozenBy(method, minutes).meanUm().middle();
        double slow = CrystalStory.of(SORBET).frozenBy(method, 2 * minutes).meanUm().middle();
        assertTrue(slow > quick, quick + " then " + slow);
    }

    @Property(tries = 10)
    void longerStorageNeverMakesThemSmaller(@ForAll @DoubleRange(max = 60) double days) {
        CrystalStory some = DRAWN.storedAt(-12).forDays(days);
        CrystalStory more = some.storedAt(-12).forDays(DAYS);
        assertTrue(more.meanUm().middle() > some.meanUm().middle());
    }

    @Property(tries = 10)
    void storingTwiceEqualsStoringAtOnce(@ForAll @DoubleRange(min = 1, max = 20) double days) {
        double once = DRAWN.storedAt(-12).forDays(2 * days).meanUm().middle();
        double twice =
                DRAWN.storedAt(-12).forDays(days).storedAt(-12).forDays(days).meanUm().middle();
        assertEquals(once, twice, 0.01 * once);
    }

    @Property(tries = 10)
    void heatShockCoarsensAndMoreSoWhenWarmer(@ForAll @DoubleRange(min = -8, max = -4) double upC) {
        CrystalStory hard = DRAWN.storedAt(-18).forDays(1);
        double mild = hard.heatShock(upC - 2, 3).meanUm().middle();
        double strong = hard.heatShock(upC, 3).meanUm().middle();
        assertTrue(mild > hard.meanUm().middle());
        assertTrue(strong > mild);
    }

    @Property(tries = 200)
    void colderSyrupSlowsCoarsening(@ForAll @DoubleRange(min = -30, max = -3) double temperatureC) {
        Slush slush = Slush.of(Solution.inWater(75).with(25, Solute.SUCROSE));
        assertTrue(slush.growthUm3PerS(temperatureC - 0.5) < slush.growthUm3PerS(temperatureC));
    }

    @Property(tries = 100)
    void thickerSyrupOfTheSameColdSlowsCoarsening(
            @ForAll @DoubleRange(min = -15, max = -3) double temperatureC,
            @ForAll @DoubleRange(min = 1, max = 10) double maltodextrinG) {
        Solution syrup = Solution.inWater(75).with(25, Solute.SUCROSE);
        double liquidG = 75 - syrup.freezingCurve().iceG(temperatureC);
        double thin = Syrup.of(syrup, Syrup.Extras.NONE, liquidG, temperatureC).growthUm3PerS();
        Syrup.Extras long_ = new Syrup.Extras(maltodextrinG, 0);
        double thick = Syrup.of(syrup, long_, liquidG, temperatureC).growthUm3PerS();
        assertTrue(thick < thin);
    }

    @Property(tries = 100)
    void smallerSugarsCoarsenFasterInTheSameCold(
            @ForAll @DoubleRange(min = -20, max = -5) double temperatureC) {
        Slush sucrose = Slush.of(Solution.inWater(75).with(25, Solute.SUCROSE));
        Slush fructose = Slush.of(Solution.inWater(75).with(25, Solute.FRUCTOSE));
        assertTrue(fructose.growthUm3PerS(temperatureC) > sucrose.growthUm3PerS(temperatureC));
    }

    @Property(tries = 50)
    void theStoryCoarsensAtLeastAsFastAsCrystalsFarApart(
            @ForAll @DoubleRange(min = -12, max = -6) double storeC) {
        CrystalStory cold = DRAWN.storedAt(storeC).forDays(2);
        double start = cold.meanUm().middle();
        double end = cold.storedAt(storeC).forDays(10).meanUm().middle();
        double apart =
                Coarsening.of(SORBET)
                        .meanUmAfter(start, new Coarsening.Keeping(storeC, 10))
                        .middle();
        assertTrue(end > start && apart > start);
        assertTrue(end > 0.9 * apart, end + " against " + apart);
    }

    @Property(tries = 50)
    void heatAndDiffusionBothHoldGrowthBack(
            @ForAll @DoubleRange(min = -20, max = -2.5) double temperatureC) {
        Slush slush = Slush.of(Solution.inWater(75).with(25, Solute.SUCROSE));
        double heatAlone = Syrup.byHeatM3PerS() * 1e18;
        assertTrue(slush.growthUm3PerS(temperatureC) < heatAlone);
        Slush nearlyWater = Slush.of(Solution.inWater(1000).with(1, Solute.SUCROSE));
        assertTrue(nearlyWater.growthUm3PerS(-0.02) > 0.5 * heatAlone);
    }
}
