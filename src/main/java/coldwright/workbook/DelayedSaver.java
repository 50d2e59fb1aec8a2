package coldwright.workbook;

import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;

import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/** Saves the work in lessons soon after it changes; the same message is shown once in a row. */
public final class DelayedSaver implements AutoCloseable {
    private final Workbook workbook;
    private final Consumer<String> messages;
    private final BiConsumer<LessonWork, LessonWork> merged;
    private final DelayedWrites<LessonKey, LessonWork> writes;
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
        this.messages = messages;
        this.merged = merged;
        this.writes = new DelayedWrites<>(background, this::write);
    }

    /**
     * Takes a change and returns at once. It is on the disk within a second.
     *
     * @param work the whole work in a lesson; it is marked as changed now
     */
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

    boolean flush() {
        return writes.flush();
    }

    /** Writes what waits and takes no more turns in the background. */
    @Override
    public void close() {
        writes.close();
    }
}
