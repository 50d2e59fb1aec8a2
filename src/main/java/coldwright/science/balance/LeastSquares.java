package coldwright.science.balance;

import org.ojalgo.matrix.store.R064Store;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.convex.ConvexSolver;

import java.util.Arrays;
import java.util.List;

/**
 * Shares of a total, each within its bounds, whose weighted rows come nearest to wanted values.
 *
 * <p>Solved by ojAlgo's convex solver. A small ridge pulls towards the shares given, which makes
 * the answer unique; since each call starts from the answer before, the pull fades (the proximal
 * point method: Rockafellar 1976, SIAM J. Control Optim. 14:877, from memory).
 */
final class LeastSquares {
    private static final double RIDGE = 1e-3;

    private final double[] least;
    private final double[] most;

    LeastSquares(double totalG, List<Choice> choices) {
        least = choices.stream().mapToDouble(c -> c.leastG() / totalG).toArray();
        most = choices.stream().mapToDouble(c -> Math.min(1, c.mostG() / totalG)).toArray();
    }

    /** The total spread evenly, bounds aside. */
    double[] even() {
        double[] shares = new double[least.length];
        Arrays.fill(shares, 1.0 / shares.length);
        return shares;
    }

    /**
     * The best shares near to given ones.
     *
     * @param centre the shares to stay near to, as far as the rows don't mind
     * @param rows one row of factors for each wanted value
     * @param wanted the values
     * @return shares within the bounds that add up to one
     */
    double[] nearTo(double[] centre, double[][] rows, double[] wanted) {
        int n = centre.length;
        R064Store q = R064Store.FACTORY.make(n, n);
        R064Store c = R064Store.FACTORY.make(n, 1);
        for (int i = 0; i < n; i++) {
            double pull = RIDGE * centre[i];
            for (int k = 0; k < rows.length; k++) {
                pull += rows[k][i] * wanted[k];
            }
            c.set(i, 0, pull);
            for (int j = 0; j < n; j++) {
                double sum = i == j ? RIDGE : 0;
                for (double[] row : rows) {
                    sum += row[i] * row[j];
                }
                q.set(i, j, sum);
            }
        }
        R064Store ones = R064Store.FACTORY.make(1, n);
        ones.fillAll(1.0);
        R064Store one = R064Store.FACTORY.make(1, 1);
        one.fillAll(1.0);
        R064Store bounds = R064Store.FACTORY.make(2 * n, n);
        R064Store limits = R064Store.FACTORY.make(2 * n, 1);
        for (int i = 0; i < n; i++) {
            bounds.set(i, i, 1);
            limits.set(i, 0, most[i]);
            bounds.set(n + i, i, -1);
            limits.set(n + i, 0, -least[i]);
        }
        Optimisation.Result result =
                ConvexSolver.newBuilder()
                        .objective(q, c)
                        .equalities(ones, one)
                        .inequalities(bounds, limits)
                        .solve();
        if (!result.getState().isFeasible()) {
            throw new IllegalStateException("the least squares found no answer: " + result);
        }
        double[] shares = new double[n];
        for (int i = 0; i < n; i++) {
            shares[i] = Math.min(most[i], Math.max(least[i], result.doubleValue(i)));
        }
        return shares;
    }
}
