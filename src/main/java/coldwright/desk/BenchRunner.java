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
    private final CompletableFuture<Void> wanted = new CompletableFuture<>();
    private final CompletableFuture<Bench> bench;

    /**
     * A bench that is not open yet.
     *
     * @param work a thread to open it on
     */
    public BenchRunner(Executor work) {
        bench = wanted.thenApplyAsync(nothing -> newBench(), work);
    }

    /** Begins to open the bench; the first run does so too. */
    public void open() {
        wanted.complete(null);
    }

    private static Bench newBench() {
        return Bench.open(BenchSettings.usual(BenchClassPath.ofThisProgram(), Prelude.imports()));
    }

    @Override
    public CompletableFuture<Run> run(List<String> above, String snippet, RunWatcher watcher) {
        open();
        return bench.thenCompose(opened -> opened.run(above, snippet, watcher));
    }

    @Override
    public void stop() {
        if (wanted.isDone()) {
            bench.thenAccept(Bench::stop);
        }
    }

    /** Ends the bench and its processes. */
    @Override
    public void close() {
        if (wanted.isDone()) {
            bench.thenAccept(Bench::close).join();
        }
    }
}
