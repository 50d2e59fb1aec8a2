package coldwright.science.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Laying new class edges keeps the number of crystals and the ice, exactly but for rounding. */
class RelayTest {
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest
    @CsvSource({"3, 0.05, 0", "10, 0.2, 7", "20, 0.5, 20", "40, 0.8, 39"})
    void newEdgesKeepNumberAndVolume(double medianUm, double spread, int steps) {
        CrystalPopulation crowd = CrystalPopulation.logNormal(medianUm, spread, 1e7);
        for (int i = 0; i < steps; i++) {
            crowd.grow(0.02 * crowd.sumCubes() / crowd.count(), 0.01, 1.01 * crowd.sumCubes());
        }
        crowd.seed(2, 0.3, 0.1 * crowd.sumCubes());
        double count = crowd.count();
        double cubes = crowd.sumCubes();
        crowd.relay();
        assertEquals(CrystalPopulation.CLASSES, crowd.classes());
        assertEquals(count, crowd.count(), ROUNDING * count);
        assertEquals(cubes, crowd.sumPowers(3), ROUNDING * cubes);
    }
}
