package coldwright.bench.remote;

import java.io.IOException;

/**
 * Ends this process when a snippet starts too many threads, and flushes printed text while a
 * snippet runs.
 */
final class ProcessWatchdog {
    /** Maximum threads of a bench: more can harm the whole machine. */
    private static final int MOST_THREADS = 500;

    private static final int TICK_MS = 40;

    private ProcessWatchdog() {}

    /** Starts watching. */
    static void start(TextOutput printed) {
        ProgramLink.daemon("bench-tick", () -> tick(printed));
    }

    private static void tick(TextOutput printed) {
        ThreadGroup threads = Thread.currentThread().getThreadGroup();
        while (threads.getParent() != null) {
            threads = threads.getParent();
        }
        while (true) {
            try {
                Thread.sleep(TICK_MS);
                printed.flush();
                if (threads.activeCount() > MOST_THREADS) {
                    Runtime.getRuntime().halt(BenchMain.TOO_MANY_THREADS);
                }
            } catch (IOException | InterruptedException | OutOfMemoryError e) {
                // caused by a snippet; keep watching
            }
        }
    }
}
