package coldwright.science.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.science.Temperature;
import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The rate of coarsening in absolute figures, against theory. */
class CoarseningRateTest {
    private static final Mix SYRUP =
            Mix.of(Amount.grams(700, Shelf.WATER), Amount.grams(300, Shelf.SUCROSE));

    /** What is left of the start after the mean has grown thirtyfold: it fades as a logarithm. */
    private static final double NOT_YET_STEADY = 0.05;

    private static final double SECONDS_A_DAY = 86_400;

    /** The cube of the mean radius grows by 4/9 A a second (Lifshitz, Slyozov and Wagner 1961). */
    @Test
    void aCrowdFarApartCoarsensAtTheRateOfTheTheory() {
        CrystalPopulation crowd = Coarsened.thirtyfold(0.3);
        double start = cube(crowd.meanRadiusUm());
        double seconds = Coarsened.grow(crowd, 1.5 * crowd.meanRadiusUm());
        assertEquals(
                4.0 / 9, (cube(crowd.meanRadiusUm()) - start) / seconds, NOT_YET_STEADY * 4 / 9);
    }

    /**
     * The rate that a cook reads is that of the crowd: diameters, days, and nothing lost between.
     */
    @ParameterizedTest
    @ValueSource(doubles = {-18, -10, -5})
    void theRateGivenIsThatOfSuchACrowd(double temperatureC) {
        double growth = FrozenMixTable.of(SYRUP).growthUm3PerS(temperatureC);
        CrystalPopulation crowd = Coarsened.thirtyfold(0.3);
        double start = cube(2 * crowd.meanRadiusUm());
        double unit = Coarsened.grow(crowd, 1.5 * crowd.meanRadiusUm());
        double perDay = (cube(2 * crowd.meanRadiusUm()) - start) / unit * growth * SECONDS_A_DAY;
        double given = Coarsening.of(SYRUP).cubeUm3PerDay(temperatureC).middle();
        assertEquals(perDay, given, NOT_YET_STEADY * perDay);
    }

    /**
     * A = 2γv²cx_w/(RTΣxⱼ/Ðⱼ), written out once more for plain syrup, with the heat in series: a
     * second typing of the published equation, in other words.
     */
    @ParameterizedTest
    @ValueSource(doubles = {-20, -10, -5})
    void growthConstantOfPlainSyrup(double temperatureC) {
        Solution syrup = Solution.inWater(70).with(30, Solute.SUCROSE);
        double liquidG = 70 - syrup.freezingCurve().iceG(temperatureC);
        double kelvin = Temperature.kelvin(temperatureC);
        double water = liquidG / 18.015;
        double sugar = 30 / 342.297;
        double waterShare = water / (water + sugar);
        double viscosity =
                coldwright.science.glass.SyrupViscosity.mPaS(
                        Solution.inWater(liquidG).with(30, Solute.SUCROSE), temperatureC);
        double stokes = 1.380649e-23 * kelvin / (6 * Math.PI * viscosity * 1e-3 * 0.47e-9);
        double activity = coldwright.science.freezing.IceActivity.waterActivity(temperatureC);
        double mutual =
                waterShare * stokes
                        + (1 - waterShare) * Diffusion.waterM2PerS(activity, temperatureC);
        double molesPerM3 = (water + sugar) / (liquidG + 0.62 * 30) * 1e6;
        double iceM3PerMol = 18.015e-3 / 916.7;
        double diffusion =
                2
                        * 0.033
                        * iceM3PerMol
                        * iceM3PerMol
                        * molesPerM3
                        * waterShare
                        * mutual
                        / (8.314462618 * kelvin * (1 - waterShare));
        double drop = 2 * 0.033 * Temperature.ZERO_C_IN_K / (916.7 * 333.4e3);
        double heat = 0.5 * drop / (916.7 * 333.4e3);
        double both = 1e18 / (1 / diffusion + 1 / heat);
        double found =
                UnfrozenSyrup.of(syrup, UnfrozenSyrup.LongSugars.NONE, liquidG, temperatureC)
                        .growthUm3PerS();
        assertEquals(both, found, 1e-4 * both);
    }

    private static double cube(double x) {
        return x * x * x;
    }
}
