package coldwright.science.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

import java.util.Random;

/** Small linear programs against a fine grid of trials. */
class SmallProgramLawsTest {
    private static final int GRID = 24;

    @Cases(400)
    void noPointOfTheGridIsBetter(Draw draw) {
        int variables = draw.intIn(1, 3);
        int rows = draw.intIn(0, 8);
        Random random = new Random(draw.anyLong());
        double[][] a = new double[rows][variables];
        double[] b = new double[rows];
        double[] cost = new double[variables];
        double[] most = new double[variables];
        for (int j = 0; j < variables; j++) {
            cost[j] = 0.1 + random.nextDouble();
            most[j] = 1 + 3 * random.nextDouble();
        }
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < variables; j++) {
                a[i][j] = random.nextGaussian();
            }
            b[i] = random.nextGaussian();
        }
        double[] x = SmallProgram.solve(cost, a, b, most);
        double best = grid(cost, a, b, most);
        if (x == null) {
            assertEquals(Double.POSITIVE_INFINITY, best, "a point of the grid keeps to all rows");
            return;
        }
        double value = 0;
        for (int j = 0; j < variables; j++) {
            assertTrue(x[j] >= -1e-6 && x[j] <= most[j] + 1e-6, "within its bounds");
            value += cost[j] * x[j];
        }
        for (int i = 0; i < rows; i++) {
            assertTrue(row(a[i], x) <= b[i] + 1e-6, "row " + i);
        }
        assertTrue(value <= best + 1e-6, value + " against " + best);
    }

    private static double row(double[] a, double[] x) {
        double sum = 0;
        for (int j = 0; j < x.length; j++) {
            sum += a[j] * x[j];
        }
        return sum;
    }

    /** The least cost of a point of the grid that keeps to all rows; infinite if none does. */
    private static double grid(double[] cost, double[][] a, double[] b, double[] most) {
        double best = Double.POSITIVE_INFINITY;
        int points = (int) Math.pow(GRID + 1, cost.length);
        for (int p = 0; p < points; p++) {
            double[] x = new double[cost.length];
            int rest = p;
            for (int j = 0; j < x.length; j++) {
                x[j] = most[j] * (rest % (GRID + 1)) / GRID;
                rest /= GRID + 1;
            }
            boolean keeps = true;
            for (int i = 0; i < b.length && keeps; i++) {
                keeps = row(a[i], x) <= b[i];
            }
            best = keeps ? Math.min(best, row(cost, x)) : best;
        }
        return best;
    }
}
