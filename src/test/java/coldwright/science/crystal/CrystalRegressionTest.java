package coldwright.science.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.science.Band;
import coldwright.science.bath.IceAndSalt;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Regression values: this program's own numbers, no check of nature. Constants that rest on
 * judgement (how often a wall is swept, how many crystals break) have no published value; a change
 * that moves a result must at least be seen and meant.
 */
class CrystalRegressionTest {
    /** Of the value: far below any of the model's errors. */
    private static final double TIGHT = 1e-4;

    private static final Mix MIX =
            Mix.of(
                    Amount.grams(500, Shelf.WHOLE_MILK),
                    Amount.grams(250, Shelf.HEAVY_CREAM),
                    Amount.grams(130, Shelf.SUCROSE),
                    Amount.grams(45, Shelf.find("skimmed milk powder")));

    private static void is(double low, double middle, double high, Band found) {
        assertEquals(low, found.low(), TIGHT * low, found::toString);
        assertEquals(middle, found.middle(), TIGHT * middle, found::toString);
        assertEquals(high, found.high(), TIGHT * high, found::toString);
    }

    @ParameterizedTest
    @CsvSource({
        "BAG, 26.7256, 34.2566, 42.9765",
        "MACHINE, 21.991, 28.7863, 36.1675",
        "SHAKEN_TUB, 33.7238, 42.6004, 54.0117",
        "STILL_TUB, 43.5051, 68.4467, 106.581"
    })
    void sizesAsFrozen(Method method, double low, double middle, double high) {
        is(low, middle, high, CrystalStory.of(MIX).frozenBy(method).meanUm());
    }

    @ParameterizedTest
    @CsvSource({
        "BAG, 33.8741, 42.6002, 53.5951",
        "MACHINE, 29.807, 36.9254, 45.9292",
        "SHAKEN_TUB, 35.4401, 44.3382, 55.7096",
        "STILL_TUB, 43.8448, 69.2115, 107.895"
    })
    void sizesAfterAWeek(Method method, double low, double middle, double high) {
        is(
                low,
                middle,
                high,
                CrystalStory.of(MIX).frozenBy(method).storedAt(-18).forDays(7).meanUm());
    }

    @ParameterizedTest
    @CsvSource({
        "BAG, 41.2068, 51.5064, 64.6167",
        "MACHINE, 39.6647, 49.438, 62.0355",
        "SHAKEN_TUB, 50.4514, 64.2802, 81.6455",
        "STILL_TUB, 45.1421, 67.8407, 105.529"
    })
    void sizesAfterAWeekOfSwings(Method method, double low, double middle, double high) {
        CrystalStory frozen = CrystalStory.of(MIX).frozenBy(method);
        is(low, middle, high, frozen.storedAt(-12).swinging(2).forDays(7).meanUm());
    }

    @Test
    void sizesBlendedAndShocked() {
        is(
                19.8052,
                28.2582,
                42.4946,
                CrystalStory.of(MIX).frozenBy(Method.STILL_TUB).blended().meanUm());
        CrystalStory stored =
                CrystalStory.of(MIX).frozenBy(Method.MACHINE).storedAt(-18).forDays(7);
        is(33.3524, 41.5022, 51.6984, stored.heatShock(-6, 2).meanUm());
    }

    @Test
    void sizesByVolumeNumbersAndCoarseIce() {
        CrystalSizes sizes =
                CrystalStory.of(MIX).frozenBy(Method.BAG).storedAt(-18).forDays(30).sizes();
        is(39.4446, 49.0162, 61.2432, sizes.volumeMeanUm());
        is(6.41931, 12.616, 24.1883, sizes.millionsPerMl());
        assertEquals(49.1892, sizes.coarseIcePercent().middle(), 0.01);
    }

    @ParameterizedTest
    @CsvSource({
        "-3.0, 412000, 7.84825",
        "-5.0, 109220, 20.2591",
        "-10.0, 8397.96, 204.203",
        "-18.0, 219.364, 10508.7",
        "-30.0, 0.628528, 2.47202e+07"
    })
    void ratesOfCoarsening(double temperatureC, double cubeUm3PerDay, double viscosityMPaS) {
        Coarsening coarsening = Coarsening.of(MIX);
        double found = coarsening.cubeUm3PerDay(temperatureC).middle();
        assertEquals(cubeUm3PerDay, found, TIGHT * cubeUm3PerDay);
        double thick = coarsening.liquidViscosityMPaS(temperatureC);
        assertEquals(viscosityMPaS, thick, TIGHT * viscosityMPaS);
    }

    /** 1.2 times slower from 0.05 % of stabiliser on (J. Mo et al., Crystals 9 (2019) 321). */
    @Test
    void aStabiliserSlowsTheRateByTheirFactor() {
        double plain = Coarsening.of(MIX).cubeUm3PerDay(-12).middle();
        assertEquals(plain / 1.2, rateWithGum(1, -12), TIGHT * plain);
        assertEquals(plain, rateWithGum(0.4, -12), TIGHT * plain, "0.038 % is too little");
    }

    private static double rateWithGum(double gumG, double temperatureC) {
        Mix mix = MIX.with(Amount.grams(gumG, Shelf.GUAR_GUM));
        return Coarsening.of(mix).cubeUm3PerDay(temperatureC).middle();
    }

    /** Six hours from soft to −18 °C, ten from liquid (common practice, no source). */
    @ParameterizedTest
    @CsvSource({
        "-25, 5.27937, 29.2856, 36.2995, 45.6161",
        "-18, 6, 29.7239, 36.8707, 45.7378",
        "-12, 7.06858, 30.2146, 37.4808, 47.0733",
        "-8, 7.42384, 32.506, 40.3146, 50.6124"
    })
    void hardeningInStore(double storeC, double hours, double low, double middle, double high) {
        CrystalStory drawn = CrystalStory.of(MIX).frozenBy(Method.MACHINE);
        CrystalStory hardened = drawn.storedAt(storeC).forHours(0);
        assertEquals(hours, lastHour(hardened) - lastHour(drawn), TIGHT * hours);
        is(low, middle, high, hardened.meanUm());
    }

    @Test
    void hardeningOtherwise() {
        CrystalStory liquid = CrystalStory.of(MIX).storedAt(-18).forHours(0);
        assertEquals(10, lastHour(liquid), TIGHT);
        is(55.106, 69.4292, 87.4753, liquid.meanUm());
        CrystalStory drawn = CrystalStory.of(MIX).frozenBy(Method.MACHINE);
        is(28.6199, 35.5662, 44.0464, drawn.storedAt(-18).hardenedIn(3).forHours(0).meanUm());
    }

    private static double lastHour(CrystalStory story) {
        return story.timeline().get(story.timeline().size() - 1).hours();
    }

    @Test
    void sizesAsPlanned() {
        FreezePlan bag = FreezePlan.bag(MIX, IceAndSalt.of(2000, 500));
        is(19.1394, 33.041, 51.6669, CrystalStory.of(MIX).frozenAs(bag).meanUm());
        FreezePlan churn = FreezePlan.churn(MIX, IceAndSalt.of(3000, 750));
        is(15.7016, 26.1664, 38.7926, CrystalStory.of(MIX).frozenAs(churn).meanUm());
        FreezePlan tub = FreezePlan.tub(MIX, -18);
        is(52.6952, 88.63, 150.298, CrystalStory.of(MIX).frozenAs(tub).meanUm());
    }

    /** Long sugars, salt and alcohol between the crystals. */
    @ParameterizedTest
    @CsvSource({"-8, 37523.1, 41.9385", "-14, 2109.57, 533.578", "-22, 46.422, 24081.1"})
    void ratesAmongOtherSolutes(double temperatureC, double cubeUm3PerDay, double viscosityMPaS) {
        Mix syrup =
                Mix.of(
                        Amount.grams(600, Shelf.WATER),
                        Amount.grams(100, Shelf.SUCROSE),
                        Amount.grams(150, Shelf.GLUCOSE_SYRUP),
                        Amount.grams(10, Shelf.SALT),
                        Amount.grams(40, Shelf.RUM_40));
        Coarsening coarsening = Coarsening.of(syrup);
        double found = coarsening.cubeUm3PerDay(temperatureC).middle();
        assertEquals(cubeUm3PerDay, found, TIGHT * cubeUm3PerDay);
        double thick = coarsening.liquidViscosityMPaS(temperatureC);
        assertEquals(viscosityMPaS, thick, TIGHT * viscosityMPaS);
    }
}
