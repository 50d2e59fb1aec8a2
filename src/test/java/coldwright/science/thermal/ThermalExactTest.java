package coldwright.science.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Heat and conduction against what can be worked out by hand from the same published equations. */
class ThermalExactTest {
    private static final double EXACT = 1e-9;

    /** Ice 2.2 W/(m·K) and 2 J/(g·K), liquid 0.6 and 4, melting at −1 °C with 300 J/g. */
    private final EnthalpyTable melts =
            EnthalpyTable.pure(new Phase(2.2, 2), new Phase(0.6, 4), -1, 300);

    @ParameterizedTest
    @CsvSource({
        "-420, -61, 100, 0", "-340, -21, 100, 88", "-320, -11, 100, 110", "-150, -1, 50, 132",
        "-75, -1, 25, 132", "40, 9, 0, 138", "120, 29, 0, 150", "240, 59, 0, 168"
    })
    void aPureSubstanceByEnthalpy(double h, double temperatureC, double ice, double theta) {
        double corner = 1e-6;
        assertEquals(temperatureC, melts.temperatureC(h), corner);
        assertEquals(ice, melts.icePercent(h), corner);
        assertEquals(
                theta, melts.conductionWPerM(h) - melts.conductionWPerM(-420), 1e-3, "θ by hand");
    }

    @Test
    void theTableTurnedRound() {
        assertEquals(-61, melts.coldestC(), EXACT);
        assertEquals(59, melts.warmestC(), EXACT);
        assertEquals(-340, melts.enthalpyJPerG(-21), EXACT);
        assertEquals(40, melts.enthalpyJPerG(9), EXACT);
        assertEquals(-150, melts.enthalpyAtIceJPerG(50), 1e-6);
        assertEquals(-75, melts.enthalpyAtIceJPerG(25), 1e-6);
        double oneStep = 660.0 / EnthalpyTable.STEPS;
        assertEquals(0, melts.enthalpyJPerG(-1), oneStep, "on the melting point the liquid's");
        assertTrue(Double.isNaN(melts.enthalpyAtIceJPerG(100.5)));
        assertEquals(-420, melts.enthalpyJPerG(-61), oneStep);
        assertThrows(IllegalArgumentException.class, () -> melts.enthalpyJPerG(60));
        assertThrows(IllegalArgumentException.class, () -> melts.enthalpyJPerG(-62));
    }

    @Test
    void slopesAreTheInverseHeatCapacityAndTheDiffusivity() {
        assertEquals(0.5, melts.kelvinPerJPerG(-360), EXACT);
        assertEquals(0, melts.kelvinPerJPerG(-150), EXACT);
        assertEquals(0.25, melts.kelvinPerJPerG(100), EXACT);
        assertEquals(1.1, melts.conductionPerJPerG(-360), EXACT);
        assertEquals(0, melts.conductionPerJPerG(-150), EXACT);
        assertEquals(0.15, melts.conductionPerJPerG(100), EXACT);
    }

    @Test
    void beyondItsEndsTheTableGoesOnStraight() {
        assertEquals(-71, melts.temperatureC(-440), 1e-6);
        assertEquals(64, melts.temperatureC(260), 1e-6);
        assertEquals(100, melts.icePercent(-440));
        assertEquals(0, melts.icePercent(260));
    }

    @Test
    void withoutLatentHeatThereIsNoStep() {
        EnthalpyTable warm = EnthalpyTable.pure(new Phase(0.5, 4), new Phase(0.5, 4), 10, 0);
        assertEquals(-50, warm.coldestC(), EXACT);
        assertEquals(30, warm.temperatureC(80), 1e-6);
        assertEquals(-20, warm.temperatureC(-120), 1e-6);
        assertEquals(-120, warm.enthalpyJPerG(-20), EXACT);
    }

    /** Bounds of Wiener, and the grains of Maxwell and Eucken, by hand: 0.5 holding 0.3 of 2.2. */
    @Test
    void structuresByHand() {
        Structure.Part guest = new Structure.Part(0.3, 2.2);
        assertEquals(1.01, Structure.PARALLEL.conductivityWPerMK(0.5, guest), EXACT);
        assertEquals(
                1 / (0.7 / 0.5 + 0.3 / 2.2),
                Structure.SERIES.conductivityWPerMK(0.5, guest),
                EXACT);
        assertEquals(
                0.5 * (3.2 + 1.02) / (3.2 - 0.51),
                Structure.DISPERSED.conductivityWPerMK(0.5, guest),
                EXACT);
    }

    /** Levy 1981: no matter which is called the host, and between the two readings of Maxwell. */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.35, 0.5, 0.8})
    void levyIsTheSameEitherWay(double share) {
        double one = Structure.INTERLOCKED.conductivityWPerMK(0.5, new Structure.Part(share, 2.2));
        double other =
                Structure.INTERLOCKED.conductivityWPerMK(2.2, new Structure.Part(1 - share, 0.5));
        assertEquals(one, other, EXACT);
        assertTrue(
                one > Structure.DISPERSED.conductivityWPerMK(0.5, new Structure.Part(share, 2.2)));
        assertTrue(
                one
                        < Structure.DISPERSED.conductivityWPerMK(
                                2.2, new Structure.Part(1 - share, 0.5)));
        assertEquals(
                2.2,
                Structure.INTERLOCKED.conductivityWPerMK(0.5, new Structure.Part(1, 2.2)),
                EXACT);
        assertEquals(
                0.5,
                Structure.INTERLOCKED.conductivityWPerMK(0.5, new Structure.Part(share, 0.5)),
                EXACT);
    }

    /** 60 % water, 40 % sugar at 20 °C by the printed polynomials: by mass and by volume. */
    @Test
    void syrupByTheRulesOfChoiAndOkos() {
        ThermalComposition syrup =
                ThermalComposition.of(
                        Composition.NOTHING.with(60, Component.WATER).with(40, Component.SUCROSE));
        double waterCp = 4.1762 - 9.0864e-5 * 20 + 5.4731e-6 * 400;
        double sugarCp = 1.5488 + 1.9625e-3 * 20 - 5.9399e-6 * 400;
        assertEquals(0.6 * waterCp + 0.4 * sugarCp, syrup.heatCapacityJPerGK(20), EXACT);
        double waterL = 0.6 / (997.18 + 3.1439e-3 * 20 - 3.7574e-3 * 400);
        double sugarL = 0.4 / (1599.1 - 0.31046 * 20);
        assertEquals(1 / (waterL + sugarL), syrup.densityKgPerM3(20, 0), 1e-6);
        double waterK = 0.57109 + 1.7625e-3 * 20 - 6.7036e-6 * 400;
        double sugarK = 0.20141 + 1.3874e-3 * 20 - 4.3312e-6 * 400;
        assertEquals(
                (waterL * waterK + sugarL * sugarK) / (waterL + sugarL),
                syrup.conductivityWPerMK(20, 0, Structure.INTERLOCKED),
                EXACT);
        double sugarHeat = 20 * (1.5488 + 20 * (1.9625e-3 / 2 - 20 * 5.9399e-6 / 3));
        assertEquals(0.4 * sugarHeat, syrup.solidsEnthalpyJPerG(20), EXACT);
    }

    /** The same at −10 °C with two thirds of its water ice. */
    @Test
    void slushByTheRulesOfChoiAndOkos() {
        ThermalComposition syrup =
                ThermalComposition.of(
                        Composition.NOTHING.with(60, Component.WATER).with(40, Component.SUCROSE));
        double waterL = 0.2 / (997.18 - 3.1439e-2 - 0.37574);
        double sugarL = 0.4 / (1599.1 + 3.1046);
        double iceL = 0.4 / (916.89 + 1.3071);
        assertEquals(1 / (waterL + sugarL + iceL), syrup.densityKgPerM3(-10, 2 / 3.0), 1e-6);
        double waterK = 0.57109 - 1.7625e-2 - 6.7036e-4;
        double sugarK = 0.20141 - 1.3874e-2 - 4.3312e-4;
        double iceK = 2.2196 + 6.2489e-2 + 1.0154e-2;
        double liquidK = (waterL * waterK + sugarL * sugarK) / (waterL + sugarL);
        double iceShare = iceL / (waterL + sugarL + iceL);
        assertEquals(
                (1 - iceShare) * liquidK + iceShare * iceK,
                syrup.conductivityWPerMK(-10, 2 / 3.0, Structure.PARALLEL),
                EXACT);
        ThermalComposition water =
                ThermalComposition.of(Composition.NOTHING.with(100, Component.WATER));
        assertEquals(iceK, water.conductivityWPerMK(-10, 1, Structure.SERIES), EXACT);
    }

    /** Each kind of component is counted as its own substance. */
    @Test
    void componentsAreSorted() {
        ThermalComposition all =
                ThermalComposition.of(
                        Composition.NOTHING
                                .with(40, Component.WATER)
                                .with(10, Component.MILK_FAT)
                                .with(1, Component.EMULSIFIER)
                                .with(5, Component.MILK_PROTEIN)
                                .with(20, Component.SUCROSE)
                                .with(2, Component.FIBRE)
                                .with(1, Component.STABILISER)
                                .with(1, Component.MILK_SALTS)
                                .with(4, Component.ALCOHOL));
        double sum = 84;
        assertEquals(40 / sum, all.share(Substance.WATER), EXACT);
        assertEquals(11 / sum, all.share(Substance.FAT), EXACT);
        assertEquals(5 / sum, all.share(Substance.PROTEIN), EXACT);
        assertEquals(20 / sum, all.share(Substance.CARBOHYDRATE), EXACT);
        assertEquals(3 / sum, all.share(Substance.FIBRE), EXACT);
        assertEquals(1 / sum, all.share(Substance.ASH), EXACT);
        assertEquals(4 / sum, all.share(Substance.ETHANOL), EXACT);
        assertThrows(
                IllegalArgumentException.class, () -> ThermalComposition.of(Composition.NOTHING));
    }
}
