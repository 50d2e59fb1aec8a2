package coldwright.desk;

import coldwright.bench.Bench;
import coldwright.bench.BenchClassPath;
import coldwright.bench.BenchSettings;
import coldwright.bench.Run;
import coldwright.bench.RunWatcher;
import coldwright.desk.model.Runner;
import coldwright.lesson.Prelude;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;

/** The bench as the desk uses it; it opens in the background, and runs wait for it. */
public final class BenchRunner implements Runner, AutoCloseable {
    private final CompletableFuture<Bench> bench;

    /**
     * Begins to open a bench.
     *
     * @param work a thread to open it on
     */
    public BenchRunner(Executor work) {
        bench = CompletableFuture.supplyAsync(BenchRunner::open, work);
    }

    private static Bench open() {
        return Bench.open(BenchSettings.usual(BenchClassPath.ofThisProgram(), Prelude.imports()));
    }

    @Override
    public CompletableFuture<Run> run(List<String> above, String snippet, RunWatcher watcher) {
        return bench.thenCompose(open -> open.run(above, snippet, watcher));
    }

    @Override
    public void stop() {
        bench.thenAccept(Bench::stop);
    }

    /** Ends the bench and its processes. */
    @Override
    public void close() {
        bench.thenAccept(Bench::close).join();
    }
}
