package coldwright.measure;

import coldwright.science.balance.Balance;
import coldwright.science.balance.Trait;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

import java.util.concurrent.TimeUnit;

/**
 * Twelve ingredients to five targets within bounds. Goal: 3 ms.
 *
 * <p>Twice: targets that are shares of the mass, and with sugar per water and ice at −18 °C, which
 * must be found step by step.
 *
 * <p>Yardstick: one least-squares step without bounds, the normal equations put up and solved by
 * hand.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class BalanceBenchmark {
    private static final double RIDGE = 1e-3;

    private Balance byMass;
    private Balance byIce;
    private Balance outOfReach;
    private double[][] rows;
    private double[] wanted;

    /** Lays out ingredients and targets. */
    @Setup
    public void layOut() {
        Balance any = Balance.of(1000);
        Mix mix = Batches.twelveIngredients();
        for (Amount amount : mix.amounts()) {
            any = any.using(amount.ingredient());
        }
        byMass =
                any.aiming(9, Trait.FAT)
                        .aiming(9, Trait.MILK_SOLIDS_NOT_FAT)
                        .aiming(17, Trait.SUGARS)
                        .aiming(38, Trait.TOTAL_SOLIDS)
                        .aiming(0.3, Trait.STABILISER);
        byIce =
                any.aiming(9, Trait.FAT)
                        .aiming(9, Trait.MILK_SOLIDS_NOT_FAT)
                        .aiming(17, Trait.SWEETNESS)
                        .aiming(32, Trait.SUGAR_PER_WATER)
                        .aiming(72, Trait.iceAt(-18));
        outOfReach =
                any.aiming(40, Trait.FAT)
                        .aiming(30, Trait.MILK_SOLIDS_NOT_FAT)
                        .aiming(5, Trait.SUGARS)
                        .aiming(20, Trait.TOTAL_SOLIDS)
                        .aiming(95, Trait.iceAt(-18));
        rows = new double[6][mix.amounts().size()];
        wanted = new double[] {9, 9, 17, 38, 0.3, 1};
        for (int i = 0; i < mix.amounts().size(); i++) {
            Ingredient one = mix.amounts().get(i).ingredient();
            Mix alone = Mix.of(Amount.grams(100, one));
            rows[0][i] = alone.fatPercent();
            rows[1][i] = alone.milkSolidsNotFatPercent();
            rows[2][i] = alone.sugarsPercent();
            rows[3][i] = alone.totalSolidsPercent();
            rows[4][i] = Trait.STABILISER.of(alone);
            rows[5][i] = 1;
        }
    }

    /** Targets that are shares of the mass. */
    @Benchmark
    public double sharesOfTheMass() {
        return byMass.solve().mix().massG();
    }

    /** Targets with ice and sugar per water among them. */
    @Benchmark
    public double iceAndSugarPerWater() {
        return byIce.solve().mix().massG();
    }

    /** Targets that cannot be met together. */
    @Benchmark
    public double targetsOutOfReach() {
        return outOfReach.solve().mix().massG();
    }

    /** One step without bounds, written out. */
    @Benchmark
    public double yardstick() {
        int n = rows[0].length;
        double[][] a = new double[n][n + 1];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double sum = i == j ? RIDGE : 0;
                for (double[] row : rows) {
                    sum += row[i] * row[j];
                }
                a[i][j] = sum;
            }
            double right = RIDGE / n;
            for (int k = 0; k < rows.length; k++) {
                right += rows[k][i] * wanted[k];
            }
            a[i][n] = right;
        }
        for (int p = 0; p < n; p++) {
            for (int i = p + 1; i < n; i++) {
                double factor = a[i][p] / a[p][p];
                for (int j = p; j <= n; j++) {
                    a[i][j] -= factor * a[p][j];
                }
            }
        }
        double sum = 0;
        for (int i = n - 1; i >= 0; i--) {
            for (int j = i + 1; j < n; j++) {
                a[i][n] -= a[i][j] * a[j][n];
            }
            a[i][n] /= a[i][i];
            sum += a[i][n];
        }
        return sum;
    }
}
