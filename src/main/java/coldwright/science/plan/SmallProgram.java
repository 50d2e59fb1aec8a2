package coldwright.science.plan;

/**
 * Linear programs of a few variables: min c·x with a·x ≤ b and 0 ≤ x ≤ most.
 *
 * <p>Rows are added one after another. Where the best point so far breaks a row, the best point of
 * all rows until there is on its edge, which is a program of one variable less (R. Seidel, Discrete
 * Comput. Geom. 6 (1991) 423; from memory). The time is proportional to the number of rows.
 */
final class SmallProgram {
    private static final double EPSILON = 1e-10;

    private SmallProgram() {}

    /**
     * Solves a program.
     *
     * @param cost c, one for each variable
     * @param rows the a of each row
     * @param bounds the b of each row
     * @param most upper bound of each variable
     * @return the best point; null if there is none
     */
    static double[] solve(double[] cost, double[][] rows, double[] bounds, double[] most) {
        return solve(cost, rows, bounds, rows.length, most);
    }

    private static double[] solve(
            double[] cost, double[][] rows, double[] bounds, int count, double[] most) {
        if (cost.length == 1) {
            return oneVariable(cost[0], rows, bounds, count, most[0]);
        }
        double[] x = new double[cost.length];
        for (int j = 0; j < x.length; j++) {
            x[j] = cost[j] < 0 ? most[j] : 0;
        }
        for (int i = 0; i < count; i++) {
            if (dot(rows[i], x) > bounds[i] + EPSILON) {
                x = onEdge(i, cost, rows, bounds, most);
                if (x == null) {
                    return null;
                }
            }
        }
        return x;
    }

    /** The best point of the first rows on the edge of the next one. */
    private static double[] onEdge(
            int at, double[] cost, double[][] rows, double[] bounds, double[] most) {
        double[] edge = rows[at];
        int k = 0;
        for (int j = 1; j < edge.length; j++) {
            k = Math.abs(edge[j]) > Math.abs(edge[k]) ? j : k;
        }
        if (Math.abs(edge[k]) < EPSILON) {
            return null;
        }
        double[][] fewer = new double[at + 2][];
        double[] limits = new double[at + 2];
        for (int i = 0; i < at; i++) {
            double part = rows[i][k] / edge[k];
            fewer[i] = without(k, rows[i], edge, part);
            limits[i] = bounds[i] - part * bounds[at];
        }
        double[] zero = new double[edge.length];
        fewer[at] = without(k, zero, edge, 1 / edge[k]);
        limits[at] = most[k] - bounds[at] / edge[k];
        fewer[at + 1] = without(k, zero, edge, -1 / edge[k]);
        limits[at + 1] = bounds[at] / edge[k];
        double[] restMost = without(k, most, edge, 0);
        double[] rest =
                solve(without(k, cost, edge, cost[k] / edge[k]), fewer, limits, at + 2, restMost);
        if (rest == null) {
            return null;
        }
        double[] x = new double[edge.length];
        double left = bounds[at];
        for (int j = 0; j < x.length; j++) {
            if (j != k) {
                x[j] = rest[j < k ? j : j - 1];
                left -= edge[j] * x[j];
            }
        }
        x[k] = left / edge[k];
        return x;
    }

    private static double[] oneVariable(
            double cost, double[][] rows, double[] bounds, int count, double most) {
        double low = 0;
        double high = most;
        for (int i = 0; i < count; i++) {
            double a = rows[i][0];
            if (a > EPSILON) {
                high = Math.min(high, bounds[i] / a);
            } else if (a < -EPSILON) {
                low = Math.max(low, bounds[i] / a);
            } else if (bounds[i] < -EPSILON) {
                return null;
            }
        }
        return low > high + EPSILON
                ? null
                : new double[] {cost < 0 ? Math.max(low, high) : Math.min(low, most)};
    }

    /** A row less a part of the edge, without the eliminated variable. */
    private static double[] without(int k, double[] row, double[] edge, double part) {
        double[] rest = new double[row.length - 1];
        for (int j = 0; j < rest.length; j++) {
            int from = j < k ? j : j + 1;
            rest[j] = row[from] - part * edge[from];
        }
        return rest;
    }

    private static double dot(double[] row, double[] x) {
        double sum = 0;
        for (int j = 0; j < x.length; j++) {
            sum += row[j] * x[j];
        }
        return sum;
    }
}
