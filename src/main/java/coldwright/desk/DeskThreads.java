package coldwright.desk;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * The threads of a window besides its own: for reading files and opening benches, for painting
 * figures, and for saving work.
 */
record DeskThreads(ExecutorService work, ExecutorService painting, ScheduledExecutorService saving)
        implements AutoCloseable {
    static DeskThreads start() {
        return new DeskThreads(
                Executors.newCachedThreadPool(run -> daemon(run, "work")),
                newPainting(),
                Executors.newSingleThreadScheduledExecutor(run -> daemon(run, "saving")));
    }

    /** A figure that changes while the window closes isn't painted any more. */
    private static ExecutorService newPainting() {
        return new ThreadPoolExecutor(
                1,
                1,
                0,
                TimeUnit.SECONDS,
                new LinkedBlockingQueue<>(),
                run -> daemon(run, "painting"),
                new ThreadPoolExecutor.DiscardPolicy());
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
