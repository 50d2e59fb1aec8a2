package coldwright.science.glass;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PublishedSyrupTest {
    /** The stated error of the equation at 20 °C against the handbook. */
    private static final double CORRELATION_SHARE = 0.04;

    /** Scatter of the measurements (15 %) with the factor for one-unit sugars (5 %). */
    private static final double SCATTER_SHARE = 0.20;

    /** Stated error of the Gordon–Taylor line. */
    private static final double GLASS_LINE_C = 3;

    @ParameterizedTest(name = "{0} % sucrose")
    @CsvFileSource(
            resources = "/published/crc-102-sucrose-viscosity.csv",
            useHeadersInDisplayName = true)
    void sucroseAtTwentyDegrees(double percent, double viscosityMPaS) {
        assertEquals(
                viscosityMPaS,
                SyrupViscosity.sucroseMPaS(percent, 20),
                CORRELATION_SHARE * viscosityMPaS);
    }

    @ParameterizedTest(name = "{0} % fructose at {1} °C")
    @CsvFileSource(
            resources = "/published/telis-2007-fructose-viscosity.csv",
            useHeadersInDisplayName = true)
    void fructoseInTheCold(double percent, double temperatureC, double viscosityMPaS, String use) {
        assumeTrue(use.equals("check"), "the row is marked " + use);
        Solution solution = Solution.inWater(100 - percent).with(percent, Solute.FRUCTOSE);
        assertEquals(
                viscosityMPaS,
                SyrupViscosity.mPaS(solution, temperatureC),
                SCATTER_SHARE * viscosityMPaS);
    }

    @ParameterizedTest(name = "{0} % sucrose")
    @CsvFileSource(
            resources = "/published/memory-sucrose-end-of-freezing.csv",
            useHeadersInDisplayName = true)
    void glassOfTheMostConcentratedSyrup(double percent, double glassC) {
        assertEquals(
                glassC,
                GordonTaylor.of(percent, SugarGlass.SUCROSE).glassTransitionC(),
                GLASS_LINE_C);
    }
}
