package coldwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

class TemporaryFoldersTest {
    /** More than any process ID of Linux (4,194,304), macOS and Windows in use. */
    private static final long NO_PROCESS = 4_000_000_000L;

    @TempDir private Path temporary;

    private Path folder(String name) throws IOException {
        Path folder = Files.createDirectory(temporary.resolve(name));
        Files.writeString(Files.createDirectory(folder.resolve("work")).resolve("a.txt"), "text");
        return folder;
    }

    @Test
    void foldersOfThisProcessHaveItsId() throws IOException {
        Path made = TemporaryFolders.create("bench");
        try {
            String id = "-p" + ProcessHandle.current().pid() + "-";
            assertTrue(made.getFileName().toString().contains(id), made.toString());
            assertTrue(TemporaryFolders.isFor("bench", made));
            assertFalse(TemporaryFolders.isFor("fonts", made));
        } finally {
            TemporaryFolders.delete(made);
        }
        assertFalse(Files.exists(made));
    }

    @Test
    void onlyWhatDeadProcessesLeftIsSwept() throws IOException {
        long alive = ProcessHandle.current().pid();
        folder("coldwright-bench-p" + NO_PROCESS + "-1");
        folder("coldwright-fonts-p" + NO_PROCESS + "-2");
        Path old = folder("coldwright-05-sugar-p" + NO_PROCESS + "-3");
        FileTime twoDaysAgo = FileTime.from(Instant.now().minus(Duration.ofDays(2)));
        Files.setLastModifiedTime(old, twoDaysAgo);
        List<Path> kept =
                List.of(
                        folder("coldwright-05-sugar-p" + NO_PROCESS + "-4"),
                        folder("coldwright-bench-5"),
                        folder("coldwright-bench-p" + alive + "-6"),
                        folder("other-bench-p" + NO_PROCESS + "-7"));
        TemporaryFolders.sweep(temporary);
        try (Stream<Path> left = Files.list(temporary)) {
            assertEquals(kept, left.sorted().toList());
        }
    }

    @Test
    void aLinkIsNotFollowed() throws IOException {
        Path own = folder("kept");
        Path left = folder("coldwright-bench-p" + NO_PROCESS + "-1");
        Files.createSymbolicLink(left.resolve("link"), own);
        TemporaryFolders.sweep(temporary);
        assertTrue(Files.exists(own.resolve("work/a.txt")));
        assertFalse(Files.exists(left));
    }
}
