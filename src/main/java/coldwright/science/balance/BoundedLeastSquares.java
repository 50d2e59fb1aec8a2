package coldwright.science.balance;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposer;
import org.hipparchus.linear.RealVector;

import java.util.stream.IntStream;

/**
 * Finds shares that add up to one, each within bounds, whose weighted rows come nearest to wanted
 * values.
 *
 * <p>A small ridge pulls towards the shares given, which makes the answer unique; because each call
 * starts from the last answer, the pull fades (the proximal point method: Rockafellar 1976, SIAM J.
 * Control Optim. 14:877, from memory).
 *
 * <p>Given a guess at which shares are at a bound, only linear equations are left (Hipparchus). The
 * free shares move towards their solution until one of them meets a bound; once they are there, the
 * share with the steepest slope away from its bound is freed. When there is none, the conditions of
 * Karush, Kuhn and Tucker are met and the answer is unique: the primal active set method (J.
 * Nocedal and S. J. Wright, Numerical Optimization, 2nd ed. 2006, algorithm 16.3, from memory).
 */
final class BoundedLeastSquares {
    private static final double RIDGE = 1e-3;
    private static final int STEPS_PER_SHARE = 50;
    private static final double SINGULAR = 1e-12;

    /** How far sums and slopes may be off by rounding, against the largest of them. */
    private static final double ROUNDING = 1e-9;

    private final double[] least;
    private final double[] most;
    private final double[][] squares;
    private final double[] pull;

    /**
     * A problem.
     *
     * @param least least share of each
     * @param most most share of each
     * @param centre the shares to stay near where the rows leave a choice
     * @param rows one row of factors for each wanted value
     * @param wanted the values
     */
    BoundedLeastSquares(
            double[] least, double[] most, double[] centre, double[][] rows, double[] wanted) {
        int n = centre.length;
        this.least = least;
        this.most = most;
        squares = new double[n][n];
        pull = new double[n];
        for (int i = 0; i < n; i++) {
            pull[i] = RIDGE * centre[i];
            squares[i][i] = RIDGE;
            for (int k = 0; k < rows.length; k++) {
                pull[i] += rows[k][i] * wanted[k];
                for (int j = 0; j < n; j++) {
                    squares[i][j] += rows[k][i] * rows[k][j];
                }
            }
        }
    }

    /**
     * Finds the best shares.
     *
     * @param near where to start; need not keep to the bounds
     * @throws IllegalStateException if the bounds leave no room for a sum of one
     */
    double[] best(double[] near) {
        double[] shares = feasible(near);
        boolean[] free = new boolean[shares.length];
        boolean any = false;
        for (int i = 0; i < free.length; i++) {
            free[i] = shares[i] > least[i] && shares[i] < most[i];
            any |= free[i];
        }
        for (int i = 0; i < free.length && !any; i++) {
            free[i] = least[i] < most[i];
            any = free[i];
        }
        for (int n = 0; any && !(move(shares, free) && settled(shares, free)); n++) {
            if (n > STEPS_PER_SHARE * shares.length) {
                throw new IllegalStateException("the least squares didn't converge");
            }
        }
        return shares;
    }

    /** Clamps the shares to their bounds and spreads the remainder where there is room. */
    private double[] feasible(double[] near) {
        double[] shares = new double[near.length];
        double lack = 1;
        for (int i = 0; i < near.length; i++) {
            shares[i] = Math.min(most[i], Math.max(least[i], near[i]));
            lack -= shares[i];
        }
        double[] towards = lack > 0 ? most : least;
        double room = 0;
        for (int i = 0; i < near.length; i++) {
            room += towards[i] - shares[i];
        }
        if (Math.abs(lack) > Math.abs(room) + ROUNDING) {
            throw new IllegalStateException("the bounds leave no room for the total");
        }
        double part = room == 0 ? 0 : Math.min(1, lack / room);
        for (int i = 0; i < near.length; i++) {
            shares[i] += part * (towards[i] - shares[i]);
        }
        return shares;
    }

    /** Moves the free shares to their best; false if one met a bound on the way. */
    private boolean move(double[] shares, boolean[] isFree) {
        int[] free = IntStream.range(0, shares.length).filter(i -> isFree[i]).toArray();
        double[] best = solve(shares, free);
        double part = 1;
        int stopped = -1;
        for (int f = 0; f < free.length && free.length > 1; f++) {
            int i = free[f];
            double bound = Math.min(most[i], Math.max(least[i], best[f]));
            double until = bound == best[f] ? 1 : (bound - shares[i]) / (best[f] - shares[i]);
            if (until < part) {
                part = until;
                stopped = i;
            }
        }
        for (int f = 0; f < free.length; f++) {
            int i = free[f];
            double moved = shares[i] + part * (best[f] - shares[i]);
            shares[i] = Math.min(most[i], Math.max(least[i], moved));
        }
        if (stopped >= 0) {
            shares[stopped] = isAtLeast(stopped, shares) ? least[stopped] : most[stopped];
            isFree[stopped] = false;
        }
        return stopped < 0;
    }

    /** The best free shares while the others stay, and the multiplier of the sum. */
    private double[] solve(double[] shares, int[] free) {
        int n = free.length;
        Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(n + 1, n + 1);
        RealVector right = new ArrayRealVector(n + 1);
        double left = 1;
        for (double share : shares) {
            left -= share;
        }
        for (int r = 0; r < n; r++) {
            double pulled = -slope(free[r], shares);
            for (int s = 0; s < n; s++) {
                pulled += squares[free[r]][free[s]] * shares[free[s]];
                matrix.setEntry(r, s, squares[free[r]][free[s]]);
            }
            matrix.setEntry(r, n, 1);
            matrix.setEntry(n, r, 1);
            right.setEntry(r, pulled);
            left += shares[free[r]];
        }
        right.setEntry(n, left);
        return new LUDecomposer(SINGULAR).decompose(matrix).solve(right).toArray();
    }

    /** Half the derivative of the form by a share. */
    private double slope(int i, double[] shares) {
        double sum = -pull[i];
        for (int j = 0; j < shares.length; j++) {
            sum += squares[i][j] * shares[j];
        }
        return sum;
    }

    /** Whether the shares are optimal; if not, frees the one with the steepest slope. */
    private boolean settled(double[] shares, boolean[] isFree) {
        double[] slopes =
                IntStream.range(0, shares.length).mapToDouble(i -> slope(i, shares)).toArray();
        double slopeOfFree = 0;
        double largest = 0;
        for (int i = 0; i < slopes.length; i++) {
            slopeOfFree = isFree[i] ? slopes[i] : slopeOfFree;
            largest = Math.max(largest, Math.abs(pull[i]));
        }
        double strongest = ROUNDING * Math.max(largest, Math.abs(slopeOfFree));
        int freed = -1;
        for (int i = 0; i < slopes.length; i++) {
            double wish = (slopeOfFree - slopes[i]) * (isAtLeast(i, shares) ? 1 : -1);
            if (!isFree[i] && least[i] < most[i] && wish > strongest) {
                strongest = wish;
                freed = i;
            }
        }
        if (freed >= 0) {
            isFree[freed] = true;
        }
        return freed < 0;
    }

    private boolean isAtLeast(int i, double[] shares) {
        return shares[i] - least[i] < most[i] - shares[i];
    }
}
