package coldwright.science.freezing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import java.util.List;

class FreezingCurveTest {
    private static final FreezingCurve SYRUP =
            Solution.inWater(70).with(30, Solute.SUCROSE).freezingCurve();

    /** 12 % fat, 11 % milk solids not fat, 15 % sugar; Leighton's salts. */
    private static final Solution ICE_CREAM =
            Solution.inWater(61.7)
                    .with(15, Solute.SUCROSE)
                    .with(6, Solute.LACTOSE)
                    .withIdealParticles(13.9, "milk salts");

    @Test
    void theExampleOfTheJavadocIsTrue() {
        assertEquals(-2.65, SYRUP.initialFreezingPointC(), 0.005);
        assertEquals(66, SYRUP.icePercentAt(-10), 0.5);
        assertEquals(-6.0, SYRUP.temperatureAtIcePercentC(50), 0.05);
        assertEquals(56, SYRUP.concentratedPhaseSolidsPercent(-10), 0.5);
    }

    @Test
    void anIceCreamMixStartsNearTheTextbookFigure() {
        // "About −2.5 °C" for this mix, and half the water frozen near −5 °C: dairy textbooks.
        FreezingCurve curve = ICE_CREAM.freezingCurve();
        assertEquals(-2.5, curve.initialFreezingPointC(), 0.1);
        assertEquals(50, curve.icePercentAt(-5), 5);
    }

    @Test
    void iceStopsGrowingInTheGlassySyrup() {
        assertEquals(-34, SYRUP.iceStopsGrowingC());
        assertEquals(SYRUP.icePercentAt(-34), SYRUP.icePercentAt(-60));
        assertEquals(SYRUP.greatestIcePercent(), SYRUP.icePercentAt(-40));
        assertTrue(SYRUP.greatestIcePercent() < 90);
        assertEquals(
                "icePercent is 95; at most 88.2 % of the water of this mix can freeze. Ask for less, or add water.",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> SYRUP.temperatureAtIcePercentC(95))
                        .getMessage());
        assertEquals(
                "icePercent is −1; it must be between 0 and 100 % of the water",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> SYRUP.temperatureAtIcePercentC(-1))
                        .getMessage());
    }

    @Test
    void theLimitOfAMixtureLiesBetween() {
        FreezingCurve mixed =
                Solution.inWater(70)
                        .with(15, Solute.SUCROSE)
                        .with(15, Solute.GLUCOSE)
                        .with(1, Solute.SODIUM_CHLORIDE)
                        .freezingCurve();
        assertEquals(-40, mixed.iceStopsGrowingC(), 1e-9);
        assertEquals(
                -120,
                Solution.inWater(9)
                        .withIdealParticles(9, "ions")
                        .freezingCurve()
                        .iceStopsGrowingC());
    }

    @Test
    void brineSetsAtItsEutectic() {
        FreezingCurve brine = Solution.inWater(90).with(10, Solute.SODIUM_CHLORIDE).freezingCurve();
        assertEquals(-21.1, brine.iceStopsGrowingC());
        assertTrue(brine.icePercentAt(-21) < 64);
        assertEquals(100, brine.icePercentAt(-21.2));
        assertEquals(-21.1, brine.temperatureAtIcePercentC(90), 1e-6);
        assertEquals(
                List.of(
                        "At −21.1 °C the last brine sets, as ice and salt crystals together (the eutectic); all its water counts as ice."),
                brine.notes());
    }

    @Test
    void iceByMassAndByShareAgree() {
        FreezingCurve curve = ICE_CREAM.freezingCurve();
        assertEquals(61.7 * curve.icePercentAt(-12) / 100, curve.iceG(-12), 1e-9);
        double liquidG = 61.7 - curve.iceG(-12);
        assertEquals(100 * 21 / (21 + liquidG), curve.concentratedPhaseSolidsPercent(-12), 1e-9);
    }

    @Test
    void saysWhereItsSourcesEnd() {
        assertEquals(
                List.of(
                        "Colder than −13.95 °C the share of ice rests on more than published freezing points of sucrose: it may be 2 or 3 points off.",
                        "Below about −34 °C no more ice forms: the syrup between the crystals, with 78 % solids, has grown too thick (limits from memory, ±3 °C)."),
                SYRUP.notes());
    }

    @Test
    void refusesKelvin() {
        assertEquals(
                "temperatureC is 255; it must be between −60 and 120 °C: was this kelvin or °F?",
                assertThrows(IllegalArgumentException.class, () -> SYRUP.icePercentAt(255))
                        .getMessage());
    }
}
