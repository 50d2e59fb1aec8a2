package coldwright.science.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;
import coldwright.science.thermal.PublishedHeatTest.Samples;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The curve of a batch: consistency that is exact, and regression values, labelled so. */
class ThermalCurveTest {
    private static final double TIGHT = 1e-5;

    private static void is(double expected, double found) {
        assertEquals(expected, found, TIGHT * Math.abs(expected));
    }

    /** Pure water: ice by IAPWS below 0 °C, water by Choi and Okos above. */
    @Test
    void waterIsItself() {
        ThermalCurve water = Samples.water();
        assertEquals(PureWater.iceEnthalpyJPerG(-10), water.enthalpyJPerG(-10), 1e-9);
        assertEquals(Substance.WATER.enthalpyFromZeroJPerG(10), water.enthalpyJPerG(10), 1e-9);
        assertEquals(
                PureWater.iceHeatCapacityJPerGK(-10), water.apparentHeatCapacityJPerGK(-10), 1e-6);
        assertEquals(
                PureWater.iceHeatCapacityJPerGK(-10), water.sensibleHeatCapacityJPerGK(-10), 1e-9);
        assertEquals(100, water.icePercentAt(-1));
        assertEquals(0, water.icePercentAt(0));
        double within = 0.4;
        assertEquals(-10, water.table().temperatureC(PureWater.iceEnthalpyJPerG(-10)), within);
        assertEquals(-150, water.table().enthalpyAtIceJPerG(150 / 3.3342), within);
        assertTrue(water.notes().stream().noneMatch(note -> note.startsWith("alcohol")));
    }

    /** Heat is the sum of heat capacity: the slope of the enthalpy, and what lies between. */
    @ParameterizedTest
    @ValueSource(doubles = {-30, -12, -5, 10, 40})
    void apparentHeatCapacityIsTheSlope(double temperatureC) {
        ThermalCurve mix = Samples.iceCream();
        double slope =
                (mix.enthalpyJPerG(temperatureC + 0.001) - mix.enthalpyJPerG(temperatureC - 0.001))
                        / 0.002;
        assertEquals(slope, mix.apparentHeatCapacityJPerGK(temperatureC), 1e-3 * slope);
        assertEquals(
                mix.enthalpyJPerG(5) - mix.enthalpyJPerG(temperatureC),
                mix.heatToRemoveJPerG(5, temperatureC),
                1e-12);
    }

    /** At the freezing point the heat capacity jumps: cold side below, liquid above. */
    @Test
    void theJumpIsOnTheColdSide() {
        ThermalCurve mix = Samples.iceCream();
        double start = mix.initialFreezingPointC();
        assertEquals(
                mix.sensibleHeatCapacityJPerGK(start + 0.005),
                mix.apparentHeatCapacityJPerGK(start + 0.005),
                1e-3);
        assertTrue(mix.apparentHeatCapacityJPerGK(start) > 50);
    }

    /** The table says the same as the curve, but for a cut corner. */
    @ParameterizedTest
    @ValueSource(doubles = {-44, -30, -12, -5, -3, 0, 10, 60, 99})
    void theTableFollowsTheCurve(double temperatureC) {
        for (ThermalCurve curve : new ThermalCurve[] {Samples.iceCream(), Samples.sorbet()}) {
            EnthalpyTable table = curve.table();
            double h = curve.enthalpyJPerG(temperatureC);
            assertEquals(h, table.enthalpyJPerG(temperatureC), 0.35);
            assertEquals(temperatureC, table.temperatureC(h), 0.12);
            assertEquals(curve.icePercentAt(temperatureC), table.icePercent(h), 0.15);
            double k = table.conductionPerJPerG(h) / table.kelvinPerJPerG(h);
            assertEquals(
                    curve.conductivityWPerMK(temperatureC),
                    k,
                    0.015 * curve.conductivityWPerMK(temperatureC));
        }
    }

    /** Air: lighter by its share, conducting as Maxwell's bubbles, the same heat per gram. */
    @Test
    void airThinsAndInsulates() {
        ThermalCurve dense = Samples.iceCream();
        ThermalCurve light = dense.withOverrun(100);
        assertEquals(dense.densityKgPerM3(-10) / 2, light.densityKgPerM3(-10), 1e-9);
        double k = dense.conductivityWPerMK(-10);
        assertEquals(
                k * (2 * k + 0.024 - (k - 0.024)) / (2 * k + 0.024 + 0.5 * (k - 0.024)),
                light.conductivityWPerMK(-10),
                1e-9);
        assertEquals(dense.enthalpyJPerG(-10), light.enthalpyJPerG(-10), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> dense.withOverrun(201));
    }

    @Test
    void bracketsAndNotes() {
        ThermalCurve mix = Samples.iceCream();
        assertTrue(
                mix.conductivityWPerMK(-10, Structure.SERIES) < mix.conductivityWPerMK(-10)
                        && mix.conductivityWPerMK(-10)
                                < mix.conductivityWPerMK(-10, Structure.PARALLEL));
        assertEquals(63.7, mix.waterPercent(), 1e-9);
        ThermalComposition dry =
                ThermalComposition.of(Composition.NOTHING.with(100, Component.SUCROSE));
        assertThrows(IllegalArgumentException.class, () -> ThermalCurve.of(dry, null));
    }

    /** Regression values of this program, no check of nature: J/g, J/(g·K), W/(m·K), kg/m³. */
    @ParameterizedTest
    @CsvSource({
        "-35.0, -261.44673, 2.0164422, 2.0164422, 1.2381782, 1042.8346",
        "-20.0, -220.39108, 3.3953030, 2.1294768, 1.1417404, 1043.6208",
        "-10.0, -173.65577, 7.1724080, 2.3224980, 1.0078394, 1049.5641",
        "-4.0, -86.667587, 32.744874, 2.7964323, 0.70752167, 1070.5708",
        "-2.9, -37.974567, 60.159986, 3.0828652, 0.54597522, 1084.5549",
        "5.0, 16.410743, 3.2836121, 3.2836121, 0.46391293, 1092.7273",
        "20.0, 65.733261, 3.2928477, 3.2928477, 0.48326292, 1090.1163"
    })
    void regression(
            double temperatureC,
            double enthalpy,
            double apparent,
            double sensible,
            double conductivity,
            double density) {
        ThermalCurve mix = Samples.iceCream();
        is(enthalpy, mix.enthalpyJPerG(temperatureC));
        is(apparent, mix.apparentHeatCapacityJPerGK(temperatureC));
        is(sensible, mix.sensibleHeatCapacityJPerGK(temperatureC));
        is(conductivity, mix.conductivityWPerMK(temperatureC));
        is(density, mix.densityKgPerM3(temperatureC));
    }
}
