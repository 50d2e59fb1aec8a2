package coldwright.bench.remote;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;

/**
 * Ends this process when its program is gone or when a snippet starts too many threads, and flushes
 * printed text while a snippet runs.
 */
final class ProcessWatchdog {
    /** Exit status when the program is gone. */
    static final int PROGRAM_GONE = 96;

    /** Maximum threads of a bench: more can harm the whole machine. */
    static final int MOST_THREADS = 500;

    private static final int TICK_MS = 40;
    private static final int TICKS_TO_PARENT_CHECK = 20;

    private final TextOutput printed;
    private final Path folder;
    private final ProcessHandle program;

    ProcessWatchdog(TextOutput printed, Path folder) {
        this.printed = printed;
        this.folder = folder;
        this.program = ProcessHandle.current().parent().orElse(null);
    }

    /** Starts watching; the stream carries no data and ends with the program. */
    void start(InputStream fromProgram) {
        daemon("bench-end", () -> awaitEnd(fromProgram));
        daemon("bench-tick", this::tick);
    }

    private static void daemon(String name, Runnable task) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        thread.setPriority(Thread.MAX_PRIORITY);
        thread.start();
    }

    private void awaitEnd(InputStream fromProgram) {
        try {
            while (fromProgram.read() >= 0) {
                // no data is ever sent here
            }
        } catch (IOException e) {
            // the same as end of stream
        } finally {
            end(PROGRAM_GONE);
        }
    }

    private void tick() {
        ThreadGroup threads = Thread.currentThread().getThreadGroup();
        while (threads.getParent() != null) {
            threads = threads.getParent();
        }
        for (int ticks = 0; ; ticks = (ticks + 1) % TICKS_TO_PARENT_CHECK) {
            try {
                Thread.sleep(TICK_MS);
                printed.flush();
                if (threads.activeCount() > MOST_THREADS) {
                    end(BenchMain.TOO_MANY_THREADS);
                }
                if (ticks == 0 && program != null && !program.isAlive()) {
                    end(PROGRAM_GONE);
                }
            } catch (IOException e) {
                end(PROGRAM_GONE);
            } catch (InterruptedException | OutOfMemoryError e) {
                // caused by a snippet; keep watching
            }
        }
    }

    private void end(int status) {
        end(status, folder);
    }

    /** Ends this process; if the program is gone, deletes its folder too. */
    static void end(int status, Path folder) {
        try {
            if (status == PROGRAM_GONE) {
                BenchFolder.delete(folder);
            }
        } catch (RuntimeException e) {
            // ending has priority
        } finally {
            Runtime.getRuntime().halt(status);
        }
    }
}
