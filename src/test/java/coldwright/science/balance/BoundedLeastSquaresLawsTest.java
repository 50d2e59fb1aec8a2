package coldwright.science.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

import java.util.Random;

/**
 * The least squares on problems made at random: no share may gain by giving to another. For a
 * convex form that is both necessary and sufficient (the conditions of Karush, Kuhn and Tucker).
 */
class BoundedLeastSquaresLawsTest {
    private static final double ROUNDING = 1e-8;

    @Cases(200)
    void noShareGainsByGivingToAnother(Draw draw) {
        long seed = draw.anyLong();
        int n = draw.intIn(2, 14);
        int targets = draw.intIn(0, 6);
        Random random = new Random(seed);
        double[][] rows = new double[targets][n];
        double[] wanted = new double[targets];
        for (int k = 0; k < targets; k++) {
            for (int i = 0; i < n; i++) {
                rows[k][i] = 100 * random.nextDouble();
            }
            wanted[k] = 100 * random.nextDouble();
        }
        double[][] squares = new double[n][n];
        double[] pull = new double[n];
        for (int i = 0; i < n; i++) {
            pull[i] = 1e-3 / n;
            for (int j = 0; j < n; j++) {
                squares[i][j] = i == j ? 1e-3 : 0;
                for (double[] row : rows) {
                    squares[i][j] += row[i] * row[j];
                }
            }
            for (int k = 0; k < targets; k++) {
                pull[i] += rows[k][i] * wanted[k];
            }
        }
        double[] least = new double[n];
        double[] most = new double[n];
        double[] even = new double[n];
        for (int i = 0; i < n; i++) {
            even[i] = 1.0 / n;
            least[i] = random.nextInt(4) == 0 ? 0.1 * random.nextDouble() / n : 0;
            most[i] = random.nextInt(4) == 0 && i > 0 ? 0.2 : 1;
        }
        double[] shares = new BoundedLeastSquares(least, most, even, rows, wanted).best(even);
        double sum = 0;
        for (int i = 0; i < n; i++) {
            assertTrue(shares[i] >= least[i] && shares[i] <= most[i], "within its bounds");
            sum += shares[i];
        }
        assertEquals(1, sum, ROUNDING);
        for (int giver = 0; giver < n; giver++) {
            for (int taker = 0; taker < n; taker++) {
                if (shares[giver] > least[giver] && shares[taker] < most[taker]) {
                    double gain = slope(squares, pull, shares, giver);
                    double cost = slope(squares, pull, shares, taker);
                    assertTrue(
                            gain - cost <= ROUNDING * scale(squares, pull),
                            "share %d would gain by giving to share %d".formatted(giver, taker));
                }
            }
        }
    }

    private static double slope(double[][] squares, double[] pull, double[] shares, int i) {
        double sum = -pull[i];
        for (int j = 0; j < shares.length; j++) {
            sum += squares[i][j] * shares[j];
        }
        return sum;
    }

    private static double scale(double[][] squares, double[] pull) {
        double largest = 0;
        for (int i = 0; i < pull.length; i++) {
            largest = Math.max(largest, Math.max(Math.abs(pull[i]), squares[i][i]));
        }
        return largest;
    }
}
