package coldwright.science.glass;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ConeTest {
    private static final double ROUNDING = 1e-6;

    @Test
    void theShapingTimeEndsWhereTheWaferTurnsStiff() {
        ConeShaping shaping = ConeShaping.of(Wafer.rolledSugarCone());
        double seconds = shaping.secondsToShape().middle();
        assertEquals(shaping.bendsAboveC(), shaping.temperatureCAfter(seconds).middle(), ROUNDING);
        assertTrue(shaping.secondsToSnap().middle() > seconds);
    }

    @Test
    void metalTakesTheTimeAway() {
        ConeShaping held = ConeShaping.of(Wafer.rolledSugarCone());
        ConeShaping onMetal = held.cooled(Surroundings.ON_METAL);
        assertTrue(onMetal.secondsToShape().high() < held.secondsToShape().low());
        assertFalse(
                ConeShaping.of(Wafer.rolledSugarCone().thick(4))
                        .cooled(Surroundings.ON_METAL)
                        .notes()
                        .isEmpty(),
                "a thick wafer on metal is no longer lumped");
    }

    /** Biot 0.3125: ratio of the exact centre temperatures of a slab at Fourier 1 and 2. */
    @Test
    void coolingKeepsTheSlowestModeOfTheExactSeries() {
        double exact = Math.log(0.7891166439 / 0.5949117997);
        double biot = 0.3125;
        Wafer wafer = Wafer.rolledSugarCone();
        double h = ConeShaping.of(wafer).biot() / biot;
        ConeShaping slab = ConeShaping.of(wafer.thick(wafer.thicknessMm() / h));
        double half = slab.wafer().thicknessMm() / 2000;
        double seconds =
                Wafer.DENSITY_G_PER_ML
                        * 1e6
                        * wafer.heatCapacityJPerGK()
                        * half
                        * half
                        / Wafer.CONDUCTIVITY_W_PER_MK;
        double start = slab.temperatureCAfter(seconds).middle() - slab.roomC();
        double end = slab.temperatureCAfter(2 * seconds).middle() - slab.roomC();
        assertEquals(biot, slab.biot(), 1e-9);
        assertEquals(exact, Math.log(start / end), 0.01 * exact);
    }

    @Test
    void littleSugarCannotBeRolled() {
        ConeShaping moulded = ConeShaping.of(Wafer.mouldedCone());
        assertEquals(0, moulded.secondsToShape().high());
        assertTrue(moulded.notes().stream().anyMatch(n -> n.contains("bake it in its shape")));
    }

    @Test
    void aFreshConeIsCrispAndADampOneIsNot() {
        DampAir air = new DampAir(Wafer.rolledSugarCone(), 22);
        assertTrue(Wafer.rolledSugarCone().sugarPhase().glassTransitionC() > 22);
        assertTrue(air.glassTransitionCAt(75).high() < 22);
        double limit = air.crispUpToHumidityPercent().middle();
        assertEquals(22, air.glassTransitionCAt(limit).middle(), 0.01);
    }

    @Test
    void aBadIronIsNamed() {
        IllegalArgumentException e =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> ConeShaping.of(Wafer.rolledSugarCone()).fromIronAt(443));
        assertEquals("ironC is 443; it must be between 60 and 230 °C", e.getMessage());
    }
}
