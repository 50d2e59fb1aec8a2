package coldwright.science.freezing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

import java.util.List;

class SolutionTest {
    private static final Solution SYRUP = Solution.inWater(70).with(30, Solute.SUCROSE);

    private static String message(Executable what) {
        return assertThrows(IllegalArgumentException.class, what).getMessage();
    }

    @Test
    void theExampleOfTheJavadocIsTrue() {
        assertEquals(-2.65, SYRUP.freezingPointC(), 0.005);
        assertEquals(-5.94, SYRUP.with(5, Solute.ETHANOL).freezingPointC(), 0.005);
        assertEquals(78.7, SYRUP.freezingCurve().icePercentAt(-18), 0.05);
    }

    @Test
    void withersLeaveTheirSolutionAlone() {
        Solution sweeter = SYRUP.with(5, Solute.SUCROSE).with(2, Solute.GLUCOSE);
        assertEquals(30, SYRUP.massPercent(Solute.SUCROSE));
        assertEquals(35, sweeter.massG().get(Solute.SUCROSE));
        assertEquals(SYRUP.with(5, Solute.SUCROSE), sweeter.without(Solute.GLUCOSE));
        assertEquals(60, SYRUP.withWater(60).waterG() - SYRUP.waterG());
        assertThrows(
                UnsupportedOperationException.class, () -> SYRUP.massG().put(Solute.LACTOSE, 1.0));
    }

    @Test
    void pureWaterFreezesAtZero() {
        Solution water = Solution.inWater(100);
        assertEquals(0, water.freezingPointC());
        assertEquals(1, water.waterActivity(20));
        assertEquals(List.of(), water.notes());
        assertEquals(100, water.freezingCurve().icePercentAt(-0.001));
        assertEquals(0, water.freezingCurve().icePercentAt(0));
        assertEquals(0, water.freezingCurve().temperatureAtIcePercentC(40));
        assertEquals(0, water.freezingCurve().concentratedPhaseSolidsPercent(-5));
    }

    @Test
    void nothingAddedChangesNothing() {
        Solution nothing = SYRUP.with(0, Solute.SODIUM_CHLORIDE).withIdealParticles(0, "ions");
        assertEquals(SYRUP.freezingPointC(), nothing.freezingPointC());
    }

    @Test
    void activityIsThatOfIceAtTheFreezingPoint() {
        assertEquals(
                IceActivity.waterActivity(SYRUP.freezingPointC()), SYRUP.waterActivity(20), 1e-9);
        // 26 % brine at 25 °C: 0.754 published for saturation (from memory); the drift with
        // temperature and the reach past the eutectic cost 0.02, as the Javadoc says.
        Solution saturated = Solution.inWater(73.6).with(26.4, Solute.SODIUM_CHLORIDE);
        assertEquals(0.754, saturated.waterActivity(25), 0.02);
    }

    @Test
    void everyRemarkIsEarned() {
        assertEquals(List.of(), SYRUP.notes());
        assertEquals(
                List.of(
                        "Freezing at −11.28 °C, it lies beyond the published freezing points of fructose: expect an error of about 0.6 °C."),
                Solution.inWater(50).with(50, Solute.FRUCTOSE).notes());
        assertEquals(
                List.of(
                        "No freezing points of sorbitol were found: it is calculated from its water activity at 25 °C, to about 4 %."),
                Solution.inWater(90).with(10, Solute.SORBITOL).notes());
        assertEquals(
                List.of(
                        "Alcohol with other solutes: the rule of mixtures could not be checked on measurements, expect an error of 5 % of the depression."),
                SYRUP.with(5, Solute.ETHANOL).notes());
        assertEquals(
                List.of(
                        "There is more salt than cold brine can hold: the rest stays undissolved, and it gets no colder than −21.1 °C."),
                Solution.inWater(70).with(30, Solute.SODIUM_CHLORIDE).notes());
        assertEquals(
                List.of("It is so strong that ice never forms at any temperature served here."),
                Solution.inWater(2).with(98, Solute.ETHANOL).notes());
        assertTrue(
                Solution.inWater(15)
                        .with(85, Solute.SUCROSE)
                        .notes()
                        .contains(
                                "It is too thick to freeze: below about −34 °C water no longer gathers into crystals."));
    }

    @Test
    void theErrorGrowsWithDoubt() {
        double plain = SYRUP.freezingPointErrorC() / -SYRUP.freezingPointC();
        Solution rum = SYRUP.with(8, Solute.ETHANOL);
        double boozy = rum.freezingPointErrorC() / -rum.freezingPointC();
        assertEquals(0.01, plain, 0.001);
        assertEquals(0.058, boozy, 0.001);
        assertEquals(
                0.01, Solution.inWater(990).with(10, Solute.SUCROSE).freezingPointErrorC(), 1e-9);
    }

    @Test
    void saltsDropOutGentlyBesideSugar() {
        FreezingCurve pure = Solution.inWater(80).with(20, Solute.SODIUM_CHLORIDE).freezingCurve();
        FreezingCurve sweetened =
                Solution.inWater(80)
                        .with(20, Solute.SODIUM_CHLORIDE)
                        .with(0.01, Solute.SUCROSE)
                        .freezingCurve();
        assertEquals(pure.icePercentAt(-20), sweetened.icePercentAt(-20), 0.1);
        assertEquals(pure.icePercentAt(-25), sweetened.icePercentAt(-25), 0.1);
    }

    @Test
    void speaksPlainlyOfBadInput() {
        assertEquals(
                "waterG is 0 g; it must be more than zero", message(() -> Solution.inWater(0)));
        assertEquals(
                "waterG is not a number g; it must be more than zero",
                message(() -> Solution.inWater(Double.NaN)));
        assertEquals(
                "sucrose is −5 g; it must be zero or more",
                message(() -> SYRUP.with(-5, Solute.SUCROSE)));
        assertEquals(
                "lactose is infinite g; it must be zero or more",
                message(() -> SYRUP.with(1.0 / 0, Solute.LACTOSE)));
        assertEquals(
                "milk salts is not a number mmol; it must be zero or more",
                message(() -> SYRUP.withIdealParticles(Double.NaN, "milk salts")));
        assertEquals(
                "temperatureC is −300; it must be between −60 and 120 °C",
                message(() -> SYRUP.waterActivity(-300)));
        assertEquals(
                "the solute is missing; name one, such as Solute.SUCROSE",
                message(() -> SYRUP.with(1, null)));
        assertTrue(
                message(() -> Solute.named("sugar"))
                        .startsWith("\"sugar\" is not a solute; use one of sucrose, "));
    }

    @Test
    void solutesGoByTheirNames() {
        for (Solute solute : Solute.values()) {
            assertEquals(solute, Solute.named(solute.displayName()));
            assertTrue(solute.molarMassGPerMol() > 40);
            assertFalse(solute.validity().source().english().isBlank());
        }
    }
}
