package coldwright.science.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

import org.junit.jupiter.api.Test;

class CrystalPopulationLawsTest {
    private static final double ROUNDING = 1e-9;

    /** The slope still falls towards 4/9 as one over the logarithm of time. */
    private static final double SLOPE_SHARE = 0.12;

    /** Largest gap between the cumulative distribution and the theory's, thirtyfold grown. */
    private static final double SHAPE_GAP = 0.03;

    @Cases(60)
    void coarseningKeepsTheIceAndLosesCrystals(Draw draw) {
        double medianUm = draw.doubleIn(2, 50);
        double spread = draw.doubleIn(0.05, 0.6);
        double screeningPerUm = draw.doubleIn(0, 0.1);
        CrystalPopulation crowd = CrystalPopulation.logNormal(medianUm, spread, 1e7);
        double cubes = crowd.sumCubes();
        double count = crowd.count();
        for (int i = 0; i < 50; i++) {
            crowd.grow(0.02 * cubes / crowd.count() / 3, screeningPerUm, cubes);
            crowd.refine();
            assertEquals(1, crowd.sumCubes() / cubes, ROUNDING);
            assertTrue(crowd.count() <= count * (1 + ROUNDING));
            count = crowd.count();
        }
    }

    @Cases(60)
    void iceFollowsWhatIsAsked(Draw draw) {
        double spread = draw.doubleIn(0.1, 0.6);
        double factor = draw.doubleIn(0.5, 1.5);
        CrystalPopulation crowd = CrystalPopulation.logNormal(10, spread, 1e7);
        double wanted = factor * crowd.sumCubes();
        crowd.grow(1, 0, wanted);
        assertEquals(1, crowd.sumCubes() / wanted, ROUNDING);
    }

    @Cases(60)
    void breakageKeepsTheIceAndMakesMoreCrystals(Draw draw) {
        double share = draw.doubleIn(0.01, 3);
        double spread = draw.doubleIn(0.1, 0.5);
        CrystalPopulation crowd = CrystalPopulation.logNormal(20, spread, 1e7);
        double cubes = crowd.sumCubes();
        double count = crowd.count();
        double mean = crowd.meanRadiusUm();
        crowd.breakUp(share, 20);
        assertEquals(1, crowd.sumCubes() / cubes, ROUNDING);
        assertTrue(crowd.count() > count);
        assertTrue(crowd.meanRadiusUm() < mean);
    }

    @Cases(60)
    void seedsBringTheirIce(Draw draw) {
        double seedUm = draw.doubleIn(0.5, 10);
        double share = draw.doubleIn(0.01, 1);
        CrystalPopulation crowd = CrystalPopulation.logNormal(20, 0.4, 1e7);
        double cubes = crowd.sumCubes();
        double count = crowd.count();
        crowd.seed(seedUm, 0.3, share * cubes);
        assertEquals(1 + share, crowd.sumCubes() / cubes, ROUNDING);
        assertTrue(crowd.count() > count);
    }

    @Cases(40)
    void layingNewEdgesKeepsNumberAndIce(Draw draw) {
        double spread = draw.doubleIn(0.1, 0.6);
        CrystalPopulation crowd = CrystalPopulation.logNormal(10, spread, 1e7);
        crowd.seed(2, 0.3, 1e6);
        double[] before = {crowd.count(), crowd.sumCubes(), crowd.sumRadii()};
        crowd.relay();
        assertEquals(1, crowd.count() / before[0], ROUNDING);
        assertEquals(1, crowd.sumCubes() / before[1], ROUNDING);
        assertEquals(1, crowd.sumRadii() / before[2], 0.01);
    }

    @Test
    void cubeOfTheMeanGrowsAsTheTheorySays() {
        CrystalPopulation crowd = Coarsened.tenfold(0.1);
        double before = Math.pow(crowd.meanRadiusUm(), 3);
        double seconds = Coarsened.grow(crowd, 1.5 * crowd.meanRadiusUm());
        double slope = (Math.pow(crowd.meanRadiusUm(), 3) - before) / seconds;
        assertEquals(Lsw.RATE_SHARE, slope, SLOPE_SHARE * Lsw.RATE_SHARE);
    }

    @Test
    void shapeBecomesTheStationaryOne() {
        CrystalPopulation crowd = Coarsened.thirtyfold(0.3);
        double mean = crowd.meanRadiusUm();
        double below = 0;
        double theory = 0;
        double z = 0;
        for (int j = 0; j < crowd.classes(); j++) {
            below += crowd.number(j) / crowd.count();
            double next = crowd.edgeRadiusUm(j + 1) / mean;
            int parts = 20;
            for (int i = 0; i < parts; i++) {
                theory += Lsw.share(z + (next - z) * (i + 0.5) / parts) * (next - z) / parts;
            }
            z = next;
            assertEquals(theory, below, SHAPE_GAP, "at " + z + " times the mean");
        }
    }

    @Test
    void crowdedCrystalsCoarsenFaster() {
        CrystalPopulation apart = CrystalPopulation.logNormal(10, 0.3, 1e7);
        CrystalPopulation crowded = apart.copy();
        double cubes = apart.sumCubes();
        for (int i = 0; i < 300; i++) {
            apart.grow(5, 0, cubes);
            crowded.grow(5, 0.1, cubes);
        }
        assertTrue(crowded.count() < 0.8 * apart.count());
    }
}
