package coldwright.workbook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/**
 * Writes values soon after they change, on a thread of its own. Changes that follow each other
 * quickly are written once; what could not be written is tried again.
 *
 * @param <K> what a value is filed under
 * @param <V> a value
 */
public final class DelayedWrites<K, V> implements AutoCloseable {
    /** From a change to its write; with the write itself well within a second. */
    private static final long WAIT_MS = 400;

    /** From a write that failed to the next. */
    private static final long RETRY_MS = 5_000;

    private final ScheduledExecutorService background;
    private final Predicate<V> write;
    private final Object writing = new Object();
    private final Map<K, V> pending = new LinkedHashMap<>();
    private boolean scheduled;
    private boolean closed;

    /**
     * Nothing waits yet.
     *
     * @param background where to write; one thread is enough, its end is its owner's business
     * @param write writes a value; false if it is to be tried again
     */
    public DelayedWrites(ScheduledExecutorService background, Predicate<V> write) {
        this.background = background;
        this.write = write;
    }

    /**
     * Takes a change and returns at once.
     *
     * @param key what it is filed under
     * @param value the whole value
     */
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

    /**
     * Writes what waits, on the calling thread.
     *
     * @return false if some of it is to be tried again
     */
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

    /** Writes what waits and takes no more turns in the background. */
    @Override
    public void close() {
        synchronized (pending) {
            closed = true;
        }
        flush();
    }
}
