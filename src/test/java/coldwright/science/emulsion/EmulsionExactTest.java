package coldwright.science.emulsion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Creaming and clumping in absolute figures, by hand from the published equations. */
class EmulsionExactTest {
    private static final double ROUNDED = 1e-6;

    /** Stokes: 2 µm, 80 kg/m³, 1 mPa·s: 9.80665·4e-12·80/(18e-3) m/s = 0.174340 µm/s. */
    @Test
    void aLonelyGlobuleRisesByStokes() {
        Creaming water = new Creaming(new Creaming.Serum(80, 1), 0);
        assertEquals(0.17434044, water.umPerS(2), ROUNDED);
        assertEquals(100_000 / 0.17434044 / 3600, water.hours(2, 100), 1e-3);
    }

    /** Richardson and Zaki: at 4 % of fat the speed is 0.96^4.65 of that, 0.827106. */
    @Test
    void crowdingSlowsByRichardsonAndZaki() {
        Creaming.Serum serum = new Creaming.Serum(80, 1);
        assertEquals(
                0.827106,
                new Creaming(serum, 4).umPerS(2) / new Creaming(serum, 0).umPerS(2),
                1e-5);
    }

    /** A cluster of 40 % fat rises in 20 minutes through 100 mm at 83.3 µm/s: 88.8 µm in milk. */
    @ParameterizedTest
    @CsvSource({"100, 20, 0.4, 83.3333333", "50, 20, 0.4, 41.6666667", "100, 40, 1, 41.6666667"})
    void theClusterThatCreamsInTimeRisesAtThatSpeed(
            double heightMm, double minutes, double fatShare, double umPerS) {
        Creaming clusters = Creaming.inMilk().ofClusters(fatShare);
        double um = clusters.diameterUm(heightMm, minutes);
        assertEquals(umPerS, clusters.umPerS(um), 1e-4);
        double lonely = 9.80665 * um * um * 1e-12 * 80 * fatShare / (18 * 1.75e-3) * 1e6;
        assertEquals(umPerS, lonely * Math.pow(0.96, 4.65), 1e-3);
    }

    /** Smoluchowski: the single share falls as e^(−4αφγt/π). */
    @ParameterizedTest
    @CsvSource({"35, 5, 200, 5", "10, 5, 80, 20"})
    void clumpingBySmoluchowski(double fat, double celsius, double shear, double minutes) {
        Churning.Motion motion =
                shear == 200 ? Churning.Motion.WHISK : Churning.Motion.SCRAPED_MACHINE;
        double solid = MilkFat.solidPercent(celsius).middle();
        double sticking = solid <= 30 ? solid / 30 : Math.max(0.1, 1 - 0.9 * (solid - 30) / 60);
        double exponent = 4 / Math.PI * 2.9e-5 * sticking * fat / 100 * shear * 60 * minutes;
        assertEquals(
                100 * (1 - Math.exp(-exponent)),
                new Churning(fat, celsius, false, false).clumpedPercent(minutes, motion).middle(),
                1e-9);
    }
}
