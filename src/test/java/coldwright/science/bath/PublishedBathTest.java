package coldwright.science.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.science.thermal.PureWater;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Brine and bath against published figures. */
class PublishedBathTest {
    /** How far the book's polynomials lie from its own tables. */
    private static final double POLYNOMIAL = 0.0026;

    /** Goal set for the bath, °C. */
    private static final double GOAL_C = 0.2;

    /** Spread of the sources and the dihydrate that is left out. */
    private static final double EUTECTIC_SHARE = 0.03;

    @ParameterizedTest
    @CsvFileSource(resources = "/published/melinder-2010-sodium-chloride-heat.csv")
    void melinder(double salt, double t, double heatCapacity, double density) {
        assertEquals(
                heatCapacity,
                1000 * BrineHeat.heatCapacityJPerGK(salt, t),
                POLYNOMIAL * heatCapacity);
        assertEquals(density, BrineHeat.densityKgPerM3(salt, t), POLYNOMIAL * density);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/ice-salt-full-melt.csv")
    void fullMelt(double iceToSalt, double temperatureC) {
        IceAndSalt bath = IceAndSalt.of(500 * iceToSalt, 500);
        assertEquals(temperatureC, bath.lastIceC(), GOAL_C);
        assertEquals(
                bath.lastIceC(), bath.temperatureAfterC(bath.heatUntilMeltedJ()), GOAL_C / 100);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/nacl-eutectic-heat.csv")
    void heatOfTheEutectic(double salt, double t, double heat) {
        double share = salt / 100;
        double solid =
                (1 - share) * PureWater.iceEnthalpyJPerG(t)
                        + share * BrineHeat.SOLID_SALT_JPERGK * t;
        assertEquals(heat, BrineHeat.enthalpyJPerG(salt, t) - solid, EUTECTIC_SHARE * heat);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/parker-1965-heat-of-solution.csv")
    void heatOfSolution(double salt, double heat, double uncertainty) {
        double found = BrineHeat.heatOfSolutionJPerGSalt(salt) * BrineHeat.SALT_G_PER_MOL / 1000;
        assertEquals(heat, found, uncertainty);
    }
}
