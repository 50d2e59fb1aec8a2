package coldwright.science.freezing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

import org.junit.jupiter.api.Test;

class BrineTest {
    @Test
    void theExampleOfTheJavadocIsTrue() {
        assertEquals(-16.46, Brine.freezingPointC(20), 0.005);
        assertEquals(-21.1, Brine.freezingPointC(30));
        assertEquals(14.1, Brine.saltPercentAtIceLine(-10), 0.05);
    }

    @Test
    void endsAtTheEutectic() {
        assertEquals(0, Brine.freezingPointC(0));
        assertEquals(Brine.EUTECTIC_C, Brine.freezingPointC(Brine.EUTECTIC_SALT_PERCENT));
        assertEquals(Brine.EUTECTIC_C, Brine.freezingPointC(100));
        assertEquals(
                Brine.EUTECTIC_SALT_PERCENT, Brine.saltPercentAtIceLine(Brine.EUTECTIC_C), 0.02);
        assertEquals(0, Brine.saltPercentAtIceLine(0));
        assertEquals(30.4, Brine.mostDissolvedSaltG(100), 0.05);
    }

    @Cases(1000)
    void readsThereAndBack(Draw draw) {
        double saltPercent = draw.doubleIn(0, 23.2);
        double back = Brine.saltPercentAtIceLine(Brine.freezingPointC(saltPercent));
        assertEquals(saltPercent, back, 1e-5);
    }

    @Cases(1000)
    void moreSaltIsNeverWarmer(Draw draw) {
        double saltPercent = draw.doubleIn(0, 90);
        double more = draw.doubleIn(0, 10);
        assertTrue(Brine.freezingPointC(saltPercent + more) <= Brine.freezingPointC(saltPercent));
    }

    @Test
    void speaksPlainlyOfBadInput() {
        assertEquals(
                "temperatureC is −25; it must be between −21.1 and 0 °C. Table salt can't make a bath colder.",
                assertThrows(IllegalArgumentException.class, () -> Brine.saltPercentAtIceLine(-25))
                        .getMessage());
        assertEquals(
                "temperatureC is 4; it must be between −21.1 and 0 °C",
                assertThrows(IllegalArgumentException.class, () -> Brine.saltPercentAtIceLine(4))
                        .getMessage());
        assertEquals(
                "saltPercent is 120; it must be between 0 and 100 % by mass",
                assertThrows(IllegalArgumentException.class, () -> Brine.freezingPointC(120))
                        .getMessage());
    }
}
