package coldwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.workbook.settings.Agreements;
import coldwright.workbook.settings.MassUnit;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.settings.Theme;
import coldwright.workbook.work.ContentHash;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One window keeps the workbook; another learns so and takes over when the first is closed. */
class TwoWindowsTest {
    private static final Optional<String> TAKEN =
            Optional.of(
                    "another Coldwright window saves your work; changes here are not saved until it is closed");

    @TempDir Path folder;

    /** Keeps the workbook until told to save, and then until its input ends. */
    static final class Program {
        private Program() {}

        public static void main(String[] args) throws IOException {
            try (Workbook workbook = Workbook.open(new DataFolder(Path.of(args[0])))) {
                workbook.save(Samples.state(1, 1));
                System.out.println(workbook.notice().orElse("keeps"));
                System.in.read();
                System.out.println(workbook.save(Samples.state(2, 1)).orElse("saved"));
                System.in.read();
            }
        }
    }

    @Test
    void aSecondProgramWaitsForTheFirst() throws IOException, InterruptedException {
        Process first = Children.start(Program.class, folder);
        try (BufferedReader said =
                        new BufferedReader(
                                new InputStreamReader(
                                        first.getInputStream(), StandardCharsets.UTF_8));
                Workbook second = secondAfter(said)) {
            assertEquals(TAKEN, second.notice());
            assertEquals(Optional.of(Samples.state(1, 1)), second.load(Samples.OATS).value());
            assertEquals(TAKEN, second.save(Samples.state(9, 1)));
            assertEquals(TAKEN, second.clear().failure());
            first.getOutputStream().write('\n');
            first.getOutputStream().flush();
            assertEquals("saved", said.readLine());
            assertEquals(TAKEN, second.tryAgain());
            first.getOutputStream().close();
            first.waitFor();
            assertEquals(Optional.empty(), second.tryAgain());
            Path file = folder.resolve("lessons/01-toasted-oats.txt");
            String theirs = Files.readString(file);
            List<Copied> copies = new ArrayList<>();
            second.whenCopied(copies::add);
            assertEquals(Optional.empty(), second.save(Samples.state(9, 1)));
            assertEquals(Optional.of(Samples.state(9, 1)), second.load(Samples.OATS).value());
            assertEquals(1, copies.size(), "what the first window saved must not be lost");
            assertEquals("Toasted oats", copies.get(0).what());
            assertEquals(theirs, Files.readString(copies.get(0).copy()));
        } finally {
            first.destroyForcibly();
        }
    }

    private Workbook secondAfter(BufferedReader said) throws IOException {
        assertEquals("keeps", said.readLine());
        return Workbook.open(new DataFolder(folder));
    }

    @Test
    void twoWindowsOfOneProgramTakeTurnsToo() {
        Workbook first = Workbook.open(new DataFolder(folder));
        Workbook second = Workbook.open(new DataFolder(folder));
        Workbook third = Workbook.open(new DataFolder(folder));
        assertTrue(first.keeps());
        assertEquals(TAKEN, second.notice());
        first.close();
        assertFalse(first.save(Samples.empty()).isEmpty());
        assertEquals(Optional.empty(), second.tryAgain());
        assertEquals(TAKEN, third.tryAgain());
        second.close();
        third.close();
    }

    @Test
    void aTryOfASecondWindowInOneProgramDoesNotLetGoTheLock()
            throws IOException, InterruptedException {
        try (Workbook first = Workbook.open(new DataFolder(folder));
                Workbook second = Workbook.open(new DataFolder(folder))) {
            assertTrue(first.keeps());
            assertFalse(second.keeps());
            Process other = Children.start(Program.class, folder);
            try (BufferedReader said =
                    new BufferedReader(
                            new InputStreamReader(
                                    other.getInputStream(), StandardCharsets.UTF_8))) {
                assertEquals(TAKEN, Optional.of(said.readLine()));
            } finally {
                other.destroyForcibly().waitFor();
            }
        }
    }

    /** A full disk for the copy: then the file may not be replaced either. */
    @Test
    void withoutACopyNothingIsWrittenOver() throws IOException {
        Path file = folder.resolve("lessons/01-toasted-oats.txt");
        try (Workbook workbook = Workbook.open(new DataFolder(folder))) {
            workbook.save(Samples.state(1, 1));
            Files.writeString(file, "a text that an editor put there");
            Path inTheWay = Files.writeString(folder.resolve(KeptFiles.COPIES), "");
            assertTrue(workbook.save(Samples.state(2, 1)).isPresent());
            assertEquals("a text that an editor put there", Files.readString(file));
            Files.delete(inTheWay);
            assertEquals(Optional.empty(), workbook.save(Samples.state(2, 1)));
            assertEquals(Optional.of(Samples.state(2, 1)), workbook.load(Samples.OATS).value());
        }
    }

    @Test
    void settingsAndAgreementsOfBothAreKept() {
        ContentHash one = ContentHash.of("one");
        ContentHash two = ContentHash.of("two");
        Workbook first = Workbook.open(new DataFolder(folder));
        try (Workbook second = Workbook.open(new DataFolder(folder))) {
            List<Copied> copies = new ArrayList<>();
            second.whenCopied(copies::add);
            Preferences usual = second.preferences().value();
            Agreements none = second.agreements().value();
            try (first) {
                first.keep(usual.with(Theme.DARK));
                first.keep(none.agree(one, "One"));
            }
            second.tryAgain();
            Preferences both = usual.with(Theme.DARK).with(MassUnit.OZ);
            assertEquals(both, second.keep(usual.with(MassUnit.OZ)).value());
            assertEquals(
                    none.agree(one, "One").agree(two, "Two"),
                    second.keep(none.agree(two, "Two")).value());
            assertEquals(both, second.preferences().value());
            assertEquals(List.of(), copies, "only other keys were changed");
        }
    }
}
