package coldwright.terminal;

import coldwright.bench.Bench;
import coldwright.terminal.console.BenchSource;

import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;

/**
 * Benches that go from test to test: no run leaves a trace in them, and starting one takes longer
 * than most tests.
 */
public final class SharedBenches implements BenchSource {
    public static final BenchSource SHARED = new SharedBenches();

    private final Queue<Bench> idle = new ConcurrentLinkedQueue<>();

    private SharedBenches() {}

    @Override
    public Bench open() {
        Bench one = idle.poll();
        return one == null ? BenchSource.NEW.open() : one;
    }

    @Override
    public void close(Bench bench) {
        idle.add(bench);
    }
}
