package coldwright.measure;

import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.Callable;

/**
 * How long something took, several times over.
 *
 * @param what what was timed
 * @param medianMs the middle of the times, ms
 * @param p95Ms the time that 95 of 100 stay below, ms
 * @param times how many times
 */
record Sample(String what, double medianMs, double p95Ms, int times) {
    /** Times an action after some rounds that don't count. */
    static Sample of(String what, int warmUp, int times, Callable<?> action) throws Exception {
        double[] ms = new double[times];
        for (int i = -warmUp; i < times; i++) {
            long start = System.nanoTime();
            action.call();
            if (i >= 0) {
                ms[i] = (System.nanoTime() - start) / 1e6;
            }
        }
        return of(what, ms);
    }

    /** Sums up times that were taken elsewhere, ms. */
    static Sample of(String what, double... ms) {
        double[] sorted = ms.clone();
        Arrays.sort(sorted);
        int last = sorted.length - 1;
        return new Sample(
                what,
                sorted[sorted.length / 2],
                sorted[Math.min(last, (int) Math.ceil(0.95 * sorted.length) - 1)],
                sorted.length);
    }

    String row() {
        return String.format(
                Locale.ROOT, "| %s | %.1f | %.1f | %d |", what, medianMs, p95Ms, times);
    }
}
