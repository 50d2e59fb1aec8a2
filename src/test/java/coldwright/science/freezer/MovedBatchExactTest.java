package coldwright.science.freezer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.science.thermal.ThermalCurve;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.List;

/**
 * A batch moved all the time, in cold that never freezes it: there its properties hardly change,
 * and the film (R. Higbie 1935), the wall and the course in time have exact solutions.
 */
class MovedBatchExactTest {
    /** The properties change by 0.3 % between 5 and −1 °C; the table cuts its corners. */
    private static final double NEARLY_CONSTANT = 0.005;

    private static final double COLD_C = -1;
    private static final double DIAMETER_M = 0.12;

    private static final ThermalCurve SORBET = Batches.sorbet();

    /** Film and wall outside, W/(m²·K): stirred brine, geometric mean of 200 and 600; steel. */
    private static final double OUTSIDE = 1 / (1 / Math.sqrt(200 * 600.0) + 0.8e-3 / 17);

    private static Freeze churn(Motion motion) {
        return Freeze.of(SORBET, 1000)
                .in(Holder.Churn.of(1000 * DIAMETER_M))
                .by(new Cold.Steady(COLD_C, Film.STIRRED_BRINE))
                .moved(motion);
    }

    /** h = 2 √(k ρ c/(π t)), t the time between two turns; in series with wall and film. */
    private static double throughAll(double turnS) {
        double kRhoC =
                SORBET.conductivityWPerMK(3)
                        * SORBET.densityKgPerM3(4)
                        * 1000
                        * SORBET.sensibleHeatCapacityJPerGK(3);
        return 1 / (1 / OUTSIDE + 1 / (2 * Math.sqrt(kRhoC / (Math.PI * turnS))));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 3, 30})
    void theFlowIsThatOfPenetration(double turnS) {
        Motion motion = new Motion(turnS, Motion.Blade.NONE, Motion.KNEADED.phrase());
        List<FreezeMoment> course = churn(motion).plan().course();
        for (int i = 1; i < 10; i++) {
            double halfWayC = (course.get(i - 1).middleC() + course.get(i).middleC()) / 2;
            double flux = throughAll(turnS) * (halfWayC - COLD_C);
            assertEquals(flux, course.get(i).fluxWPerM2(), NEARLY_CONSTANT * flux);
        }
    }

    /** A blade that leaves ice on the wall adds its clearance, as frozen mix. */
    @Test
    void aBladeThatLeavesALayerAddsIt() {
        double clearanceM = 2e-3;
        Motion motion =
                new Motion(3, new Motion.Blade(1000 * clearanceM, 0), Motion.MACHINE.phrase());
        FreezeMoment first = churn(motion).plan().course().get(1);
        double u = 1 / (1 / throughAll(3) + clearanceM / SORBET.conductivityWPerMK(-8));
        double flux = u * ((5 + first.middleC()) / 2 - COLD_C);
        assertEquals(flux, first.fluxWPerM2(), NEARLY_CONSTANT * flux);
    }

    /** T − T_out falls as e^(−U A t/(m c)), A side and bottom of the can. */
    @Test
    void itCoolsAsTheExponential() {
        double areaM2 = Math.PI * DIAMETER_M * DIAMETER_M / 4;
        double litres = 1000 / SORBET.densityKgPerM3(4);
        areaM2 += 4 * litres / 1000 / DIAMETER_M;
        double perSecond = throughAll(3) * areaM2 / (1000 * SORBET.sensibleHeatCapacityJPerGK(3));
        for (FreezeMoment moment : churn(Motion.SHAKEN).plan().course()) {
            double exactC = COLD_C + (5 - COLD_C) * Math.exp(-perSecond * 60 * moment.minute());
            if (moment.middleC() > COLD_C + 0.3) {
                assertEquals(exactC, moment.middleC(), 2 * NEARLY_CONSTANT * (5 - COLD_C));
            }
        }
    }

    /** Steps of half the length change nothing that matters: the march is of second order. */
    @Test
    void theMarchIsNotSlowedByItsSteps() {
        List<FreezeMoment> course = churn(Motion.SHAKEN).plan().course();
        FreezeMoment from = course.get(0);
        FreezeMoment to = course.get(15);
        double perSecond =
                Math.log((from.middleC() - COLD_C) / (to.middleC() - COLD_C)) / to.minute() / 60;
        double areaM2 = Math.PI * DIAMETER_M * DIAMETER_M / 4;
        areaM2 += 4e-3 * 1000 / SORBET.densityKgPerM3(4) / DIAMETER_M;
        double exact = throughAll(3) * areaM2 / (1000 * SORBET.sensibleHeatCapacityJPerGK(3));
        assertEquals(exact, perSecond, NEARLY_CONSTANT * exact);
    }

    /** A small compressor takes all it can all the time: heat over its power less the dasher's. */
    @Test
    void aSmallCompressorSetsTheTime() {
        FreezePlan plan =
                Freeze.of(Batches.iceCream(), 1000)
                        .in(Holder.Churn.of(150))
                        .by(new Cold.Machine(-30, 200))
                        .moved(Motion.MACHINE)
                        .plan();
        double minutes = 1000 * plan.heatRemovedKJ() / (200 - 60) / 60;
        assertEquals(minutes, plan.minutesToSoftServe(), 0.01 * minutes);
    }
}
