package coldwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.workbook.settings.Agreements;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.settings.Theme;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.WorkText;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Settings and agreements last; clearing puts everything away and deletes nothing. */
class ClearedWorkbookTest {
    private static final ContentHash HASH = ContentHash.of("# Oats");

    @TempDir Path folder;

    @Test
    void settingsAndAgreementsLast() {
        Preferences chosen = Preferences.usual().with(Theme.DARK);
        Agreements agreed = Agreements.none().agree(HASH, "Oats");
        try (Workbook workbook = Workbook.open(new DataFolder(folder))) {
            assertEquals(Preferences.usual(), workbook.preferences().value());
            assertEquals(Agreements.none(), workbook.agreements().value());
            assertEquals(Optional.empty(), workbook.keep(chosen).failure());
            assertEquals(Optional.empty(), workbook.keep(agreed).failure());
        }
        try (Workbook workbook = Workbook.open(new DataFolder(folder))) {
            assertEquals(chosen, workbook.preferences().value());
            assertTrue(workbook.agreements().value().agreed(HASH));
        }
    }

    @Test
    void clearingPutsEverythingAway() throws IOException {
        try (Workbook workbook = Workbook.open(new DataFolder(folder))) {
            assertEquals(new Saved<>(Optional.empty(), Optional.empty()), workbook.clear());
            for (int time = 1; time <= 2; time++) {
                workbook.save(Samples.state(time, 1));
                workbook.keep(Preferences.usual());
                Saved<Optional<Path>> away = workbook.clear();
                assertEquals(Optional.empty(), away.failure());
                Path to = away.value().orElseThrow();
                assertTrue(
                        to.getFileName().toString().matches("put-away-\\d{8}-\\d{6}(-2)?"),
                        to::toString);
                assertEquals(
                        WorkText.write(Samples.state(time, 1)),
                        Files.readString(to.resolve("lessons/01-toasted-oats.txt")));
                assertTrue(Files.exists(to.resolve("settings.txt")));
                assertEquals(Optional.empty(), workbook.load(Samples.OATS).value());
            }
        }
    }
}
