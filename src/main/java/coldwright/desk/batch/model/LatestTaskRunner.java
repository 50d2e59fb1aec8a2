package coldwright.desk.batch.model;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;

/** Runs one task at a time; a newer task replaces the one that waits. */
final class LatestTaskRunner {
    private final Executor work;
    private final AtomicReference<Runnable> next = new AtomicReference<>();
    private final AtomicBoolean busy = new AtomicBoolean();

    LatestTaskRunner(Executor work) {
        this.work = work;
    }

    /** Queues a task in place of one that hasn't started. */
    void take(Runnable piece) {
        next.set(piece);
        if (busy.compareAndSet(false, true)) {
            work.execute(this::run);
        }
    }

    private void run() {
        do {
            for (Runnable piece = next.getAndSet(null);
                    piece != null;
                    piece = next.getAndSet(null)) {
                try {
                    piece.run();
                } catch (RuntimeException | Error e) {
                    busy.set(false);
                    throw e;
                }
            }
            busy.set(false);
        } while (next.get() != null && busy.compareAndSet(false, true));
    }
}
