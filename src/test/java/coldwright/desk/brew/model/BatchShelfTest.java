package coldwright.desk.brew.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.BatchText;
import coldwright.batch.Reckoning;
import coldwright.batch.ReckoningTree;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

class BatchShelfTest {
    private final ScheduledExecutorService background =
            Executors.newSingleThreadScheduledExecutor();
    private final List<String> told = new ArrayList<>();

    @TempDir Path folder;

    @AfterEach
    void stop() {
        background.shutdownNow();
    }

    private BatchShelf shelf(boolean may) {
        return new BatchShelf(folder, background, Runnable::run, told::add, () -> may);
    }

    private BrewModel opened() throws Exception {
        BrewModel brew = new BrewModel(Runnable::run, Runnable::run);
        brew.keepOn(shelf(true)).get(60, TimeUnit.SECONDS);
        return brew;
    }

    @Test
    void whatWasTypedIsThereTheNextTimeAndTheTerminalReadsItToo() throws Exception {
        BrewModel brew = opened();
        BatchModel first = brew.begin("Coffee with rum");
        first.change("", first.recipe().get().plus(new Line("2 tbsp", "rum 40 %")));
        brew.tasted(first, List.of("too soft"));
        BatchModel second = brew.next(first, first.recipe().get().weighing(500), "a trial");
        brew.shelf().get().orElseThrow().close();

        BrewModel again = opened();

        assertEquals(2, again.batches().size());
        assertEquals(first.story().get(), again.batches().get(0).story().get());
        assertEquals(second.story().get(), again.batches().get(1).story().get());
        assertEquals(
                ReckoningTree.of(Reckoning.of(BatchText.read(folder.resolve("batch-1.batch")))),
                ReckoningTree.of(again.batches().get(0).figures().get().orElseThrow()));
        assertEquals(List.of(), told);
    }

    @Test
    void aDamagedFileIsSetAsideAndTold() throws Exception {
        Files.writeString(folder.resolve("batch-1.batch"), "ingredient;grams\n\0");

        assertTrue(opened().batches().isEmpty());

        assertEquals(1, told.size());
        try (Stream<Path> files = Files.list(folder)) {
            assertTrue(files.allMatch(file -> file.toString().contains(".batch.damaged-")));
        }
    }

    @Test
    void aWindowThatMayNotWriteLeavesAllAsItIs() throws Exception {
        Files.writeString(folder.resolve("batch-1.batch"), "nonsense");
        BrewModel brew = new BrewModel(Runnable::run, Runnable::run);
        BatchShelf shelf = shelf(false);
        brew.keepOn(shelf).get(60, TimeUnit.SECONDS);
        brew.begin("x");
        shelf.close();

        assertEquals("nonsense", Files.readString(folder.resolve("batch-1.batch")));
    }

    @Test
    void aBatchPutAwayDoesNotComeBack() throws Exception {
        BrewModel brew = opened();
        BatchModel first = brew.begin("a");
        brew.begin("b");
        brew.shelf().get().orElseThrow().close();
        brew.close(first);
        background.submit(() -> {}).get(60, TimeUnit.SECONDS);

        assertEquals(1, opened().batches().size());
        assertTrue(Files.exists(folder.resolve("batch-1.batch.away")));
    }

    @Test
    void aFileIsOpenedAndRememberedAndItsCodeIsALesson() throws Exception {
        Path mine = folder.resolve("mine.txt");
        String text =
                "name: Oat `and` malt\nmethod: shaken\nown: house syrup = water 40, sucrose 60\n\n"
                        + "ingredient,grams\nwhole milk,500\nhouse syrup,150\n";
        Files.writeString(mine, text);
        BrewModel brew = opened();
        BatchShelf shelf = brew.shelf().get().orElseThrow();

        shelf.open(mine, brew).get(60, TimeUnit.SECONDS);

        assertEquals(List.of(mine.toAbsolutePath()), shelf.recent());
        assertEquals(text, Files.readString(mine), "the cook's own file stays as it is");
        BatchModel batch = brew.open().get();
        Lesson lesson =
                LessonReader.read(
                        "code.md",
                        BatchLesson.of(batch.recipe().get(), batch.figures().get().orElseThrow()));
        assertEquals(List.of(), lesson.faults());
        assertEquals("Oat and malt, as code", lesson.title());
        assertFalse(lesson.steps().isEmpty());
    }
}
