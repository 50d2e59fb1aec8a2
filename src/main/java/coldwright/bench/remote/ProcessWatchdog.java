package coldwright.bench.remote;

import java.io.DataInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Queue;

/**
 * Receives orders, and ends this process when its program is gone or when a snippet starts too many
 * threads. Flushes printed text while a snippet runs.
 */
final class ProcessWatchdog {
    /** Exit status when the program is gone. */
    private static final int PROGRAM_GONE = 96;

    /** Maximum threads of a bench: more can harm the whole machine. */
    private static final int MOST_THREADS = 500;

    private static final int TICK_MS = 40;

    private final TextOutput printed;
    private final Path folder;

    ProcessWatchdog(TextOutput printed, Path folder) {
        this.printed = printed;
        this.folder = folder;
    }

    /** Starts watching; the stream ends with the program, however it ends. */
    void start(DataInputStream fromProgram, Queue<OrderBatch> batches) {
        daemon("bench-orders", () -> receive(fromProgram, batches));
        daemon("bench-tick", this::tick);
    }

    private static void daemon(String name, Runnable task) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        thread.setPriority(Thread.MAX_PRIORITY);
        thread.start();
    }

    private void receive(DataInputStream fromProgram, Queue<OrderBatch> batches) {
        try {
            while (true) {
                batches.add(OrderBatch.WIRE.read(fromProgram));
            }
        } catch (IOException e) {
            // the stream has ended
        } finally {
            end(PROGRAM_GONE);
        }
    }

    private void tick() {
        ThreadGroup threads = Thread.currentThread().getThreadGroup();
        while (threads.getParent() != null) {
            threads = threads.getParent();
        }
        while (true) {
            try {
                Thread.sleep(TICK_MS);
                printed.flush();
                if (threads.activeCount() > MOST_THREADS) {
                    end(BenchMain.TOO_MANY_THREADS);
                }
            } catch (IOException e) {
                end(PROGRAM_GONE);
            } catch (InterruptedException | OutOfMemoryError e) {
                // caused by a snippet; keep watching
            }
        }
    }

    /** Ends this process; if the program is gone, deletes its folder too. */
    private void end(int status) {
        try {
            if (status == PROGRAM_GONE) {
                BenchFolder.delete(folder);
            }
        } finally {
            Runtime.getRuntime().halt(status);
        }
    }
}
