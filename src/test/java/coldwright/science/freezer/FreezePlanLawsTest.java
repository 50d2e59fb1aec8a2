package coldwright.science.freezer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.science.bath.IceAndSalt;
import coldwright.science.bath.Vessel;
import coldwright.science.thermal.ThermalCurve;

import org.junit.jupiter.api.Test;

import java.util.List;

/** Laws of freezing that hold whatever the batch is. */
class FreezePlanLawsTest {
    private static final ThermalCurve SORBET = Batches.sorbet();

    /** Steps of a march against an infinitely fine one. */
    private static final double STEPS = 0.005;

    private static double soft(Freeze freeze) {
        double minutes = freeze.plan().minutesToSoftServe();
        return Double.isNaN(minutes) ? Double.POSITIVE_INFINITY : minutes;
    }

    @Cases(30)
    void colderIsNeverSlower(Draw draw) {
        double one = draw.doubleIn(-40, -6);
        double other = draw.doubleIn(-40, -6);
        Freeze tub = Freeze.of(SORBET, 500).in(Holder.Tub.round(90));
        double colder = soft(tub.by(Cold.freezer(Math.min(one, other))));
        double warmer = soft(tub.by(Cold.freezer(Math.max(one, other))));
        assertTrue(colder <= warmer * (1 + STEPS), colder + " " + warmer);
    }

    @Cases(30)
    void thickerIsNeverFaster(Draw draw) {
        double one = draw.doubleIn(5, 60);
        double other = draw.doubleIn(5, 60);
        Freeze freeze = Freeze.of(SORBET, 500).by(IceAndSalt.of(2000, 500));
        double thin = soft(freeze.in(Holder.Bag.flat(Math.min(one, other))));
        double thick = soft(freeze.in(Holder.Bag.flat(Math.max(one, other))));
        assertTrue(thin <= thick * (1 + STEPS), thin + " " + thick);
    }

    @Cases(30)
    void moreSugarIsNeverFaster(Draw draw) {
        double one = draw.doubleIn(8, 40);
        double other = draw.doubleIn(8, 40);
        double less = softIce(Math.min(one, other));
        double more = softIce(Math.max(one, other));
        assertTrue(less <= more + 1e-9, less + " " + more);
    }

    /** Temperature at which half the water is ice, turned round so that it grows with sugar. */
    private static double softIce(double sugar) {
        var table = Batches.sugarWater(sugar).table();
        return -table.temperatureC(table.enthalpyAtIceJPerG(50));
    }

    @Cases(25)
    void staysBetweenStartAndColdAndIceOnlyGrows(Draw draw) {
        double freezerC = draw.doubleIn(-30, -8);
        double startC = draw.doubleIn(0, 25);
        double diameterMm = draw.doubleIn(50, 200);
        FreezePlan plan =
                Freeze.of(SORBET, 700)
                        .in(Holder.Tub.round(diameterMm))
                        .by(Cold.freezer(freezerC))
                        .from(startC)
                        .plan();
        double ice = 0;
        double minute = -1;
        for (FreezeMoment moment : plan.course()) {
            assertTrue(moment.middleC() <= startC + 0.05 && moment.middleC() >= freezerC - 0.05);
            assertTrue(moment.wallC() <= startC + 0.05 && moment.wallC() >= freezerC - 0.05);
            assertTrue(moment.icePercent() >= ice - 1e-6, moment.toString());
            assertTrue(moment.minute() > minute);
            ice = moment.icePercent();
            minute = moment.minute();
        }
    }

    @Cases(25)
    void heatOfBatchAndRoomIsInTheBath(Draw draw) {
        double iceG = draw.doubleIn(300, 2500);
        double saltG = draw.doubleIn(100, 800);
        double massG = draw.doubleIn(100, 900);
        IceAndSalt bath = IceAndSalt.of(iceG, saltG);
        FreezePlan plan =
                Freeze.of(SORBET, massG).in(Holder.Bag.flat(20)).by(bath).hardenedBy(null).plan();
        List<FreezeMoment> course = plan.course();
        FreezeMoment last = course.get(course.size() - 1);
        double heatJ = 1000 * (plan.heatRemovedKJ() + plan.heatFromRoomKJ());
        assertEquals(bath.iceLeftG(heatJ), last.bathIceG(), 1e-3 * iceG);
        assertEquals(bath.temperatureAfterC(heatJ), last.coldC(), 0.02);
    }

    @Test
    void stagesComeInOrderAndTheSpreadHoldsTheMiddle() {
        FreezePlan plan = Freeze.of(Batches.iceCream(), 800).plan();
        double before = 0;
        for (Stage stage : Stage.values()) {
            double at = plan.minutesTo(stage);
            assertTrue(at > before, stage + " at " + at);
            var range = plan.rangeMinutes(stage);
            assertTrue(range.least() < at && at < range.most());
            before = at;
        }
    }

    @Test
    void shakingIsScheduledAndHelpsALittle() {
        Freeze tub = Freeze.of(Batches.iceCream(), 1000);
        FreezePlan shaken = tub.moved(Motion.every(45)).plan();
        FreezePlan still = tub.plan();
        assertTrue(shaken.minutesToSoftServe() < still.minutesToSoftServe());
        assertTrue(shaken.minutesToSoftServe() > 0.8 * still.minutesToSoftServe());
        List<Double> times = shaken.shakeAtMinutes();
        assertTrue(times.size() > 4);
        assertTrue(times.get(0) >= 45 && times.get(times.size() - 1) <= shaken.minutesToHard());
        assertTrue(still.shakeAtMinutes().isEmpty());
    }

    @Test
    void aSmallBathRunsOutAndTheNeededOneDoesNot() {
        Freeze freeze = Freeze.of(SORBET, 900).in(Holder.Bag.flat(25));
        FreezePlan poor = freeze.by(IceAndSalt.of(250, 60)).plan();
        assertTrue(
                poor.remarks().stream().anyMatch(r -> r.startsWith("the last ice")),
                poor.remarks().toString());
        IceAndSalt enough = poor.leastBath();
        FreezePlan good = freeze.by(enough.in(Vessel.BARE_BOWL)).plan();
        assertTrue(good.reaches(Stage.SOFT_SERVE), good + " in " + enough);
    }

    @Test
    void refusesTheHopeless() {
        Exception e = assertThrows(IllegalArgumentException.class, () -> Holder.Bag.flat(0));
        assertEquals("thicknessMm is 0; it must be between 3 and 100 mm", e.getMessage());
        assertThrows(IllegalArgumentException.class, () -> Freeze.of(SORBET, -1));
        assertThrows(IllegalArgumentException.class, () -> Cold.freezer(4));
    }
}
