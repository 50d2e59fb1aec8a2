package coldwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A disk that takes no more is one sentence, and what was kept before still stands. */
class FullDiskTest {
    /** Largest file the system lets the child write, blocks of 512 or 1024 bytes. */
    private static final int BLOCKS = 100;

    /** Work of some 700 bytes a snippet: far more than that. */
    private static final int TOO_MANY_SNIPPETS = 2_000;

    @TempDir Path folder;

    /** Saves little, then more than its system lets it. */
    static final class Program {
        private Program() {}

        public static void main(String[] args) {
            try (Workbook workbook = Workbook.open(new DataFolder(Path.of(args[0])))) {
                System.out.println(workbook.save(Samples.state(1, 1)).orElse("saved"));
                System.out.println(
                        workbook.save(Samples.state(2, TOO_MANY_SNIPPETS)).orElse("saved"));
            }
        }
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "it has no limit on the size of files")
    void aWriteThatBreaksOffLeavesTheFormerFile() throws IOException {
        List<String> words = new ArrayList<>(List.of("sh", "-c"));
        words.add("ulimit -f " + BLOCKS + "; exec \"$@\"");
        words.add("sh");
        words.addAll(Children.command(Program.class, folder));
        Process child = new ProcessBuilder(words).start();
        String said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(
                """
                saved
                can't save the work in "Toasted oats" because the disk is full; free some space. What was saved before is still there
                """,
                said);
        try (Workbook workbook = Workbook.open(new DataFolder(folder));
                Stream<Path> files = Files.list(folder.resolve("lessons"))) {
            assertEquals(Optional.of(Samples.state(1, 1)), workbook.load(Samples.OATS).value());
            assertEquals(1, files.count(), "nothing half-written is left");
        }
    }

    @Test
    void aFolderThatCantBeMadeIsSaidAndTheProgramGoesOn() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "in the way");
        try (Workbook workbook = Workbook.open(new DataFolder(file.resolve("data")))) {
            String notice = workbook.notice().orElseThrow();
            assertEquals(
                    "your work is not saved because the folder "
                            + file.resolve("data")
                            + " can't be made or written to. Allow that, or name another with -Dcoldwright.data=FOLDER",
                    notice);
            assertEquals(Optional.of(notice), workbook.save(Samples.state(1, 1)));
            assertEquals(Optional.empty(), workbook.load(Samples.OATS).value());
            assertEquals(List.of(), workbook.preferences().messages());
        }
    }

    @Test
    void aPlaceThatIsTakenIsSaid() throws IOException {
        Files.createDirectories(folder.resolve("lessons/01-toasted-oats.txt/something"));
        try (Workbook workbook = Workbook.open(new DataFolder(folder))) {
            String failure = workbook.save(Samples.state(1, 1)).orElseThrow();
            assertTrue(failure.startsWith("can't save the work in \"Toasted oats\": "), failure);
            assertTrue(failure.endsWith(". What was saved before is still there"), failure);
        }
    }
}
