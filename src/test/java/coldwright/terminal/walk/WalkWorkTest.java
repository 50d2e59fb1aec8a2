package coldwright.terminal.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.terminal.TypedSession;
import coldwright.terminal.console.ExitCode;
import coldwright.workbook.DataFolder;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A walk that ends in its middle and goes on later; the benches here are real. */
class WalkWorkTest {
    @TempDir Path folder;

    private String walked(TypedSession typedSession) {
        DataFolder data = new DataFolder(folder.resolve("data"));
        assertEquals(
                ExitCode.DONE,
                typedSession.obey(data, "walk", "1", "-o", folder.resolve("figures").toString()));
        return typedSession.out();
    }

    @Test
    void goesOnWhereItStoppedAndKeepsTheAnswers() throws IOException {
        walked(TypedSession.somebody("", "310", "", "a"));
        String kept = Files.readString(folder.resolve("data/lessons/01-warm-oats.txt"));
        assertTrue(kept.contains("typed: 310"), kept);
        assertTrue(kept.contains("choice 1: an hour"), kept);
        String again = walked(TypedSession.somebody("", "b"));
        assertFalse(again.contains("1 of 2."), again);
        assertTrue(again.contains("2 of 2."), again);
        assertTrue(
                again.contains("Checked: 1 line passed."), "what stands above ran again: " + again);
        assertTrue(walked(TypedSession.somebody("b", "q")).contains("Oats are toasted"));
    }

    @Test
    void anEndOfInputLosesNothing() throws IOException {
        walked(TypedSession.somebody("", "310"));
        String kept = Files.readString(folder.resolve("data/lessons/01-warm-oats.txt"));
        assertTrue(kept.contains("typed: 310"), kept);
        assertTrue(kept.contains("in sight: How many grams"), kept);
    }

    @Test
    void helpIsGivenWhereAnAnswerIsAwaited() {
        String said = walked(TypedSession.somebody("?", "", "?", "300", "q"));
        assertTrue(said.contains("Enter shows the next step, and q stops"), said);
        assertTrue(said.contains("Predict before the snippet runs"), said);
        assertTrue(said.contains("Your prediction was right"), said);
    }
}
