package coldwright.science.balance;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposer;
import org.hipparchus.linear.RealVector;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The best shares on the supposition of which of them stand at a bound.
 *
 * <p>Then nothing but linear equations is left (Hipparchus), and the conditions of Karush, Kuhn and
 * Tucker tell whether the supposition holds: every other share lies within its bounds, and no share
 * at a bound wants to leave it. If it does not hold it is corrected where it failed and tried
 * again, a few times (the primal-dual active set of M. Hintermüller, K. Ito and K. Kunisch 2002,
 * from memory); after that there is no answer from here.
 */
final class ActiveBounds {
    /** A share nearer to a bound than this stands at it. */
    private static final double CLOSE = 1e-9;

    private static final int TRIES = 6;
    private static final double SINGULAR = 1e-12;

    /** How far a share at a bound may seem to want away from it, against the largest pull. */
    private static final double ROUNDING = 1e-9;

    private final double[] least;
    private final double[] most;
    private final double[][] squares;
    private final double[] pull;

    /**
     * A question.
     *
     * @param least least share of each
     * @param most most share of each
     * @param squares half of the quadratic form that is to be least, symmetric
     * @param pull what the form is pulled towards
     */
    ActiveBounds(double[] least, double[] most, double[][] squares, double[] pull) {
        this.least = least;
        this.most = most;
        this.squares = squares;
        this.pull = pull;
    }

    /**
     * Finds them.
     *
     * @param before shares of which some stand at bounds, the first supposition
     * @return shares that add up to one and are the best of all, or nothing
     */
    Optional<double[]> best(double[] before) {
        double[] settled = new double[before.length];
        for (int i = 0; i < settled.length; i++) {
            settled[i] = nearBound(before[i], i);
        }
        for (int n = 0; n < TRIES; n++) {
            double[] found = solve(settled);
            if (found.length == 0) {
                return Optional.empty();
            }
            double[] corrected = corrected(settled, found);
            if (Arrays.equals(settled, corrected)) {
                return Optional.of(Arrays.copyOf(found, settled.length));
            }
            settled = corrected;
        }
        return Optional.empty();
    }

    /** The bound that a share stands at; not a number for a free one. */
    private double nearBound(double share, int i) {
        if (share - least[i] < CLOSE) {
            return least[i];
        }
        return most[i] - share < CLOSE ? most[i] : Double.NaN;
    }

    /** All shares and the multiplier of their sum; empty if there are none. */
    private double[] solve(double[] settled) {
        int[] free =
                IntStream.range(0, settled.length).filter(i -> Double.isNaN(settled[i])).toArray();
        int n = free.length;
        if (n == 0) {
            return new double[0];
        }
        double left = 1 - Arrays.stream(settled).filter(share -> !Double.isNaN(share)).sum();
        Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(n + 1, n + 1);
        RealVector right = new ArrayRealVector(n + 1);
        for (int r = 0; r < n; r++) {
            double[] row = squares[free[r]];
            double pulled = pull[free[r]];
            for (int i = 0; i < settled.length; i++) {
                pulled -= Double.isNaN(settled[i]) ? 0 : row[i] * settled[i];
            }
            for (int s = 0; s < n; s++) {
                matrix.setEntry(r, s, row[free[s]]);
            }
            matrix.setEntry(r, n, 1);
            matrix.setEntry(n, r, 1);
            right.setEntry(r, pulled);
        }
        right.setEntry(n, left);
        DecompositionSolver solver = new LUDecomposer(SINGULAR).decompose(matrix);
        if (!solver.isNonSingular()) {
            return new double[0];
        }
        RealVector solved = solver.solve(right);
        double[] found = Arrays.copyOf(settled, settled.length + 1);
        for (int r = 0; r < n; r++) {
            found[free[r]] = solved.getEntry(r);
        }
        found[settled.length] = solved.getEntry(n);
        return found;
    }

    /** What should have been supposed; the same if all was right. */
    private double[] corrected(double[] settled, double[] found) {
        double multiplier = found[settled.length];
        double largest = Math.abs(multiplier);
        for (double one : pull) {
            largest = Math.max(largest, Math.abs(one));
        }
        double slack = ROUNDING * largest;
        double[] corrected = settled.clone();
        for (int i = 0; i < settled.length; i++) {
            if (Double.isNaN(settled[i])) {
                if (!(found[i] >= least[i])) {
                    corrected[i] = least[i];
                } else if (found[i] > most[i]) {
                    corrected[i] = most[i];
                }
            } else if (least[i] < most[i]) {
                double slope = multiplier - pull[i];
                for (int j = 0; j < settled.length; j++) {
                    slope += squares[i][j] * found[j];
                }
                if (settled[i] == least[i] ? slope < -slack : slope > slack) {
                    corrected[i] = Double.NaN;
                }
            }
        }
        return corrected;
    }
}
