package coldwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

/** One window keeps the workbook; another learns so and takes over when the first is closed. */
class TwoWindowsTest {
    private static final Optional<String> TAKEN =
            Optional.of(
                    "another Coldwright window keeps this workbook; what you change here is not kept until it is closed");

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
            assertEquals(TAKEN, second.clear().message());
            first.getOutputStream().write('\n');
            first.getOutputStream().flush();
            assertEquals("saved", said.readLine());
            assertEquals(TAKEN, second.tryAgain());
            first.getOutputStream().close();
            first.waitFor();
            assertEquals(Optional.empty(), second.tryAgain());
            assertEquals(
                    Optional.of(
                            "the work in \"Toasted oats\" was changed elsewhere or is damaged; open the lesson again before you change it here"),
                    second.save(Samples.state(9, 1)),
                    "what the first window saved must not be lost");
            assertEquals(Optional.of(Samples.state(2, 1)), second.load(Samples.OATS).value());
            assertEquals(Optional.empty(), second.save(Samples.state(9, 1)));
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
}
