package coldwright.measure;

import coldwright.science.bath.IceAndSalt;
import coldwright.science.freezer.Freeze;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Holder;
import coldwright.science.freezer.OneSimulation;
import coldwright.science.mix.Mix;
import coldwright.science.thermal.EnthalpyTable;
import coldwright.science.thermal.ThermalCurve;

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
 * A bag in ice and salt for an hour. Goal: 5 ms.
 *
 * <p>A plan is three marches (good, likely and poor contact), each with the bag, the bath and the
 * hardening in the freezer; a march is one of them to soft-serve.
 *
 * <p>Yardstick: the batch as one lump of heat behind one film, in as many steps, with the bath's
 * temperature read off its heat in every step.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FreezePlanBenchmark {
    private static final double BAG_MM = 30;
    private static final int STEPS = 300;
    private static final double HOUR_S = 3600;

    private Mix mix;
    private IceAndSalt bath;
    private ThermalCurve curve;
    private EnthalpyTable table;
    private double[] bathC;

    /** Lays out batch and bath. */
    @Setup
    public void layOut() {
        mix = Batches.plain().scaledTo(800);
        bath = IceAndSalt.of(2000, 500);
        curve = ThermalCurve.of(mix);
        table = curve.table();
        bathC = new double[1000];
        for (int i = 0; i < bathC.length; i++) {
            bathC[i] = bath.temperatureAfterC(i * 1000.0);
        }
    }

    /** The whole plan, from the mix, bath and all. */
    @Benchmark
    public double planFromMix() {
        return FreezePlan.bag(mix, IceAndSalt.of(2000, 500)).minutesToSoftServe();
    }

    /** The whole plan, heat of the batch and bath being at hand. */
    @Benchmark
    public double plan() {
        return way().plan().minutesToSoftServe();
    }

    /** One march to soft-serve. */
    @Benchmark
    public double march() {
        return OneSimulation.minutesToSoftServe(way());
    }

    private Freeze way() {
        return Freeze.of(curve, 800).in(Holder.Bag.flat(BAG_MM)).by(bath);
    }

    /** One lump behind one film. */
    @Benchmark
    public double yardstick() {
        double massG = 800;
        double areaM2 = 2 * massG / 1e6 / (BAG_MM / 1000);
        double enthalpy = table.enthalpyJPerG(5);
        double heatJ = 0;
        double step = HOUR_S / STEPS;
        for (int i = 0; i < STEPS; i++) {
            double place = Math.min(heatJ / 1000, bathC.length - 2);
            int n = (int) place;
            double coldC = bathC[n] + (place - n) * (bathC[n + 1] - bathC[n]);
            double joule = 80 * areaM2 * (table.temperatureC(enthalpy) - coldC) * step;
            enthalpy -= joule / massG;
            heatJ += joule;
        }
        return table.icePercent(enthalpy);
    }
}
