package coldwright.science.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;
import coldwright.science.thermal.PublishedHeatTest.Samples;

import org.junit.jupiter.api.Test;

/** Laws of heat that hold whatever the numbers are. */
class HeatLawsTest {
    private static final double ROUNDING = 1e-9;

    /** A table of straight lines against the curve itself, J/g and °C. */
    private static final double TABLE_JPERG = 0.5;

    private static final double TABLE_C = 0.1;

    @Cases(1000)
    void everyStructureLiesBetweenItsBounds(Draw draw) {
        double host = draw.doubleIn(0.02, 3);
        double guest = draw.doubleIn(0.02, 3);
        double share = draw.doubleIn(0, 1);
        var part = new Structure.Part(share, guest);
        double least = Structure.SERIES.conductivityWPerMK(host, part);
        double most = Structure.PARALLEL.conductivityWPerMK(host, part);
        for (Structure structure : Structure.values()) {
            double k = structure.conductivityWPerMK(host, part);
            assertTrue(k >= least - ROUNDING && k <= most + ROUNDING, structure + " " + k);
        }
    }

    @Cases(1000)
    void interlockedDoesNotCareWhoIsHost(Draw draw) {
        double host = draw.doubleIn(0.1, 3);
        double guest = draw.doubleIn(0.1, 3);
        double share = draw.doubleIn(0, 1);
        double one = Structure.INTERLOCKED.mixed(host, guest, share);
        double other = Structure.INTERLOCKED.mixed(guest, host, 1 - share);
        assertEquals(one, other, 1e-6 * one);
    }

    @Cases(1000)
    void aDispersedPhaseTurnsIntoItsOwnAtTheEnds(Draw draw) {
        double host = draw.doubleIn(0.02, 3);
        double guest = draw.doubleIn(0.02, 3);
        for (Structure structure : Structure.values()) {
            assertEquals(host, structure.mixed(host, guest, 0), 1e-7);
            assertEquals(guest, structure.mixed(host, guest, 1), 1e-7);
        }
    }

    @Cases(1000)
    void enthalpyRisesWithTemperature(Draw draw) {
        double one = draw.doubleIn(-44, 40);
        double other = draw.doubleIn(-44, 40);
        ThermalCurve curve = Samples.iceCream();
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        assertTrue(curve.enthalpyJPerG(low) <= curve.enthalpyJPerG(high));
    }

    @Cases(100)
    void slopeOfEnthalpyIsTheApparentHeatCapacity(Draw draw) {
        double at = draw.doubleIn(-40, 40);
        ThermalCurve curve = Samples.sorbet();
        double start = curve.initialFreezingPointC();
        double stop =
                Solution.inWater(72).with(28, Solute.SUCROSE).freezingCurve().iceStopsGrowingC();
        double reach = 0.25;
        if (Math.abs(at - start) < 2 * reach || Math.abs(at - stop) < 2 * reach) {
            return; // where ice begins and ends the curve has a corner with two slopes
        }
        double sum = 0;
        int steps = 50;
        for (int i = 0; i < steps; i++) {
            double t = at - reach + (i + 0.5) * 2 * reach / steps;
            sum += curve.apparentHeatCapacityJPerGK(t) * 2 * reach / steps;
        }
        double difference = curve.enthalpyJPerG(at + reach) - curve.enthalpyJPerG(at - reach);
        assertEquals(difference, sum, 1e-3 * difference);
    }

    @Cases(200)
    void tableAgreesWithTheCurveAndInverts(Draw draw) {
        double temperatureC = draw.doubleIn(-44, 60);
        ThermalCurve curve = Samples.iceCream();
        EnthalpyTable table = curve.table();
        double enthalpy = curve.enthalpyJPerG(temperatureC);
        assertEquals(enthalpy, table.enthalpyJPerG(temperatureC), TABLE_JPERG);
        assertEquals(temperatureC, table.temperatureC(enthalpy), TABLE_C);
        assertEquals(temperatureC, table.temperatureC(table.enthalpyJPerG(temperatureC)), 1e-9);
    }

    @Test
    void waterTakesItsLatentHeatAtOneTemperature() {
        EnthalpyTable table = Samples.water().table();
        assertEquals(0, table.temperatureC(-100), 0.001);
        assertEquals(30, table.icePercent(-0.3 * PureWater.LATENT_HEAT_JPERG), 0.2);
        double between = Samples.water().heatToRemoveJPerG(0.001, -0.001);
        assertEquals(PureWater.LATENT_HEAT_JPERG, between, 0.01);
    }

    @Test
    void moreAirConductsLessAndWeighsLess() {
        ThermalCurve plain = Samples.iceCream();
        ThermalCurve airy = plain.withOverrun(50);
        assertTrue(airy.conductivityWPerMK(-15) < plain.conductivityWPerMK(-15));
        assertEquals(plain.densityKgPerM3(5) / 1.5, airy.densityKgPerM3(5), 1e-9);
        assertEquals(plain.enthalpyJPerG(-15), airy.enthalpyJPerG(-15), ROUNDING);
    }

    @Test
    void theLatentHeatShrinksInTheCold() {
        double at10 = Substance.WATER.enthalpyFromZeroJPerG(-10) - PureWater.iceEnthalpyJPerG(-10);
        assertEquals(312, at10, 1.5); // 333.4 less 10 K of about 2.1 J/(g·K)
    }

    @Test
    void refusesTheHopeless() {
        Exception e =
                assertThrows(IllegalArgumentException.class, () -> PureWater.densityKgPerM3(280));
        assertEquals(
                "temperatureC is 280; it must be between 0 and 60 °C for water", e.getMessage());
        assertThrows(
                IllegalArgumentException.class, () -> Substance.FAT.conductivityWPerMK(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Samples.milk().withOverrun(900));
    }
}
