package coldwright.science.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.science.freezing.Brine;
import coldwright.science.thermal.PureWater;

import org.junit.jupiter.api.Test;

/** Laws of the bath that hold whatever the amounts are. */
class BathLawsTest {
    /** Goal set for the bath, °C. */
    private static final double PHASE_DIAGRAM_C = 0.2;

    /** Straight lines between the points of the bath's table, share of the heat. */
    private static final double TABLE_SHARE = 1e-3;

    @Cases(200)
    void massAndEnergyCloseAtEachMoment(Draw draw) {
        double ice = draw.doubleIn(200, 4000);
        double salt = draw.doubleIn(0, 1500);
        double heatPerGram = draw.doubleIn(0, 300);
        IceAndSalt bath = IceAndSalt.of(ice, salt).iceAt(-10);
        double heat = heatPerGram * ice;
        double t = bath.temperatureAfterC(heat);
        double iceLeft = bath.iceLeftG(heat);
        double loose = bath.looseSaltG(heat);
        double brine = ice - iceLeft + salt - loose;
        double inside =
                iceLeft * PureWater.iceEnthalpyJPerG(Math.min(t, 0))
                        + loose * BrineHeat.SOLID_SALT_JPERGK * t;
        double strength = brine > 1e-6 ? Math.min(26.4, 100 * (salt - loose) / brine) : 0;
        if (brine > 1e-6) {
            inside += brine * BrineHeat.enthalpyJPerG(strength, t);
        }
        double before =
                ice * PureWater.iceEnthalpyJPerG(-10) + salt * BrineHeat.SOLID_SALT_JPERGK * 20;
        assertEquals(before + heat, inside, TABLE_SHARE * 330 * ice);
        if (iceLeft > 1 && brine > 1) {
            assertEquals(Brine.freezingPointC(strength), t, PHASE_DIAGRAM_C);
        }
    }

    @Cases(200)
    void neverBelowTheEutecticAndNeverCoolingAsHeatGoesIn(Draw draw) {
        double ice = draw.doubleIn(100, 4000);
        double salt = draw.doubleIn(0, 3000);
        double one = draw.doubleIn(0, 1e6);
        double other = draw.doubleIn(0, 1e6);
        IceAndSalt bath = IceAndSalt.of(ice, salt);
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        assertTrue(bath.startC() >= Brine.EUTECTIC_C - 1e-9);
        assertTrue(bath.temperatureAfterC(low) <= bath.temperatureAfterC(high) + 1e-9);
        assertTrue(bath.iceLeftG(low) >= bath.iceLeftG(high) - 1e-6);
    }

    @Cases(100)
    void moreSaltNeverMakesAWarmerEnd(Draw draw) {
        double salt = draw.doubleIn(0, 900);
        double more = draw.doubleIn(0, 200);
        assertTrue(
                IceAndSalt.of(2000, salt + more).lastIceC()
                        <= IceAndSalt.of(2000, salt).lastIceC() + 1e-9);
    }

    /** Five grams of ice under a batch of 20 °C once showed a bath of 40 °C. */
    @Cases(100)
    void aBathIsNeverWarmerThanRoomAndBatch(Draw draw) {
        double roomC = draw.doubleIn(5, 35);
        double wattsPerK = draw.doubleIn(0.2, 3);
        BathRun run =
                IceAndSalt.of(draw.doubleIn(5, 200), draw.doubleIn(0, 60)).roomAt(roomC).start();
        double batchC = draw.doubleIn(4, 30);
        double warmestC = Math.max(roomC, batchC);
        for (int i = 0; i < 300; i++) {
            double heatJ = 60 * wattsPerK * (batchC - run.temperatureC());
            batchC -= heatJ / 1700;
            run.pass(60, heatJ);
            assertTrue(run.temperatureC() <= warmestC + 1e-6, () -> run.temperatureC() + " °C");
        }
    }

    @Cases(50)
    void theClockKeepsTheHeat(Draw draw) {
        double watts = draw.doubleIn(0, 200);
        double minutes = draw.doubleIn(0, 60);
        IceAndSalt bath = IceAndSalt.of(1500, 400);
        BathRun run = bath.start();
        for (int i = 0; i < minutes; i++) {
            run.pass(60, 60 * watts);
        }
        double all = run.fromBatchJ() + run.fromRoomJ();
        assertEquals(bath.temperatureAfterC(all), run.temperatureC(), 1e-6);
        assertEquals(bath.iceLeftG(all), run.iceG(), 1e-3);
    }

    @Test
    void theLeastBathEndsAsWished() {
        IceAndSalt bath = IceAndSalt.leastFor(150_000, -12);
        assertEquals(150_000, bath.heatUntilMeltedJ(), 300);
        assertEquals(-12, bath.lastIceC(), 0.02);
        assertTrue(bath.iceG() > 300 && bath.iceG() < 600, "about 330 J per gram of ice");
    }

    @Test
    void insulationAndWetIce() {
        IceAndSalt bare = IceAndSalt.of(2000, 500);
        assertTrue(bare.roomWPerK() > 3 * bare.in(Vessel.COOLER_BOX).roomWPerK());
        assertTrue(bare.iceAt(0).heatUntilMeltedJ() < bare.heatUntilMeltedJ());
        double cold = bare.heatUntilMeltedJ() - bare.iceAt(0).heatUntilMeltedJ();
        assertEquals(2000 * 36.5, cold, 200); // 18 K of ice
    }

    @Test
    void saysWhatIsWrong() {
        assertTrue(IceAndSalt.of(1000, 0).notes().get(0).startsWith("no salt"));
        assertTrue(IceAndSalt.of(1000, 500).notes().get(0).startsWith("too much salt"));
        assertTrue(IceAndSalt.of(1000, 60).notes().get(0).startsWith("little salt"));
        Exception e = assertThrows(IllegalArgumentException.class, () -> IceAndSalt.of(-5, 100));
        assertEquals("iceG is −5 g; it must be more than zero", e.getMessage());
    }
}
