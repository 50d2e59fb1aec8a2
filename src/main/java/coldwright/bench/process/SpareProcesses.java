package coldwright.bench.process;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/** Keeps one spare process running, and ensures that none outlives the program. */
public final class SpareProcesses implements AutoCloseable {
    private static final int END_SECONDS = 1;

    private final LaunchSettings launch;
    private final int pointLimit;
    private final Set<BenchProcess> started = ConcurrentHashMap.newKeySet();
    private final ExecutorService starter =
            Executors.newSingleThreadExecutor(SpareProcesses::daemon);
    private final Thread lastWill = new Thread(this::endAll, "bench-last-will");
    private CompletableFuture<BenchProcess> next;
    private volatile boolean closed;

    /**
     * Starts the first process in the background.
     *
     * @param classPath classes that snippets may use
     * @param heapMb heap limit, MB
     * @param pointLimit maximum points of a figure
     */
    public SpareProcesses(List<Path> classPath, int heapMb, int pointLimit) {
        this.launch = LaunchSettings.bench(classPath, heapMb, pointLimit);
        this.pointLimit = pointLimit;
        Runtime.getRuntime().addShutdownHook(lastWill);
        next = startOne();
    }

    /**
     * Takes the spare and starts another.
     *
     * @return the process, perhaps still starting; fails with an {@link UncheckedIOException}
     */
    public synchronized CompletableFuture<BenchProcess> take() {
        CompletableFuture<BenchProcess> taken = next;
        if (taken.isDone() && (taken.isCompletedExceptionally() || !taken.join().alive())) {
            taken.thenAccept(this::retire);
            taken = startOne();
        }
        next = startOne();
        return taken;
    }

    /** Kills a process and deletes its folder, in the background. */
    public void retire(BenchProcess process) {
        process.kill();
        Thread tidy =
                new Thread(
                        () -> {
                            process.close();
                            started.remove(process);
                        },
                        "bench-tidy");
        tidy.setDaemon(true);
        tidy.start();
    }

    private CompletableFuture<BenchProcess> startOne() {
        return CompletableFuture.supplyAsync(
                () -> {
                    try {
                        if (closed) {
                            throw new IOException("the bench is closed");
                        }
                        return start();
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                },
                starter);
    }

    private BenchProcess start() throws IOException {
        BenchProcess process = new BenchProcess(launch, pointLimit);
        started.add(process);
        try {
            if (closed) {
                process.kill();
            }
            process.awaitReady();
            return process;
        } catch (IOException | RuntimeException e) {
            retire(process);
            throw e;
        }
    }

    private void endAll() {
        closed = true;
        starter.shutdown();
        started.forEach(BenchProcess::kill);
        try {
            if (!starter.awaitTermination(END_SECONDS, TimeUnit.SECONDS)) {
                starter.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        started.forEach(BenchProcess::close);
    }

    private static Thread daemon(Runnable task) {
        Thread thread = new Thread(task, "bench-start");
        thread.setDaemon(true);
        return thread;
    }

    /** Kills all processes. Returns at once; the program waits for this when it exits. */
    @Override
    public void close() {
        closed = true;
        new Thread(this::endAll, "bench-close").start();
        try {
            Runtime.getRuntime().removeShutdownHook(lastWill);
        } catch (IllegalStateException e) {
            // the program is exiting: the hook runs anyway
        }
    }
}
