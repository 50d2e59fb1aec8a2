package coldwright.science.freezer;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.bath.IceAndSalt;
import coldwright.science.thermal.ThermalCurve;

import org.junit.jupiter.api.Test;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;

/** How long a plan takes to reckon, in processor time so that a busy machine does not matter. */
class FreezeSpeedTest {
    /** Goal set for an hour of bag and bath, with its spread and its hardening, ms. */
    private static final double GOAL_MS = 5;

    @Test
    void bagWithBath() {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        ThermalCurve curve = Batches.sorbet();
        double[] ms = new double[60];
        double sum = 0;
        for (int i = 0; i < ms.length; i++) {
            long start = clock.getCurrentThreadCpuTime();
            sum +=
                    Freeze.of(curve, 800)
                            .in(Holder.Bag.flat(30))
                            .by(IceAndSalt.of(2000, 500))
                            .plan()
                            .minutesToSoftServe();
            ms[i] = (clock.getCurrentThreadCpuTime() - start) / 1e6;
        }
        double[] warm = Arrays.copyOfRange(ms, ms.length / 2, ms.length);
        Arrays.sort(warm);
        assertTrue(sum > 0);
        assertTrue(warm[warm.length / 2] <= GOAL_MS, warm[warm.length / 2] + " ms");
    }
}
