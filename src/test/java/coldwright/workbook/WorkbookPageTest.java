package coldwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.workbook.entry.ParsedEntries;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.settings.PreferencesText;
import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.StepWork;
import coldwright.workbook.work.WorkText;

import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The files that the page on the workbook shows are such files. */
class WorkbookPageTest {
    private static String shown(String firstLine) throws IOException {
        String page = Files.readString(Path.of("docs/workbook.md")).replace("\r\n", "\n");
        StringBuilder block = new StringBuilder();
        for (String line : page.substring(page.indexOf("    " + firstLine)).split("\n", -1)) {
            if (!line.isEmpty() && !line.startsWith("    ")) {
                break;
            }
            block.append(line.isEmpty() ? "" : line.substring(4)).append('\n');
        }
        return block.toString();
    }

    @Test
    void theWorkIsRead() throws IOException {
        ParsedEntries<Optional<LessonWork>> read =
                WorkText.read(Samples.OATS, shown("Coldwright workbook 1"));
        assertEquals(List.of(), read.faults());
        StepWork step = read.value().orElseThrow().step("Toast");
        assertEquals(3, step.predictions().size());
        assertEquals(
                "double heat = 140; // dial 20 to 220 step 5 °C\n\noats.toasted(heat)",
                step.edits().get(0).text());
        assertEquals(1, step.aside().get(0).index());
    }

    @Test
    void theSettingsAreTheUsualOnes() throws IOException {
        String shown = shown("Coldwright settings 1").strip() + "\n";
        assertEquals(
                new ParsedEntries<>(Preferences.usual(), List.of()), PreferencesText.read(shown));
        assertEquals(shown, PreferencesText.write(Preferences.usual()));
    }

    @Test
    void theHandInIsRead() throws IOException {
        ParsedEntries<Optional<HandIn>> read = HandIn.read(shown("Coldwright hand-in 1"));
        assertEquals(List.of(), read.faults());
        assertEquals("Ada-Brunt-01-toasted-oats.handin.txt", read.value().orElseThrow().fileName());
    }
}
