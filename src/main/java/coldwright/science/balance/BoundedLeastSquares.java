package coldwright.science.balance;

import org.ojalgo.matrix.store.R064Store;
import org.ojalgo.matrix.store.RawStore;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.convex.ConvexSolver;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shares of a total, each within its bounds, whose weighted rows come nearest to wanted values.
 *
 * <p>Solved by ojAlgo's convex solver, unless it is soon clear which shares stand at their bounds
 * ({@link ActiveBounds}), which spares most of the time. A small ridge pulls towards the shares
 * given, which makes the answer unique; since each call starts from the answer before, the pull
 * fades (the proximal point method: Rockafellar 1976, SIAM J. Control Optim. 14:877, from memory).
 */
final class BoundedLeastSquares {
    private static final double RIDGE = 1e-3;

    private final double[] least;
    private final double[] most;

    BoundedLeastSquares(double totalG, List<Choice> choices) {
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
        double[][] squares = new double[n][n];
        double[] pull = new double[n];
        for (int i = 0; i < n; i++) {
            pull[i] = RIDGE * centre[i];
            for (int k = 0; k < rows.length; k++) {
                pull[i] += rows[k][i] * wanted[k];
            }
            for (int j = 0; j < n; j++) {
                double sum = i == j ? RIDGE : 0;
                for (double[] row : rows) {
                    sum += row[i] * row[j];
                }
                squares[i][j] = sum;
            }
        }
        return new ActiveBounds(least, most, squares, pull)
                .best(centre)
                .orElseGet(() -> anyBounds(squares, pull));
    }

    /** The best shares, whichever of them come to stand at a bound. */
    double[] anyBounds(double[][] squares, double[] pull) {
        int n = pull.length;
        R064Store ones = R064Store.FACTORY.make(1, n);
        ones.fillAll(1.0);
        R064Store one = R064Store.FACTORY.make(1, 1);
        one.fillAll(1.0);
        int[] capped = IntStream.range(0, n).filter(i -> most[i] < 1).toArray();
        R064Store bounds = R064Store.FACTORY.make(n + capped.length, n);
        R064Store limits = R064Store.FACTORY.make(n + capped.length, 1);
        for (int i = 0; i < n; i++) {
            bounds.set(i, i, -1);
            limits.set(i, 0, -least[i]);
        }
        for (int k = 0; k < capped.length; k++) {
            bounds.set(n + k, capped[k], 1);
            limits.set(n + k, 0, most[capped[k]]);
        }
        Optimisation.Result result =
                ConvexSolver.newBuilder()
                        .objective(
                                R064Store.FACTORY.copy(RawStore.wrap(squares)),
                                R064Store.FACTORY.column(pull))
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
