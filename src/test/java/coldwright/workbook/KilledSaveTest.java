package coldwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.workbook.work.LessonWork;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

/** A program that is ended in the middle of a save loses nothing that was saved before. */
class KilledSaveTest {
    /** Twenty-four with the profile {@code long}. */
    private static final int KILLS = Integer.getInteger("workbook.kills", 8);

    private static final int SNIPPETS = 40;
    private static final int LONGEST_LIFE_MS = 60;
    private static final long SEED = 20_261_125;

    @TempDir Path folder;

    /** Saves one state after the other and says after each that it is saved. */
    static final class Program {
        private Program() {}

        public static void main(String[] args) {
            Workbook workbook = Workbook.open(new DataFolder(Path.of(args[0])));
            int first =
                    workbook.load(Samples.OATS)
                            .value()
                            .map(work -> (int) work.changed().getEpochSecond() + 1)
                            .orElse(1);
            for (int i = first; ; i++) {
                Optional<String> failure = workbook.save(Samples.state(i, SNIPPETS));
                System.out.println(failure.orElse("" + i));
            }
        }
    }

    @Test
    void theFileIsAlwaysOneOfTheSavedStatesWhole() throws IOException, InterruptedException {
        Random random = new Random(SEED);
        long last = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            Process child = Children.start(Program.class, folder);
            List<String> said = new ArrayList<>();
            try (BufferedReader out =
                    new BufferedReader(
                            new InputStreamReader(
                                    child.getInputStream(), StandardCharsets.UTF_8))) {
                said.add(out.readLine());
                Thread.sleep(random.nextInt(LONGEST_LIFE_MS));
                child.toHandle().destroyForcibly(); // the process' own method would drop its output
                out.lines().forEach(said::add);
            } catch (IOException | UncheckedIOException e) {
                child.destroyForcibly().waitFor();
            }
            long reported =
                    said.stream()
                            .filter(s -> s.matches("\\d+"))
                            .mapToLong(Long::parseLong)
                            .max()
                            .orElse(0);
            assertTrue(reported > last, () -> "it saved nothing: " + said);
            last = wholeStateOnDisk();
            assertTrue(last >= reported, "state " + reported + " was saved, " + last + " is there");
            assertTrue(last <= reported + 1, "a state from nowhere: " + last);
        }
        try (Stream<Path> files = Files.list(folder.resolve("lessons"))) {
            assertEquals(
                    List.of(),
                    files.map(Path::toString).filter(name -> name.contains("damaged")).toList());
        }
    }

    private long wholeStateOnDisk() {
        try (Workbook workbook = Workbook.open(new DataFolder(folder))) {
            assertTrue(workbook.keeps(), "the dead program still holds the lock");
            LoadedWork<Optional<LessonWork>> loaded = workbook.load(Samples.OATS);
            assertEquals(List.of(), loaded.messages());
            LessonWork work = loaded.value().orElseThrow();
            int number = (int) work.changed().getEpochSecond();
            assertEquals(Samples.state(number, SNIPPETS), work);
            return number;
        }
    }
}
