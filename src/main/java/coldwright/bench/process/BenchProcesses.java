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
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;

/**
 * Starts processes, each ahead of its use: the first at once, another as soon as it is known that
 * the last one is lost. Ensures that none outlives the program.
 */
public final class BenchProcesses implements AutoCloseable {
    private static final int END_SECONDS = 1;

    private final LaunchSettings launch;
    private final int pointLimit;
    private final Set<BenchProcess> started = ConcurrentHashMap.newKeySet();
    private final ExecutorService starter =
            Executors.newSingleThreadExecutor(BenchProcesses::daemon);
    private final Thread lastWill = new Thread(this::endAll, "bench-last-will");
    private CompletableFuture<BenchProcess> next;
    private boolean nextConfined = true;
    private volatile boolean closed;

    /**
     * Starts the first process in the background.
     *
     * @param classPath classes that snippets may use
     * @param heapMb heap limit, MB
     * @param pointLimit maximum points of a figure
     */
    public BenchProcesses(List<Path> classPath, int heapMb, int pointLimit) {
        this.launch = LaunchSettings.bench(classPath, heapMb, pointLimit);
        this.pointLimit = pointLimit;
        Runtime.getRuntime().addShutdownHook(lastWill);
        next = startOne(true);
    }

    /** Starts the process that the next {@link #take} gives, unless it has been started. */
    public synchronized void prepare() {
        if (next == null) {
            next = startOne(nextConfined);
        }
    }

    /**
     * Takes the process that was started ahead, or starts one.
     *
     * @param confined whether what runs in it is confined; then the system confines it too, if it
     *     can
     * @return the process, perhaps still starting; fails with an {@link UncheckedIOException}
     */
    public synchronized CompletableFuture<BenchProcess> take(boolean confined) {
        CompletableFuture<BenchProcess> taken = next;
        next = null;
        boolean lost =
                taken == null
                        || taken.isDone()
                                && (taken.isCompletedExceptionally() || !taken.join().alive());
        if (lost || nextConfined != confined) {
            if (taken != null) {
                taken.thenAccept(this::retire);
            }
            taken = startOne(confined);
        }
        nextConfined = confined;
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

    private CompletableFuture<BenchProcess> startOne(boolean confined) {
        try {
            return CompletableFuture.supplyAsync(
                    () -> {
                        try {
                            return start(confined && SystemWall.isAtHand());
                        } catch (IOException e) {
                            throw new UncheckedIOException(e);
                        }
                    },
                    starter);
        } catch (RejectedExecutionException e) {
            return CompletableFuture.failedFuture(new UncheckedIOException(closed(e)));
        }
    }

    private static IOException closed(Throwable cause) {
        return new IOException("the bench is closed", cause);
    }

    private BenchProcess start(boolean walled) throws IOException {
        if (closed) {
            throw closed(null);
        }
        BenchProcess process = new BenchProcess(launch, pointLimit, walled);
        started.add(process);
        try {
            if (closed) {
                process.kill();
            }
            process.awaitReady();
        } catch (IOException | RuntimeException e) {
            retire(process);
            if (!walled || closed) {
                throw e;
            }
            SystemWall.note(false);
            return start(false);
        }
        if (walled) {
            SystemWall.note(true);
        }
        return process;
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
