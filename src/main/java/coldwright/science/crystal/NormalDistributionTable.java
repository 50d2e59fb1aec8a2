package coldwright.science.crystal;

import org.hipparchus.special.Erf;

/** Share of a normal distribution below a value, as a table because each step needs it. */
final class NormalDistributionTable {
    private static final double REACH = 5;
    private static final int STEPS = 1000;
    private static final double[] TABLE = table();

    private NormalDistributionTable() {}

    static double below(double standardDeviations) {
        if (standardDeviations <= -REACH) {
            return 0;
        }
        if (standardDeviations >= REACH) {
            return 1;
        }
        double at = (standardDeviations + REACH) / (2 * REACH) * STEPS;
        int k = Math.min((int) at, STEPS - 1);
        return TABLE[k] + (at - k) * (TABLE[k + 1] - TABLE[k]);
    }

    private static double[] table() {
        double[] table = new double[STEPS + 1];
        for (int k = 0; k <= STEPS; k++) {
            double x = (2.0 * k / STEPS - 1) * REACH;
            table[k] = 0.5 * (1 + Erf.erf(x / Math.sqrt(2)));
        }
        return table;
    }
}
