package coldwright.measure;

import coldwright.science.diagnosis.Diagnosis;
import coldwright.science.diagnosis.Situation;
import coldwright.science.diagnosis.Symptom;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

import java.util.concurrent.TimeUnit;

/**
 * One symptom of a batch of twelve ingredients to its ranked causes and mends. Goal: 20 ms.
 *
 * <p>Yardstick: a hundred mixes made and their ice read once each, which is what trying mends
 * mostly is.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 4, time = 1)
@Fork(1)
public class DiagnosisBenchmark {
    /** The symptom. */
    @Param({"ICY", "HARD", "TOO_SOFT", "WILL_NOT_FREEZE", "WEAK", "TOO_SWEET", "SANDY"})
    public Symptom symptom;

    private Situation situation;
    private Mix mix;

    /** A batch that shows the symptom. */
    @Setup
    public void layOut() {
        mix = Batches.twelveIngredients();
        switch (symptom) {
            case ICY, HARD, WEAK -> mix = mix.with(Amount.grams(500, Shelf.WATER));
            case TOO_SOFT, WILL_NOT_FREEZE -> mix = mix.with(Amount.grams(200, Shelf.RUM_40));
            case TOO_SWEET -> mix = mix.with(Amount.grams(150, Shelf.SUCROSE));
            case SANDY -> mix = mix.with(Amount.grams(150, Shelf.SKIM_MILK_POWDER));
            default -> throw new IllegalArgumentException(symptom.words());
        }
        situation = Situation.of(mix);
        if (Diagnosis.of(situation, symptom).isEmpty()) {
            throw new IllegalStateException("the batch does not show " + symptom.words());
        }
    }

    /** From the symptom to causes and mends. */
    @Benchmark
    public int diagnosis() {
        return Diagnosis.of(situation, symptom).size();
    }

    /** A hundred mixes and their ice. */
    @Benchmark
    public double yardstick() {
        double sum = 0;
        for (int i = 0; i < 100; i++) {
            sum += mix.with(Amount.grams(i, Shelf.WATER)).freezingCurve().icePercentAt(-12);
        }
        return sum;
    }
}
