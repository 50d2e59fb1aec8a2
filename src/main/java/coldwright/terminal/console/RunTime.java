package coldwright.terminal.console;

import coldwright.bench.Bench;

import java.time.Duration;

/**
 * The time that a run has used. Processor time counts, because it is the same on a busy machine:
 * that of the compiling process, then that of the bench's process.
 */
final class RunTime {
    /** A confined snippet can't sleep, so only a very busy machine needs as much as this. */
    private static final int WALL_LIMITS = 10;

    private final Bench bench;
    private final boolean confined;
    private final long startNanos = System.nanoTime();
    private final Duration compilerAtStart;
    private volatile boolean compiled;

    /** Starts to measure; if not confined, wall time counts, because the snippet may sleep. */
    RunTime(Bench bench, boolean confined) {
        this.bench = bench;
        this.confined = confined;
        this.compilerAtStart = bench.compilerTime();
    }

    /** The snippet is compiled and now runs. */
    void compiled() {
        compiled = true;
    }

    boolean isCompiled() {
        return compiled;
    }

    /** The time used so far; never more than has passed. */
    Duration used() {
        Duration wall = wall();
        Duration compiling = bench.compilerTime().minus(compilerAtStart);
        Duration running = compiled ? bench.processorTime() : Duration.ZERO;
        Duration processor = compiling.isNegative() ? running : running.plus(compiling);
        return confined && processor.compareTo(wall) < 0 ? processor : wall;
    }

    private Duration wall() {
        return Duration.ofNanos(System.nanoTime() - startNanos);
    }

    /** Whether a run has used up its limit. */
    boolean isOver(Duration limit) {
        return wall().compareTo(limit) >= 0
                && (used().compareTo(limit) >= 0
                        || wall().compareTo(limit.multipliedBy(WALL_LIMITS)) >= 0);
    }
}
