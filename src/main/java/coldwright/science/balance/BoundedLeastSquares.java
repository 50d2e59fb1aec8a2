package coldwright.science.balance;

import java.util.Arrays;
import java.util.List;

/**
 * Finds shares of a total, each within bounds, whose weighted rows come nearest to wanted values.
 *
 * <p>A small ridge pulls towards the shares given, which makes the answer unique ({@link
 * ActiveBounds}); because each call starts from the last answer, the pull fades (the proximal point
 * method: Rockafellar 1976, SIAM J. Control Optim. 14:877, from memory).
 */
final class BoundedLeastSquares {
    private static final double RIDGE = 1e-3;

    private final double[] least;
    private final double[] most;

    BoundedLeastSquares(double totalG, List<Choice> choices) {
        least = choices.stream().mapToDouble(c -> c.leastG() / totalG).toArray();
        most = choices.stream().mapToDouble(c -> Math.min(1, c.mostG() / totalG)).toArray();
    }

    /** The total spread evenly, ignoring bounds. */
    double[] even() {
        double[] shares = new double[least.length];
        Arrays.fill(shares, 1.0 / shares.length);
        return shares;
    }

    /**
     * The best shares near to given ones.
     *
     * @param centre the shares to stay near where the rows leave a choice
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
        return new ActiveBounds(least, most, squares, pull).best(centre);
    }
}
