package coldwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.model.ByHandRunner;
import coldwright.desk.model.DeskModel;
import coldwright.desk.page.TestDesk;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;

/** A lesson's file is looked at by hand here, as often as a test says. */
class LessonFileWatcherTest {
    private static final String LESSON = "# %s\n\n## One\n\n```java\nint a = 1;\n```\n";

    @TempDir Path folder;

    private final ByHandClock clock = new ByHandClock();
    private final DeskModel desk = TestDesk.model(new ByHandRunner(), TestDesk.UNKEPT);
    private Path file;
    private long second;

    @BeforeEach
    void aLessonLiesOnTheDesk() throws IOException {
        file = folder.resolve("mine.md");
        write(LESSON.formatted("As it was"));
        new LessonFileWatcher(desk, clock, Runnable::run);
        desk.openFile(file);
        look(3);
    }

    /** Each writing bears a time of its own, however quick the test. */
    private void write(String text) throws IOException {
        Files.writeString(file, text);
        Files.setLastModifiedTime(file, FileTime.fromMillis(1_000_000_000_000L + 1000 * second++));
    }

    private void look(int times) {
        for (int i = 0; i < times; i++) {
            clock.tick();
        }
    }

    private String title() {
        return desk.open().get().lesson().title();
    }

    @Test
    void aFileThatStaysAsItWasIsReadOnce() {
        LessonModel before = desk.open().get();
        look(5);
        assertSame(before, desk.open().get());
    }

    @Test
    void aChangeCountsOnceTwoLooksFindItTheSame() throws IOException {
        write(LESSON.formatted("Half wr"));
        look(1);
        assertEquals("As it was", title());
        write(LESSON.formatted("Half written"));
        look(1);
        assertEquals("As it was", title());
        look(1);
        assertEquals("Half written", title());
        LessonModel read = desk.open().get();
        look(3);
        assertSame(read, desk.open().get());
    }

    @Test
    void aFileThatIsGoneLeavesTheLessonAndIsReadWhenItComesBack() throws IOException {
        Files.delete(file);
        look(5);
        assertEquals("As it was", title());
        assertEquals("", desk.notice().get());
        write(LESSON.formatted("Back"));
        look(2);
        assertEquals("Back", title());
    }

    @Test
    void aHalfWrittenFileTakesNothingAwayAndIsReadWhenItIsWhole() throws IOException {
        desk.open().get().steps().get(0).snippets().get(0).text().set("int a = 9;");
        write("");
        look(3);
        assertEquals("As it was", title());
        write(LESSON.formatted("Reset zoom"));
        look(2);
        assertEquals("Reset zoom", title());
        assertEquals("int a = 9;", desk.open().get().steps().get(0).snippets().get(0).text().get());
    }
}
