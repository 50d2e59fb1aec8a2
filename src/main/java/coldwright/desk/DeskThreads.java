package coldwright.desk;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;

/**
 * The threads of a window besides its own.
 *
 * @param work for reading files and opening benches
 * @param painting for painting figures
 * @param saving for saving work
 */
record DeskThreads(ExecutorService work, ExecutorService painting, ScheduledExecutorService saving)
        implements AutoCloseable {
    static DeskThreads start() {
        return new DeskThreads(
                Executors.newCachedThreadPool(run -> daemon(run, "work")),
                Executors.newSingleThreadExecutor(run -> daemon(run, "painting")),
                Executors.newSingleThreadScheduledExecutor(run -> daemon(run, "saving")));
    }

    private static Thread daemon(Runnable run, String name) {
        Thread thread = new Thread(run, "desk-" + name);
        thread.setDaemon(true);
        return thread;
    }

    @Override
    public void close() {
        saving.shutdownNow();
        work.shutdownNow();
        painting.shutdownNow();
    }
}
