package coldwright.terminal.console;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.bench.Bench;
import coldwright.bench.FinishedRun;
import coldwright.bench.RunListener;
import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetRights;
import coldwright.bench.compile.SnippetSource;
import coldwright.play.BlockingRunner;

import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** A bench that waits for each run and stops it after a time limit. */
public final class BlockingBench implements BlockingRunner, AutoCloseable {
    /** A snippet takes well under a second; one that needs this long never ends. */
    public static final Duration PATIENCE = Duration.ofSeconds(60);

    /** A bench's process starts in about a second; on a busy machine in ten. */
    private static final Duration START = Duration.ofMinutes(2);

    /** A stop takes half a second; on a busy machine a few seconds. */
    private static final Duration STOP = Duration.ofSeconds(15);

    /** How often a run's time is looked at, ms. */
    private static final int TICK_MS = 50;

    private static final String NOTHING = "0";

    private final Supplier<Duration> patience;
    private final BooleanSupplier mayGoBeyond;
    private final BenchSource benches;
    private SnippetRights rights = SnippetRights.CONFINED;
    private Bench bench;
    private boolean ready;
    private boolean asked;
    private boolean busy;
    private Duration left = ChronoUnit.FOREVER.getDuration();

    /**
     * A bench whose runs are confined and may take some processor time. It asks once, when a
     * snippet first wants more than it may do confined.
     */
    public BlockingBench(BenchSource benches, Duration patience, BooleanSupplier mayGoBeyond) {
        this(benches, () -> patience, mayGoBeyond);
    }

    /** With a time limit that may differ from run to run. */
    public BlockingBench(
            BenchSource benches, Supplier<Duration> patience, BooleanSupplier mayGoBeyond) {
        this.benches = benches;
        this.patience = patience;
        this.mayGoBeyond = mayGoBeyond;
        bench = benches.open();
    }

    /** Limits the total time of all runs from now on; the machine doesn't count as busy yet. */
    public void allow(Duration all) {
        left = all;
        busy = false;
    }

    /**
     * Whether a run was stopped although it had processor time left, because the machine had too
     * much else to do.
     */
    public boolean wasBusy() {
        return busy;
    }

    /**
     * Runs a snippet after those above it. The time limit excludes the start of the process; a
     * snippet that exceeds the limit is stopped and counts as died.
     */
    @Override
    public FinishedRun run(List<String> above, String snippet) {
        if (!ready) {
            Duration kept = left;
            FinishedRun start = run(above, NOTHING, START);
            left = kept;
            if (!start.outcome().finished()) {
                return start;
            }
            ready = true;
        }
        Duration usual = patience.get();
        Duration limit = left.compareTo(usual) < 0 ? left : usual;
        if (limit.isNegative() || limit.isZero()) {
            return FinishedRun.silent(new RunOutcome.Died(text("run.used-up")));
        }
        FinishedRun run = run(above, snippet, limit);
        if (run.outcome().beyond() && !asked) {
            asked = true;
            if (mayGoBeyond.getAsBoolean()) {
                rights = SnippetRights.EVERYTHING;
                run = run(above, snippet, limit);
            }
        }
        return run;
    }

    private FinishedRun run(List<String> above, String snippet, Duration limit) {
        RunTime time = new RunTime(bench, rights == SnippetRights.CONFINED);
        CompletableFuture<FinishedRun> running =
                bench.run(
                        SnippetSource.of(above, snippet),
                        rights,
                        new RunListener() {
                            @Override
                            public void compiled() {
                                time.compiled();
                            }
                        });
        while (true) {
            try {
                FinishedRun run = running.get(TICK_MS, TimeUnit.MILLISECONDS);
                ready = !(run.outcome() instanceof RunOutcome.Died);
                left = left.minus(time.used());
                return run;
            } catch (TimeoutException e) {
                if (time.isOver(limit)) {
                    return tooLong(running, time, limit);
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("a run was interrupted", e);
            } catch (ExecutionException e) {
                throw new IllegalStateException("a run failed", e);
            }
        }
    }

    private FinishedRun tooLong(
            CompletableFuture<FinishedRun> running, RunTime time, Duration limit) {
        ready = false;
        left = left.minus(limit);
        boolean stalled = time.used().compareTo(limit) < 0;
        busy |= stalled;
        String why =
                stalled
                        ? "run.busy"
                        : time.isCompiled() ? "run.endless" : "run.too-much-to-compile";
        return stopped(running).with(new RunOutcome.Died(text(why, limit.toSeconds())));
    }

    /** The next run starts in a fresh process, so that nothing of the runs before outlives them. */
    public void startAfresh() {
        bench.startAfresh();
        rights = SnippetRights.CONFINED;
        asked = false;
    }

    /** Stops a run; a bench that does not respond is abandoned and replaced. */
    private FinishedRun stopped(CompletableFuture<FinishedRun> running) {
        bench.stop();
        try {
            return running.get(STOP.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException | ExecutionException | CancellationException e) {
            bench.close();
            bench = benches.open();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return FinishedRun.silent(new RunOutcome.Stopped());
    }

    @Override
    public void close() {
        benches.close(bench);
    }
}
