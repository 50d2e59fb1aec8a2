package coldwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.WorkText;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is damaged is told, kept beside its place, and takes nothing else with it. */
class DamagedFilesTest {
    @TempDir Path folder;

    private Path file() throws IOException {
        Path lessons = Files.createDirectories(folder.resolve("lessons"));
        return lessons.resolve("01-toasted-oats.txt");
    }

    private LoadedWork<Optional<LessonWork>> load() {
        try (Workbook workbook = Workbook.open(new DataFolder(folder))) {
            return workbook.load(Samples.OATS);
        }
    }

    private List<Path> aside() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("lessons"))) {
            return files.filter(one -> one.toString().contains(".txt.damaged-")).sorted().toList();
        }
    }

    @Test
    void aFileOfSomethingElseIsSetAside() throws IOException {
        byte[] bytes = {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2};
        Files.write(file(), bytes);
        LoadedWork<Optional<LessonWork>> loaded = load();
        assertEquals(Optional.empty(), loaded.value());
        Path aside = aside().get(0);
        assertTrue(
                aside.getFileName()
                        .toString()
                        .matches("01-toasted-oats\\.txt\\.damaged-\\d{8}-\\d{6}"),
                aside::toString);
        assertEquals(
                "01-toasted-oats.txt was damaged. The damaged file is now "
                        + aside.toAbsolutePath(),
                loaded.messages().get(loaded.messages().size() - 1));
        assertEquals(bytes.length, Files.size(aside));
        assertEquals(List.of(), load().messages(), "it is told once");
    }

    @Test
    void whatIsSetAsideIsNeverWrittenOver() throws IOException {
        for (int i = 0; i < 3; i++) {
            Files.writeString(file(), "damage " + i);
            load();
        }
        assertEquals(3, aside().size());
    }

    @Test
    void aDamagedLineTakesOnlyItselfWithIt() throws IOException {
        LessonWork work = Samples.state(3, 2);
        String damaged =
                WorkText.write(work)
                        .replace("done: yes", "done: perhaps")
                        .replace("title: Toasted oats", "titel: Toasted oats");
        Files.writeString(file(), damaged);
        LoadedWork<Optional<LessonWork>> loaded = load();
        LessonWork read = loaded.value().orElseThrow();
        assertEquals(work.step("Toast").withDone(false), read.step("Toast"));
        assertEquals(
                List.of(
                        "01-toasted-oats.txt:3: \"titel\" isn't a key of a workbook; check its spelling",
                        "01-toasted-oats.txt:9: done is \"perhaps\"; it must be yes or no"),
                loaded.messages().subList(0, 2));
        assertEquals(damaged, Files.readString(aside().get(0)));
        assertEquals(new LoadedWork<>(Optional.of(read), List.of()), load(), "the rest is kept");
    }

    @Test
    void codeWithoutAPlaceIsKeptAside() throws IOException {
        String damaged =
                WorkText.write(Samples.state(3, 1))
                        .replaceFirst("snippet 1: [0-9a-f]+", "snippet 1: what");
        Files.writeString(file(), damaged);
        LessonWork read = load().value().orElseThrow();
        String text = Samples.state(3, 1).step("Toast").edits().get(0).text();
        assertEquals(text, read.step("Toast").edits().get(0).text());
    }

    @Test
    void aLaterVersionsFileIsNotTouchedButSetAside() throws IOException {
        Files.writeString(file(), "Coldwright workbook 2\nall: new\n");
        assertEquals(
                "01-toasted-oats.txt:1: another version of Coldwright wrote this file, as \"Coldwright workbook 2\"; this version reads \"Coldwright workbook 1\"",
                load().messages().get(0));
        assertEquals("Coldwright workbook 2\nall: new\n", Files.readString(aside().get(0)));
    }

    @Test
    void aSecondWindowMovesNothing() throws IOException {
        Files.writeString(file(), "damage");
        try (Workbook first = Workbook.open(new DataFolder(folder));
                Workbook second = Workbook.open(new DataFolder(folder))) {
            assertTrue(first.keeps());
            assertFalse(second.load(Samples.OATS).messages().isEmpty());
            assertEquals("damage", Files.readString(file()));
        }
    }

    @Test
    void cutAnywhereAFileStillGivesWhatStandsBeforeTheCut() throws IOException {
        byte[] whole = WorkText.write(Samples.state(7, 3)).getBytes(StandardCharsets.UTF_8);
        for (int length = 0; length < whole.length; length += 97) {
            String cut = new String(whole, 0, length, StandardCharsets.UTF_8);
            Optional<LessonWork> read = WorkText.read(Samples.OATS, cut).value();
            long snippets =
                    cut.lines().filter(line -> line.matches("snippet \\d: [0-9a-f]{64}")).count();
            assertEquals(
                    snippets,
                    read.map(work -> (long) work.step("Toast").edits().size()).orElse(0L)
                            - (cut.matches("(?s).*\\nsnippet \\d: [0-9a-f]{0,63}") ? 1 : 0),
                    cut);
        }
    }
}
