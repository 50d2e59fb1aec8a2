package coldwright.science.freezer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.bath.IceAndSalt;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.util.List;
import java.util.stream.Stream;

class BagSectionLawsTest {
    private static final double START_C = 5;

    /** Freezing depths end between two steps of the march, and temperatures with them, °C. */
    private static final double ROUNDING_C = 1e-9;

    /** The flux of a step is that at its middle, the temperatures those at its end. */
    private static final double STEP_SHARE = 0.06;

    private static final Mix MIX =
            Mix.of(
                    Amount.grams(500, Shelf.WHOLE_MILK),
                    Amount.grams(150, Shelf.CREAM_35),
                    Amount.grams(120, Shelf.SUCROSE));
    private static final IceAndSalt BATH = IceAndSalt.of(2000, 500);

    static Stream<FreezePlan> plans() {
        Freeze bag = Freeze.of(MIX).in(Holder.Bag.flat(25)).by(BATH);
        return Stream.of(
                FreezePlan.bag(MIX, BATH),
                bag.plan(),
                bag.moved(Motion.STILL).plan(),
                bag.moved(Motion.every(5)).plan(),
                bag.moved(Motion.SHAKEN).plan());
    }

    @ParameterizedTest
    @MethodSource("plans")
    void everyTemperatureLiesBetweenBathAndStart(FreezePlan plan) {
        for (BagSection section : BagSection.course(plan, 30)) {
            for (double mm = 0; mm < section.depth().bathMm() + 10; mm += 0.1) {
                double t = section.temperatureC(mm);
                assertTrue(t <= START_C + ROUNDING_C && t >= section.bathC() - ROUNDING_C);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void itIsColderFartherOut(FreezePlan plan) {
        for (BagSection section : BagSection.course(plan, 30)) {
            List<BagSection.Point> points = section.points();
            for (int i = 1; i < points.size(); i++) {
                assertTrue(points.get(i).fromMiddleMm() >= points.get(i - 1).fromMiddleMm());
                assertTrue(
                        points.get(i).temperatureC()
                                <= points.get(i - 1).temperatureC() + ROUNDING_C);
            }
        }
    }

    @Test
    void theHeatThroughTheFilmDrawnIsThatOfThePlan() {
        FreezePlan plan = FreezePlan.bag(MIX, BATH);
        BagSection section = BagSection.course(plan, 3).get(1);
        FreezeMoment moment =
                plan.course().stream()
                        .filter(one -> one.minute() == section.minute())
                        .findFirst()
                        .orElseThrow();
        double fall = section.temperatureC(15.14) - section.bathC();
        double h = Film.SLUSH.coefficientWPerM2K(Reading.LIKELY);
        assertEquals(moment.fluxWPerM2(), h * fall, STEP_SHARE * moment.fluxWPerM2());
    }

    @Test
    void endsAtSoftServe() {
        FreezePlan plan = FreezePlan.bag(MIX, BATH);
        List<BagSection> course = BagSection.course(plan, 12);
        assertEquals(0, course.get(0).minute());
        assertEquals(START_C, course.get(0).middleC(), 0.01);
        double last = course.get(11).minute();
        assertTrue(last <= plan.minutesToSoftServe() && last > 0.95 * plan.minutesToSoftServe());
    }

    @Test
    void asksForABagInABath() {
        assertEquals(
                "the batch is in a tub 120 mm wide, by a freezer at −18 °C; it must be a bag in ice and salt. Use FreezePlan.bag.",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> BagSection.course(FreezePlan.tub(MIX, -18), 10))
                        .getMessage());
    }
}
