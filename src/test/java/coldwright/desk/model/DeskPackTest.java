package coldwright.desk.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.SnippetRights;
import coldwright.desk.page.TestDesk;
import coldwright.lesson.LessonReader;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Packs of lessons on the desk. */
class DeskPackTest {
    private static final String LESSON =
            """
            # %s

            ## One

            ```java
            int a = 1;
            ```
            """;

    @TempDir private Path folder;

    private final Deque<Runnable> work = new ArrayDeque<>();
    private final DeskModel desk =
            new DeskModel(
                    LessonReader::read,
                    new ByHandRunner(),
                    work::add,
                    Runnable::run,
                    TestDesk.UNKEPT);

    private Path zip(String name, String... entries) throws IOException {
        Path file = folder.resolve(name);
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (String entry : entries) {
                zip.putNextEntry(new ZipEntry(entry));
                zip.write(LESSON.formatted(entry).getBytes(StandardCharsets.UTF_8));
            }
        }
        return file;
    }

    private void open(Path file) {
        desk.openFile(file);
        assertEquals("Opening " + file.getFileName() + " …", desk.busy().get());
        work.poll().run();
    }

    private List<String> titles() {
        return desk.lessons().stream().map(one -> one.lesson().title()).toList();
    }

    @Test
    void allLessonsOfAZipLieOnTheDeskItsFirstIsOpenAndEachAsksBeforeItRuns() throws IOException {
        open(zip("pack.ZIP", "b.md", "deep/a.md", "readme.txt"));
        assertEquals(List.of("b.md", "deep/a.md"), titles());
        assertEquals("b.md", desk.open().get().lesson().title());
        assertEquals(ShownPage.LESSON, desk.place().get());
        assertEquals("", desk.notice().get());
        desk.lessons().forEach(one -> assertSame(SnippetRights.CONFINED, one.gate().rights()));
        desk.openLessons().agree(desk.open().get());
        assertSame(SnippetRights.EVERYTHING, desk.lessons().get(0).gate().rights());
        assertSame(SnippetRights.CONFINED, desk.lessons().get(1).gate().rights());
        assertFalse(desk.open().get().isFollowed(), "a zip is never unpacked, so never followed");
    }

    @Test
    void openedAgainItStandsThereOnce() throws IOException {
        Path pack = zip("pack.zip", "a.md", "b.md");
        open(pack);
        open(pack);
        assertEquals(List.of("a.md", "b.md"), titles());
    }

    @Test
    void aFolderIsAPackAndWhatHoldsNoLessonIsNamed() throws IOException {
        Files.writeString(folder.resolve("01.md"), "Only a note.");
        Files.writeString(folder.resolve("02.md"), LESSON.formatted("Two"));
        open(folder);
        assertEquals(List.of("Two"), titles());
        assertTrue(desk.open().get().isFollowed());
        assertTrue(desk.notice().get().contains("01.md"), desk.notice().get());
    }

    @Test
    void aPathThatLeadsOutIsRefusedAndNothingOfThePackIsThere() throws IOException {
        Path evil = zip("evil.zip", "good.md", "../evil.md");
        open(evil);
        assertEquals(
                evil
                        + " has \"../evil.md\", a path that leads out of the pack;"
                        + " nothing of evil.zip was read",
                desk.notice().get());
        assertTrue(desk.lessons().isEmpty());
        assertNull(desk.open().get());
    }

    @Test
    void whatIsNoZipIsTold() throws IOException {
        open(Files.writeString(folder.resolve("none.zip"), "none"));
        assertTrue(desk.notice().get().contains("has no lessons"), desk.notice().get());
        open(folder.resolve("away.zip"));
        assertTrue(desk.notice().get().contains("can't be read"), desk.notice().get());
    }

    @Test
    void aFileIsAnnouncedBeforeItIsItsTurn() {
        desk.announce(folder.resolve("ripple.md"));
        assertEquals("Opening ripple.md …", desk.busy().get());
    }
}
