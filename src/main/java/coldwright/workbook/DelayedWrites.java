package coldwright.workbook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/**
 * Writes values soon after they change, on a thread of its own. Changes that follow each other
 * quickly are written once; failed writes are tried again.
 */
public final class DelayedWrites<K, V> implements AutoCloseable {
    /** Delay from a change to its write; with the write itself well within a second. */
    private static final long WAIT_MS = 400;

    /** Delay after a failed write. */
    private static final long RETRY_MS = 5_000;

    private final ScheduledExecutorService background;
    private final Predicate<V> write;
    private final Object writing = new Object();
    private final Map<K, V> pending = new LinkedHashMap<>();
    private boolean scheduled;
    private boolean closed;

    /**
     * Creates an empty queue.
     *
     * @param background the executor for writes; one thread is enough, its owner ends it
     * @param write writes a value; returns false to try again
     */
    public DelayedWrites(ScheduledExecutorService background, Predicate<V> write) {
        this.background = background;
        this.write = write;
    }

    /** Takes a change and returns at once. */
    public void put(K key, V value) {
        boolean late;
        synchronized (pending) {
            pending.put(key, value);
            late = closed;
        }
        if (late) {
            flush();
        } else {
            schedule(WAIT_MS);
        }
    }

    private void schedule(long afterMs) {
        synchronized (pending) {
            if (scheduled || closed) {
                return;
            }
            scheduled = true;
        }
        try {
            background.schedule(this::writeInTurn, afterMs, TimeUnit.MILLISECONDS);
        } catch (RejectedExecutionException e) {
            flush();
        }
    }

    private void writeInTurn() {
        synchronized (pending) {
            scheduled = false;
        }
        if (!flush()) {
            schedule(RETRY_MS);
        }
    }

    /** Writes all pending values on the calling thread; false if some must be tried again. */
    public boolean flush() {
        synchronized (writing) {
            Map<K, V> now;
            synchronized (pending) {
                now = new LinkedHashMap<>(pending);
                pending.clear();
            }
            now.values().removeIf(write);
            synchronized (pending) {
                now.forEach(pending::putIfAbsent);
            }
            return now.isEmpty();
        }
    }

    /** Writes all pending values and stops writing in the background. */
    @Override
    public void close() {
        synchronized (pending) {
            closed = true;
        }
        flush();
    }
}
