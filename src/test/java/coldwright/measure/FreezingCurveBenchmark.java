package coldwright.measure;

import coldwright.science.freezing.FreezingCurve;
import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;
import coldwright.science.mix.Amount;
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

import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * The freezing curve of a mix of twelve ingredients, built and read at 200 points. Goal: 50 µs.
 *
 * <p>Yardstick: only the sums that nobody can avoid, over each solute at each of the 200 points,
 * from arrays laid out beforehand: liquid water = Σ n / m°(t).
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FreezingCurveBenchmark {
    private static final int POINTS = 200;
    private static final double COLDEST_C = -30;

    private Mix mix;
    private Solution solution;
    private List<Amount> amounts;

    /** For each solute, water that one gram of it keeps liquid at each point, g. */
    private double[][] waterPerGram;

    private double[] massG;
    private double waterG;

    /** Lays out the mix and the yardstick's arrays. */
    @Setup
    public void layOut() {
        mix = Batches.twelveIngredients();
        amounts = mix.amounts();
        solution = mix.solution();
        waterG = solution.waterG();
        Map<Solute, Double> parts = solution.massG();
        massG = new double[parts.size()];
        waterPerGram = new double[parts.size()][POINTS];
        int k = 0;
        for (Map.Entry<Solute, Double> part : parts.entrySet()) {
            massG[k] = part.getValue();
            FreezingCurve alone = Solution.inWater(1e6).with(1, part.getKey()).freezingCurve();
            for (int i = 0; i < POINTS; i++) {
                waterPerGram[k][i] = 1e6 - alone.iceG(temperatureC(i));
            }
            k++;
        }
    }

    private static double temperatureC(int point) {
        return COLDEST_C * (point + 1) / POINTS;
    }

    /** From the mix to the last point. */
    @Benchmark
    public double fromMix() {
        return read(mix.freezingCurve());
    }

    /** From the list of amounts to the last point. */
    @Benchmark
    public double fromAmounts() {
        return read(Mix.of(amounts).freezingCurve());
    }

    /** From the solution to the last point. */
    @Benchmark
    public double fromSolution() {
        return read(solution.freezingCurve());
    }

    private static double read(FreezingCurve curve) {
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            sum += curve.icePercentAt(temperatureC(i));
        }
        return sum;
    }

    /** The bare sums. */
    @Benchmark
    public double yardstick() {
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            double liquidG = 0;
            for (int k = 0; k < massG.length; k++) {
                liquidG += massG[k] * waterPerGram[k][i];
            }
            sum += 100 * (1 - Math.min(waterG, liquidG) / waterG);
        }
        return sum;
    }
}
