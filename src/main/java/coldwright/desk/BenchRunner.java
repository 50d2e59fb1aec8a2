package coldwright.desk;

import coldwright.bench.Bench;
import coldwright.bench.BenchClassPath;
import coldwright.bench.BenchSettings;
import coldwright.bench.FinishedRun;
import coldwright.bench.RunListener;
import coldwright.bench.SnippetRights;
import coldwright.bench.compile.SnippetSource;
import coldwright.desk.run.SnippetRunner;
import coldwright.help.HelpIndex;
import coldwright.help.Suggestion;
import coldwright.help.Suggestions;
import coldwright.lesson.Prelude;
import coldwright.workbook.settings.BenchLimit;
import coldwright.workbook.settings.Preferences;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

/** Runs the window's snippets on a bench that opens in the background; runs wait for it. */
public final class BenchRunner implements SnippetRunner, AutoCloseable {

    private final Executor work;
    private final Supplier<Preferences> preferences;
    private CompletableFuture<Bench> bench;
    private boolean closed;

    /** A bench that isn't open yet; the limits are read each time one is opened. */
    public BenchRunner(Executor work, Supplier<Preferences> preferences) {
        this.work = work;
        this.preferences = preferences;
    }

    /** Starts to open the bench; the first run does so too. */
    public synchronized void open() {
        if (bench == null && !closed) {
            Preferences limits = preferences.get();
            bench = CompletableFuture.supplyAsync(() -> newBench(limits), work);
        }
    }

    private static Bench newBench(Preferences limits) {
        return Bench.open(
                new BenchSettings(
                        BenchClassPath.ofThisProgram(),
                        Prelude.imports(),
                        limits.limit(BenchLimit.HEAP_MB),
                        limits.limit(BenchLimit.PRINTED_LIMIT),
                        limits.limit(BenchLimit.FIGURE_LIMIT),
                        limits.limit(BenchLimit.POINT_LIMIT)));
    }

    private synchronized CompletableFuture<Bench> opened() {
        open();
        return bench == null
                ? CompletableFuture.failedFuture(new IllegalStateException("the window is closed"))
                : bench;
    }

    /** The limits have changed: stops what runs, and the next run gets a new bench. */
    public void renew() {
        CompletableFuture<Bench> old = taken();
        if (old != null) {
            old.thenAcceptAsync(Bench::close, work);
            open();
        }
    }

    /** Takes the bench away; null if none was opened. */
    private synchronized CompletableFuture<Bench> taken() {
        CompletableFuture<Bench> old = bench;
        bench = null;
        return old;
    }

    @Override
    public CompletableFuture<FinishedRun> run(
            List<SnippetSource> snippets, SnippetRights rights, RunListener watcher) {
        return opened().thenCompose(bench -> bench.run(snippets, rights, watcher));
    }

    @Override
    public CompletableFuture<List<Suggestion>> suggest(List<String> above, String text, int caret) {
        return opened().thenCompose(bench -> bench.complete(above, text, caret))
                .thenApply(proposals -> Suggestions.of(proposals, HelpIndex.ofThisProgram()));
    }

    @Override
    public void stop() {
        CompletableFuture<Bench> now;
        synchronized (this) {
            now = bench;
        }
        if (now != null) {
            now.thenAccept(Bench::stop);
        }
    }

    /** Ends the bench and its processes. */
    @Override
    public void close() {
        CompletableFuture<Bench> last;
        synchronized (this) {
            closed = true;
            last = taken();
        }
        if (last != null) {
            last.thenAccept(Bench::close).join();
        }
    }
}
