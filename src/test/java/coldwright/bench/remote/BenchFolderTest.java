package coldwright.bench.remote;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What a bench deletes of its own when it ends, and what it does not. */
class BenchFolderTest {
    @Test
    void aFolderOfItsOwnGoesWithAllInIt() throws IOException {
        Path folder = BenchFolder.create();
        Files.createDirectory(folder.resolve("inner"));
        Files.writeString(folder.resolve("inner/note.txt"), "malt");
        BenchFolder.delete(folder);
        assertFalse(Files.exists(folder));
    }

    @Test
    void aFolderOfSomeoneElseStays(@TempDir Path school) throws IOException {
        Path work = Files.writeString(school.resolve("work.txt"), "mine");
        BenchFolder.delete(school);
        BenchFolder.delete(Path.of("/"));
        BenchFolder.delete(school.resolve("none"));
        assertTrue(Files.exists(work));
    }

    @Test
    void whatALinkInItNamesStays(@TempDir Path school) throws IOException {
        Path work = Files.writeString(school.resolve("work.txt"), "mine");
        Path folder = BenchFolder.create();
        try {
            Files.createSymbolicLink(folder.resolve("link"), school);
        } catch (UnsupportedOperationException | IOException e) {
            org.junit.jupiter.api.Assumptions.abort("this system makes no links here");
        }
        BenchFolder.delete(folder);
        assertFalse(Files.exists(folder));
        assertTrue(Files.exists(work));
    }
}
