package coldwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.StepWork;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;

/** Changes reach the disk within a second, however many there are. */
class DelayedSaverTest {
    /** The promise. */
    private static final long SECOND_MS = 1_000;

    /** Keeps what is to be written later, and how much later. */
    private static final class Later extends ScheduledThreadPoolExecutor {
        private final List<Runnable> writes = new ArrayList<>();
        private final List<Long> delaysMs = new ArrayList<>();

        Later() {
            super(0);
        }

        @Override
        public ScheduledFuture<?> schedule(Runnable write, long delay, TimeUnit unit) {
            writes.add(write);
            delaysMs.add(unit.toMillis(delay));
            return null;
        }
    }

    @TempDir Path folder;
    private final ScheduledExecutorService background =
            Executors.newSingleThreadScheduledExecutor();
    private final List<String> messages = new CopyOnWriteArrayList<>();
    private Workbook workbook;

    @BeforeEach
    void open() {
        workbook = Workbook.open(new DataFolder(folder));
    }

    @AfterEach
    void close() {
        background.shutdownNow();
        workbook.close();
    }

    private Optional<StepWork> kept() {
        return workbook.load(Samples.OATS).value().map(work -> work.step("Toast"));
    }

    @Test
    void manyChangesAreWrittenOnceAndInTime() {
        Later later = new Later();
        DelayedSaver delayedSaver =
                new DelayedSaver(workbook, later, messages::add, (given, saved) -> {});
        IntStream.range(0, 200).forEach(i -> delayedSaver.changed(Samples.state(i, 3)));
        assertEquals(Optional.empty(), kept(), "the one who changes does not write");
        assertEquals(1, later.writes.size(), "written once");
        assertTrue(later.delaysMs.get(0) < SECOND_MS / 2, "due after " + later.delaysMs + " ms");
        later.writes.get(0).run();
        assertEquals(Optional.of(Samples.state(199, 3).step("Toast")), kept());
        assertEquals(1, later.writes.size(), "nothing is left to write");
        assertEquals(List.of(), messages);
    }

    @Test
    void closingWritesWhatWaitsAtOnce() {
        try (DelayedSaver saver =
                new DelayedSaver(workbook, background, messages::add, (given, saved) -> {})) {
            saver.changed(Samples.state(5, 1));
        }
        assertEquals(Optional.of(Samples.state(5, 1).step("Toast")), kept());
    }

    @Test
    void aChangeAfterCloseOrAfterTheThreadsEndIsStillKept() {
        DelayedSaver delayedSaver =
                new DelayedSaver(workbook, background, messages::add, (given, saved) -> {});
        background.shutdown();
        delayedSaver.changed(Samples.state(6, 1));
        assertEquals(Optional.of(Samples.state(6, 1).step("Toast")), kept());
        delayedSaver.close();
        delayedSaver.changed(Samples.state(7, 1));
        assertEquals(Optional.of(Samples.state(7, 1).step("Toast")), kept());
    }

    @Test
    void whatFailsIsToldOnceAndTriedAgain() throws IOException {
        Path inTheWay =
                Files.createDirectories(folder.resolve("lessons/01-toasted-oats.txt/something"));
        DelayedSaver delayedSaver =
                new DelayedSaver(workbook, background, messages::add, (given, saved) -> {});
        delayedSaver.changed(Samples.state(8, 1));
        delayedSaver.flush();
        delayedSaver.flush();
        assertEquals(1, messages.size(), messages::toString);
        Files.delete(inTheWay);
        Files.delete(inTheWay.getParent());
        assertTrue(delayedSaver.flush());
        assertEquals(Optional.of(Samples.state(8, 1).step("Toast")), kept());
    }

    @Test
    void aWindowThatDoesNotKeepDropsItsChangesAndSaysSoOnce() {
        try (Workbook second = Workbook.open(new DataFolder(folder))) {
            DelayedSaver delayedSaver =
                    new DelayedSaver(second, background, messages::add, (given, saved) -> {});
            delayedSaver.changed(Samples.state(8, 1));
            delayedSaver.flush();
            delayedSaver.changed(Samples.state(9, 1));
            delayedSaver.flush();
            assertEquals(List.of(second.notice().orElseThrow()), messages);
            workbook.close();
            assertEquals(Optional.empty(), second.tryAgain());
            delayedSaver.flush();
            assertEquals(Optional.empty(), second.load(Samples.OATS).value());
        }
    }

    @Test
    void theTimeOfTheChangeIsKept() {
        LessonWork old = Samples.state(1, 1);
        try (DelayedSaver saver =
                new DelayedSaver(workbook, background, messages::add, (given, saved) -> {})) {
            saver.changed(old);
        }
        assertTrue(
                workbook.load(Samples.OATS).value().orElseThrow().changed().isAfter(old.changed()));
    }
}
