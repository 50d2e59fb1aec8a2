package coldwright.workbook;

import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * Saves changes soon, on a thread of its own. Changes that follow each other quickly are written
 * once.
 *
 * <p>What could not be written is tried again; the same message is told once in a row.
 */
public final class DelayedSaver implements AutoCloseable {
    /** From a change to its write; with the write itself well within a second. */
    private static final long WAIT_MS = 400;

    /** From a write that failed to the next. */
    private static final long RETRY_MS = 5_000;

    private final Workbook workbook;
    private final ScheduledExecutorService background;
    private final Consumer<String> messages;
    private final BiConsumer<LessonWork, LessonWork> merged;
    private final Object writing = new Object();
    private final Map<LessonKey, LessonWork> pending = new LinkedHashMap<>();
    private boolean scheduled;
    private boolean closed;
    private Optional<String> reported = Optional.empty();

    /**
     * Sets a saver up.
     *
     * @param workbook where to save; closing it is its owner's business
     * @param background where to write; one thread is enough, its end is its owner's business
     * @param messages takes a sentence for the user when something is not kept, on a thread that
     *     writes
     * @param merged takes what was given and what was saved where that is more, because another
     *     window had written too; on a thread that writes
     */
    public DelayedSaver(
            Workbook workbook,
            ScheduledExecutorService background,
            Consumer<String> messages,
            BiConsumer<LessonWork, LessonWork> merged) {
        this.workbook = workbook;
        this.background = background;
        this.messages = messages;
        this.merged = merged;
    }

    /**
     * Takes a change and returns at once. It is on the disk within a second.
     *
     * @param work the whole work in a lesson; it is marked as changed now
     */
    public void changed(LessonWork work) {
        boolean late;
        synchronized (pending) {
            pending.put(work.key(), work.changedAt(Instant.now()));
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
     * @return whether all of it is kept, or none ever will be
     */
    public boolean flush() {
        synchronized (writing) {
            List<LessonWork> now;
            synchronized (pending) {
                now = List.copyOf(pending.values());
                pending.clear();
            }
            boolean kept = true;
            for (LessonWork work : now) {
                Saved<LessonWork> saved = workbook.keep(work);
                if (saved.failure().isPresent() && workbook.keeps()) {
                    kept = false;
                    synchronized (pending) {
                        pending.putIfAbsent(work.key(), work);
                    }
                }
                report(saved.failure());
                if (!saved.value().steps().equals(work.steps())) {
                    merged.accept(work, saved.value());
                }
            }
            return kept;
        }
    }

    private void report(Optional<String> failure) {
        if (!failure.equals(reported)) {
            failure.ifPresent(messages);
        }
        reported = failure;
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
