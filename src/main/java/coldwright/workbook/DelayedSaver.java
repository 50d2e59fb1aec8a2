package coldwright.workbook;

import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;

import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/** Saves work in lessons soon after it changes; the same message is shown only once in a row. */
public final class DelayedSaver implements AutoCloseable {
    private final Workbook workbook;
    private final Consumer<String> messages;
    private final BiConsumer<LessonWork, LessonWork> merged;
    private final DelayedWrites<LessonKey, LessonWork> writes;
    private Optional<String> reported = Optional.empty();

    /**
     * Creates a saver.
     *
     * @param workbook where to save; its owner closes it
     * @param background the executor for writes; one thread is enough, its owner ends it
     * @param messages takes a sentence for the user when something is not saved, on a writing
     *     thread
     * @param merged takes the given work and the saved work if that has more, because another
     *     window wrote too; on a writing thread
     */
    public DelayedSaver(
            Workbook workbook,
            ScheduledExecutorService background,
            Consumer<String> messages,
            BiConsumer<LessonWork, LessonWork> merged) {
        this.workbook = workbook;
        this.messages = messages;
        this.merged = merged;
        this.writes = new DelayedWrites<>(background, this::write);
    }

    /** Takes a change to the work in a lesson and returns at once. Saved within a second. */
    public void changed(LessonWork work) {
        writes.put(work.key(), work.changedAt(Instant.now()));
    }

    private boolean write(LessonWork work) {
        Saved<LessonWork> saved = workbook.keep(work);
        if (!saved.failure().equals(reported)) {
            saved.failure().ifPresent(messages);
        }
        reported = saved.failure();
        if (!saved.value().steps().equals(work.steps())) {
            merged.accept(work, saved.value());
        }
        return saved.failure().isEmpty() || !workbook.keeps();
    }

    /** Writes all pending changes on the calling thread; returns false if some failed. */
    public boolean flush() {
        return writes.flush();
    }

    /** Writes all pending changes and stops writing in the background. */
    @Override
    public void close() {
        writes.close();
    }
}
