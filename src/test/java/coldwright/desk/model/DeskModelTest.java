package coldwright.desk.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.SnippetRights;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.page.TestDesk;
import coldwright.lesson.LessonReader;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

class DeskModelTest {
    private static final String LESSON =
            """
            # %s

            ## One

            ```java
            int a = 1;
            ```
            """;

    private static final String SECOND =
            """

            ## Second

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

    @TempDir private Path folder;

    private final DeskModel desk = TestDesk.model(new ByHandRunner(), TestDesk.UNKEPT);

    @Test
    void theShelfIsFilledAndNothingOpenedUnasked() {
        desk.fetch(
                () ->
                        List.of(
                                LessonReader.read("a.md", LESSON.formatted("A")),
                                LessonReader.read("b.md", LESSON.formatted("B"))));
        assertEquals(2, desk.lessons().size());
        assertNull(desk.open().get());
    }

    @Test
    void keepsEditsWhenOneGoesToAnotherLessonAndBack() throws IOException {
        desk.fetch(() -> List.of(LessonReader.read("a.md", LESSON.formatted("A"))));
        LessonModel first = desk.lessons().get(0);
        desk.open(first);
        textOf(first).set("int a = 7;");
        desk.openFile(write("b.md", LESSON.formatted("B")));
        assertEquals("B", desk.open().get().lesson().title());
        desk.open(first);
        assertEquals("int a = 7;", textOf(desk.open().get()).get());
    }

    @Test
    void whatTheProgramWroteItselfNeedsNoLeave() throws Exception {
        desk.openFile(write("stranger.md", LESSON.formatted("Stranger")));
        assertSame(SnippetRights.CONFINED, desk.open().get().gate().rights());
        desk.openOwn(write("own.md", LESSON.formatted("Own")));
        assertSame(SnippetRights.EVERYTHING, desk.open().get().gate().rights());
    }

    @Test
    void aLessonReadAgainKeepsTheEditsOfWhatIsTheSame() throws IOException {
        Path file = write("b.md", LESSON.formatted("B"));
        desk.openFile(file);
        textOf(desk.open().get()).set("int a = 7;");
        write("b.md", LESSON.formatted("B, mended"));
        desk.openFile(file);
        assertEquals(1, desk.lessons().size());
        assertEquals("B, mended", desk.open().get().lesson().title());
        assertEquals("int a = 7;", textOf(desk.open().get()).get());
    }

    @Test
    void aFileChangedWhileItIsWrittenKeepsItsStepItsLeaveAndItsFaultsInTheirStep()
            throws IOException {
        String two = LESSON + "\n## Two\n\nMore.\n";
        Path file = write("b.md", two.formatted("B"));
        desk.openFile(file);
        assertSame(SnippetRights.CONFINED, desk.open().get().gate().rights());
        desk.openLessons().agreeWhileWritten(desk.open().get());
        desk.open().get().arrive(desk.open().get().steps().get(1));
        write("b.md", two.formatted("B, mended") + "\n```forecast\n```\n");
        desk.refresh(file);
        LessonModel now = desk.open().get();
        assertEquals("B, mended", now.lesson().title());
        assertSame(SnippetRights.EVERYTHING, now.gate().rights());
        assertEquals("Two", now.inSight().get().title());
        assertEquals(1, now.faultsOf(now.steps().get(1)).size());
        assertTrue(now.faultsOf(now.steps().get(0)).isEmpty());
        assertEquals(file, now.ownFile().orElseThrow());
    }

    @Test
    void aStepThatComesAboveTakesNothingAway() throws IOException {
        Path file = write("b.md", LESSON.formatted("B") + SECOND);
        desk.openFile(file);
        desk.openLessons().agreeWhileWritten(desk.open().get());
        StepModel second = desk.open().get().steps().get(1);
        second.snippets().get(0).text().set("int b = 9;");
        second.predictions().get(0).chosen().set(1);
        desk.open().get().arrive(second);
        write("b.md", LESSON.formatted("B") + "\n## New\n\n```java\nint n = 0;\n```\n" + SECOND);
        desk.refresh(file);
        StepModel now = desk.open().get().steps().get(2);
        assertSame(now, desk.open().get().inSight().get());
        assertEquals("int b = 9;", now.snippets().get(0).text().get());
        assertEquals(1, now.predictions().get(0).chosen().get());
        assertEquals("int n = 0;", desk.open().get().snippets().get(1).text().get());
    }

    @Test
    void aFileThatIsEmptyForAMomentLeavesTheLessonThere() throws IOException {
        Path file = write("b.md", LESSON.formatted("B"));
        desk.openFile(file);
        write("b.md", "");
        desk.refresh(file);
        assertEquals("B", desk.open().get().lesson().title());
        assertFalse(desk.notice().get().isEmpty());
        write("b.md", LESSON.formatted("B again"));
        desk.refresh(file);
        assertEquals("B again", desk.open().get().lesson().title());
        assertEquals("", desk.notice().get());
    }

    @Test
    void aBadFileIsToldAndTheOpenLessonStays() throws IOException {
        desk.fetch(() -> List.of(LessonReader.read("a.md", LESSON.formatted("A"))));
        LessonModel open = desk.open().get();
        Path empty = write("empty.md", "");
        desk.openFile(empty);
        assertEquals(
                empty
                        + ":1: the file is empty; begin it with a title such as `# Sugar and ice`"
                        + " and a step such as `## Why the tub is a brick`",
                desk.notice().get());
        assertSame(open, desk.open().get());
        desk.openFile(folder.resolve("none.md"));
        assertEquals(
                folder.resolve("none.md") + ": there is no such file",
                desk.notice().get().split(";")[0]);
        desk.dismissNotice();
        assertEquals("", desk.notice().get());
    }

    @Test
    void troubleWithTheShelfIsTold() {
        desk.fetch(
                () -> {
                    throw new IllegalStateException("disk gone");
                });
        assertEquals("Can’t read the lessons: disk gone", desk.notice().get());
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static javafx.beans.property.StringProperty textOf(LessonModel lesson) {
        return lesson.steps().get(0).snippets().get(0).text();
    }
}
