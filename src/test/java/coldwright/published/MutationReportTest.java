package coldwright.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

class MutationReportTest {
    @TempDir Path folder;

    private void run(String name, String... statuses) throws IOException {
        StringBuilder xml =
                new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?><mutations>");
        for (String status : statuses) {
            boolean noticed = List.of("KILLED", "TIMED_OUT").contains(status);
            xml.append("<mutation detected='%s' status='%s'/>".formatted(noticed, status));
        }
        Files.createDirectories(folder.resolve("runs").resolve(name));
        Files.writeString(
                folder.resolve("runs").resolve(name).resolve("mutations.xml"),
                xml.append("</mutations>"));
    }

    @Test
    void countsOneRunAndKeepsTheRowsOfOthers() throws IOException {
        Path page = folder.resolve("page.md");
        run("bath", "KILLED", "SURVIVED");
        String[] arguments = {folder.resolve("runs").toString(), page.toString()};
        MutationReport.main(arguments);
        Files.delete(folder.resolve("runs/bath/mutations.xml"));
        run("freezing", "KILLED", "TIMED_OUT", "SURVIVED", "NO_COVERAGE");
        MutationReport.main(arguments);
        List<String> rows =
                Files.readAllLines(page).stream().filter(line -> line.startsWith("| `")).toList();
        assertEquals(
                List.of("| `bath` | 2 | 50 % | 50 % |", "| `freezing` | 4 | 50 % | 67 % |"), rows);
        assertTrue(Files.readString(page).contains("## Survivors"), "the closing is missing");
    }
}
