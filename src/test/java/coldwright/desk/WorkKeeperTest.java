package coldwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.lesson.model.PredictionModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.model.ByHandRunner;
import coldwright.desk.model.DeskModel;
import coldwright.desk.page.TestDesk;
import coldwright.workbook.DataFolder;
import coldwright.workbook.Workbook;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What a learner did goes over to the lesson that a changed file gives, and onto the disk. */
class WorkKeeperTest {
    private static final String TITLE = "# Mine\n";
    private static final String ONE = "\n## One\n\n```java\nint a = 1;\n```\n";
    private static final String TWO =
            """

            ## Two

            ```forecast
            How many?
            - one
            - * two

            Two.
            ```

            ```java
            int b = 2;
            ```
            """;
    private static final String NEW = "\n## New\n\n```java\nint n = 0;\n```\n";

    @TempDir Path folder;

    private final List<String> told = new ArrayList<>();

    /** A window from its opening to its end, with the file of one lesson. */
    private final class Sitting implements AutoCloseable {
        private final ByHandClock clock = new ByHandClock();
        private final WorkKeeper workKeeper;
        private final DeskModel desk;
        private final Path file = folder.resolve("mine.md");

        Sitting(Path data) {
            workKeeper =
                    new WorkKeeper(
                            Workbook.open(new DataFolder(data)), clock, Runnable::run, told::add);
            desk = TestDesk.model(new ByHandRunner(), workKeeper);
        }

        Sitting() {
            this(folder.resolve("data"));
        }

        Sitting opens(String text) throws IOException {
            Files.writeString(file, text);
            desk.openFile(file);
            return this;
        }

        void saves(String text) throws IOException {
            Files.writeString(file, text);
            desk.refresh(file);
        }

        StepModel step(int place) {
            return desk.open().get().steps().get(place);
        }

        String text(int place) {
            return step(place).snippets().get(0).text().get();
        }

        void edits(int place, String text) {
            step(place).snippets().get(0).text().set(text);
        }

        PredictionModel forecast(int place) {
            return step(place).parts().stream()
                    .filter(PredictionModel.class::isInstance)
                    .map(PredictionModel.class::cast)
                    .findFirst()
                    .orElseThrow();
        }

        @Override
        public void close() {
            workKeeper.close();
        }
    }

    /** As the window is made after its keeper: a full disk must not keep it from standing up. */
    @Test
    void whatIsWrongWithTheWorkbookIsToldWhenTheWindowIsReadyForIt() throws IOException {
        Path taken = Files.writeString(folder.resolve("taken"), "no folder");
        List<Runnable> later = new ArrayList<>();
        WorkKeeper workKeeper =
                new WorkKeeper(
                        Workbook.open(new DataFolder(taken)),
                        new ByHandClock(),
                        later::add,
                        told::add);
        assertEquals(List.of(), told);
        later.forEach(Runnable::run);
        assertEquals(1, told.size(), told::toString);
        workKeeper.close();
    }

    @Test
    void aStepAboveTakesNothingFromThoseBelow() throws IOException {
        try (Sitting now = new Sitting().opens(TITLE + ONE + TWO)) {
            now.edits(1, "int b = 9;");
            now.forecast(1).chosen().set(1);
            now.saves(TITLE + NEW + ONE + TWO);
            assertEquals("int n = 0;", now.text(0));
            assertEquals("int a = 1;", now.text(1));
            assertEquals("int b = 9;", now.text(2));
            assertEquals(1, now.forecast(2).chosen().get());
        }
    }

    @Test
    void aRenamedStepKeepsItsAnswerAndItsEdit() throws IOException {
        try (Sitting now = new Sitting().opens(TITLE + ONE + TWO)) {
            now.edits(1, "int b = 9;");
            now.forecast(1).chosen().set(1);
            now.saves(TITLE + ONE + TWO.replace("## Two", "## How many there are"));
            assertEquals("int b = 9;", now.text(1));
            assertEquals(1, now.forecast(1).chosen().get());
        }
    }

    @Test
    void whatWasDoneOnAStepThatIsGoneComesToNoOther() throws IOException {
        try (Sitting now = new Sitting().opens(TITLE + ONE + TWO)) {
            now.edits(0, "int a = 7;");
            now.forecast(1).chosen().set(0);
            now.saves(TITLE + TWO);
            assertEquals("int b = 2;", now.text(0));
            assertEquals(0, now.forecast(0).chosen().get());
        }
    }

    @Test
    void anEditFromBeforeASaveIsWrittenDownWithTheNewLesson() throws IOException {
        try (Sitting first = new Sitting().opens(TITLE + ONE + TWO)) {
            first.edits(1, "int b = 9;");
            first.saves(TITLE + NEW + ONE + TWO);
            first.edits(1, "int a = 5;");
            first.clock.pass();
        }
        try (Sitting next = new Sitting().opens(TITLE + NEW + ONE + TWO)) {
            assertEquals("int n = 0;", next.text(0));
            assertEquals("int a = 5;", next.text(1));
            assertEquals("int b = 9;", next.text(2));
        }
        assertEquals(List.of(), told);
    }

    @Test
    void aChangeSoonBeforeTheEndIsWrittenDown() throws IOException {
        try (Sitting first = new Sitting().opens(TITLE + ONE)) {
            first.edits(0, "int a = 5;");
        }
        try (Sitting next = new Sitting().opens(TITLE + ONE)) {
            assertEquals("int a = 5;", next.text(0));
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldAndTheWorkGoesOn() throws IOException {
        Path taken = Files.writeString(folder.resolve("a-file"), "no folder");
        try (Sitting now = new Sitting(taken.resolve("data")).opens(TITLE + ONE + TWO)) {
            assertEquals(1, told.size(), told.toString());
            assertTrue(told.get(0).contains("a-file"), told.toString());
            now.edits(1, "int b = 9;");
            now.saves(TITLE + NEW + ONE + TWO);
            assertEquals("int b = 9;", now.text(2));
            now.edits(2, "int b = 8;");
            now.saves(TITLE + ONE + TWO);
            assertEquals("int b = 8;", now.text(1));
        }
        assertEquals("no folder", Files.readString(taken));
    }
}
