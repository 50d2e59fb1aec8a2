package coldwright.science.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** The quick way to the least squares against ojAlgo's solver, on problems made at random. */
class BoundedLeastSquaresLawsTest {
    /** What ojAlgo may leave above the least, against the size of the problem. */
    private static final double NEAR = 1e-6;

    @Cases(200)
    void theQuickWayIsNeverWorseThanTheSolver(Draw draw) {
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
        List<Choice> choices = new ArrayList<>();
        List<Ingredient> shelf = Shelf.all();
        for (int i = 0; i < n; i++) {
            double leastG = random.nextInt(4) == 0 ? 100 * random.nextDouble() / n : 0;
            double mostG = random.nextInt(4) == 0 ? 200 : Double.POSITIVE_INFINITY;
            choices.add(new Choice(shelf.get(i), leastG, i == 0 ? 1000 : mostG));
        }
        BoundedLeastSquares problem = new BoundedLeastSquares(1000, choices);
        double[] slow = problem.anyBounds(squares, pull);
        double[] least = new double[n];
        double[] most = new double[n];
        for (int i = 0; i < n; i++) {
            least[i] = choices.get(i).leastG() / 1000;
            most[i] = Math.min(1, choices.get(i).mostG() / 1000);
        }
        Optional<double[]> quick =
                new ActiveBounds(least, most, squares, pull).best(problem.even());
        if (quick.isEmpty()) {
            return;
        }
        double[] shares = quick.get();
        double sum = 0;
        for (int i = 0; i < n; i++) {
            assertTrue(shares[i] >= least[i] && shares[i] <= most[i], "within its bounds");
            sum += shares[i];
        }
        assertEquals(1, sum, 1e-9);
        double size = 1 + value(squares, pull, new double[n]) + Math.abs(pull[0]);
        assertTrue(value(squares, pull, shares) <= value(squares, pull, slow) + NEAR * size);
    }

    /** More than half of such problems must take the quick way, or it would be of no use. */
    @Cases(5)
    void theQuickWayIsMostlyFound(Draw draw) {
        long seed = draw.anyLong();
        Random random = new Random(seed);
        int found = 0;
        for (int problem = 0; problem < 200; problem++) {
            int n = 8;
            double[][] squares = new double[n][n];
            double[] pull = new double[n];
            double[] row = new double[n];
            for (int k = 0; k < 4; k++) {
                for (int i = 0; i < n; i++) {
                    row[i] = 100 * random.nextDouble();
                }
                for (int i = 0; i < n; i++) {
                    pull[i] += row[i] * 30;
                    for (int j = 0; j < n; j++) {
                        squares[i][j] += row[i] * row[j] + (k == 0 && i == j ? 1e-3 : 0);
                    }
                }
            }
            double[] least = new double[n];
            double[] most = new double[n];
            double[] even = new double[n];
            java.util.Arrays.fill(most, 1);
            java.util.Arrays.fill(even, 1.0 / n);
            if (new ActiveBounds(least, most, squares, pull).best(even).isPresent()) {
                found++;
            }
        }
        assertTrue(found > 100, found + " of 200");
    }

    private static double value(double[][] squares, double[] pull, double[] shares) {
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            sum -= 2 * pull[i] * shares[i];
            for (int j = 0; j < shares.length; j++) {
                sum += squares[i][j] * shares[i] * shares[j];
            }
        }
        return sum;
    }
}
