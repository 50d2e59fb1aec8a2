package coldwright.desk.batch.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchAnalysisTree;
import coldwright.batch.RecipeLine;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;
import coldwright.workbook.DataFolder;
import coldwright.workbook.Workbook;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

class BatchStoreTest {
    private final ScheduledExecutorService background =
            Executors.newSingleThreadScheduledExecutor();
    private final List<String> told = new ArrayList<>();

    @TempDir Path data;
    private Path folder;
    private Workbook workbook;

    @BeforeEach
    void open() throws Exception {
        folder = Files.createDirectory(data.resolve("batches"));
        workbook = Workbook.open(new DataFolder(data));
    }

    @AfterEach
    void stop() {
        background.shutdownNow();
        workbook.close();
    }

    private BatchStore shelf(Workbook on) {
        on.whenCopied(copied -> told.add(copied.what() + " -> " + copied.copy().getFileName()));
        return new BatchStore(on, background, Runnable::run, told::add);
    }

    private BatchesModel opened() throws Exception {
        return opened(workbook);
    }

    private BatchesModel opened(Workbook on) throws Exception {
        BatchesModel brew = new BatchesModel(Runnable::run, Runnable::run);
        brew.keepOn(shelf(on)).get(60, TimeUnit.SECONDS);
        return brew;
    }

    @Test
    void whatWasTypedIsThereTheNextTimeAndTheTerminalReadsItToo() throws Exception {
        BatchesModel brew = opened();
        BatchModel first = brew.startBatch("Coffee with rum");
        first.change("", first.recipe().get().plus(new RecipeLine("2 tbsp", "rum 40 %")));
        brew.tasted(first, List.of("too soft"));
        BatchModel second = brew.next(first, first.recipe().get().weighing(500), "a trial");
        brew.store().get().orElseThrow().close();

        BatchesModel again = opened();

        assertEquals(2, again.batches().size());
        assertEquals(first.lineage().get(), again.batches().get(0).lineage().get());
        assertEquals(second.lineage().get(), again.batches().get(1).lineage().get());
        assertEquals(
                BatchAnalysisTree.of(
                        BatchAnalysis.of(BatchStore.read(folder.resolve("batch-1.batch")))),
                BatchAnalysisTree.of(again.batches().get(0).figures().get().orElseThrow()));
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
        try (Workbook second = Workbook.open(new DataFolder(data))) {
            BatchesModel brew = opened(second);
            brew.startBatch("x");
            brew.store().get().orElseThrow().close();
        }

        assertEquals("nonsense", Files.readString(folder.resolve("batch-1.batch")));
    }

    @Test
    void aBatchPutAwayDoesNotComeBack() throws Exception {
        BatchesModel brew = opened();
        BatchModel first = brew.startBatch("a");
        brew.startBatch("b");
        brew.store().get().orElseThrow().close();
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
        BatchesModel brew = opened();
        BatchFiles shelf = brew.store().get().orElseThrow().files();

        shelf.open(mine, brew).get(60, TimeUnit.SECONDS);

        assertEquals(List.of(mine.toAbsolutePath()), shelf.recent());
        assertEquals(text, Files.readString(mine), "the cook's own file stays as it is");
        BatchModel batch = brew.open().get();
        Lesson lesson =
                LessonReader.read(
                        "code.md",
                        LessonFromBatch.of(
                                batch.recipe().get(), batch.figures().get().orElseThrow()));
        assertEquals(List.of(), lesson.faults());
        assertEquals("Oat and malt, as code", lesson.title());
        assertFalse(lesson.steps().isEmpty());
    }

    private static List<String> names(BatchesModel brew) {
        return brew.batches().stream().map(one -> one.recipe().get().name()).toList();
    }

    private static void rename(BatchModel batch, String name) {
        batch.change("", batch.recipe().get().called(name));
    }

    private String everything() throws Exception {
        background.submit(() -> {}).get(10, TimeUnit.SECONDS); // a write on its way has ended then
        try (Stream<Path> files = Files.walk(data)) {
            StringBuilder all = new StringBuilder();
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                all.append(data.relativize(file)).append('\n').append(Files.readString(file));
            }
            return all.toString();
        }
    }

    /**
     * The second window opens while the first keeps the folder, then takes it over. Its own changes
     * come due before or after it has read the folder again.
     */
    @ParameterizedTest
    @ValueSource(longs = {0, 2000})
    void whatBothWindowsChangedIsKeptTwiceAndWhatOneChangedIsShown(long waitMs) throws Exception {
        BatchesModel first = opened();
        first.startBatch("Coffee with rum");
        first.startBatch("Salted caramel");
        first.store().get().orElseThrow().close();
        try (Workbook other = Workbook.open(new DataFolder(data))) {
            BatchesModel second = opened(other);
            rename(first.batches().get(0), "Coffee, first window");
            rename(first.batches().get(1), "Caramel, first window");
            first.startBatch("Toasted oat, first window");
            rename(second.batches().get(0), "Coffee, second window");
            second.startBatch("Malt, second window");
            first.store().get().orElseThrow().close();
            workbook.close();

            assertTrue(other.tryAgain().isEmpty());
            background.schedule(() -> {}, waitMs, TimeUnit.MILLISECONDS).get(10, TimeUnit.SECONDS);
            BatchStore shelf = second.store().get().orElseThrow();
            shelf.readAgain(second).get(10, TimeUnit.SECONDS);
            shelf.close();

            assertEquals(
                    List.of(
                            "Coffee, second window",
                            "Caramel, first window",
                            "Malt, second window",
                            "Toasted oat, first window"),
                    names(second));
            assertEquals(
                    List.of(1, 2, 4, 3),
                    second.batches().stream().map(one -> one.lineage().get().number()).toList());
            assertEquals(1, told.size(), told::toString);
            assertTrue(
                    told.get(0).matches("Coffee, second window -> batch-1-\\d{8}-\\d{6}\\.batch"),
                    told::toString);
        }
        String all = everything();
        for (String name :
                List.of(
                        "name: Coffee, first window",
                        "name: Coffee, second window",
                        "name: Caramel, first window",
                        "name: Malt, second window",
                        "name: Toasted oat, first window")) {
            assertTrue(all.contains(name), () -> name + " is lost in\n" + all);
        }
    }

    @Test
    void aBatchPutAwayLaterTakesNoEarlierOnesPlace() throws Exception {
        for (String name : List.of("Oat, evening one", "Oat, evening two")) {
            BatchesModel brew = opened();
            BatchModel one = brew.startBatch(name);
            brew.startBatch("stays");
            brew.store().get().orElseThrow().close();
            brew.close(one);
            background.submit(() -> {}).get(10, TimeUnit.SECONDS);
            Files.delete(folder.resolve("batch-2.batch"));
        }
        String all = everything();
        assertTrue(all.contains("Oat, evening one") && all.contains("Oat, evening two"), all);
    }
}
