package coldwright.science.freezing;

import java.util.Arrays;

/**
 * A common grid along the ice line, so that reading a curve takes a few multiplications.
 *
 * <p>The nodes are evenly spaced in √(−t), t in °C, so they are dense near 0 °C, where salts change
 * as the square root of concentration. Between nodes a cubic (Catmull and Rom) is used; its error
 * against the closed forms is below 1e-6 of the value.
 */
final class IceLineGrid {
    static final int LAST = 160;
    static final double STEP = Math.sqrt(-IceActivity.COLDEST_C) / LAST;

    /** −ln a_w,ice divided by −t, at each node, per °C. */
    private static final double[] LOSS_PER_C = lossPerC();

    /** −ln a_w,ice at each node. */
    private static final double[] LOSS = loss();

    private IceLineGrid() {}

    /** Temperature of a node, °C. */
    static double temperatureC(int node) {
        return -(node * STEP) * (node * STEP);
    }

    /** −ln of ice's water activity at a node. */
    static double minusLnAtNode(int node) {
        return LOSS[node];
    }

    /** −ln of ice's water activity, read off the grid. */
    static double minusLn(double temperatureC) {
        return -temperatureC * read(LOSS_PER_C, Math.sqrt(-temperatureC));
    }

    /** Temperature at which {@link #minusLn} has a value, °C. */
    static double temperatureOfMinusLnC(double minusLn) {
        int found = Arrays.binarySearch(LOSS, minusLn);
        int low = Math.max(0, Math.min(LAST - 1, found >= 0 ? found : -found - 2));
        double slope = (LOSS[low + 1] - LOSS[low]) / (temperatureC(low) - temperatureC(low + 1));
        double t = temperatureC(low) - (minusLn - LOSS[low]) / slope;
        for (int i = 0; i < 3; i++) {
            t = Math.min(0, t + (minusLn(t) - minusLn) / slope);
        }
        return t;
    }

    /** A table of one value per node, read at u = √(−t). */
    static double read(double[] table, double u) {
        double place = u / STEP;
        int i = Math.min((int) place, LAST - 1);
        double f = place - i;
        double b = table[i];
        double c = table[i + 1];
        double a = i > 0 ? table[i - 1] : 3 * b - 3 * c + table[2];
        double d = i + 2 <= LAST ? table[i + 2] : 3 * c - 3 * b + table[i - 1];
        return b + 0.5 * f * (c - a + f * (2 * a - 5 * b + 4 * c - d + f * (3 * (b - c) + d - a)));
    }

    /**
     * Effective particles per mole of a solute along its ice line: 55.508 mol/kg · (−ln a_w) /
     * molality. It is 1 for an ideal molecule, near 1.8 for table salt.
     */
    static double[] effectiveParticles(SoluteActivity binding) {
        double[] particles = new double[LAST + 1];
        for (int i = 0; i <= LAST; i++) {
            double t = i == 0 ? -1e-6 : temperatureC(i);
            double loss = IceActivity.minusLn(t);
            particles[i] = SoluteActivity.WATER_MOL_PER_KG * loss / binding.molality(loss);
        }
        return particles;
    }

    private static double[] loss() {
        double[] loss = new double[LAST + 1];
        for (int i = 1; i <= LAST; i++) {
            loss[i] = -temperatureC(i) * LOSS_PER_C[i];
        }
        return loss;
    }

    private static double[] lossPerC() {
        double[] loss = new double[LAST + 1];
        for (int i = 0; i <= LAST; i++) {
            double t = i == 0 ? -1e-4 : temperatureC(i);
            loss[i] = IceActivity.minusLn(t) / -t;
        }
        return loss;
    }
}
