package coldwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Nothing in the sources that only one kind of system knows. */
class PortableFilesTest {
    /** Absolute paths, a shell, a class path joined by hand, a family of letters by one name. */
    private static final Pattern OF_ONE_SYSTEM =
            Pattern.compile(
                    "\"/(tmp|proc|dev|usr|etc|home|bin|opt|var)\\b|\"[A-Z]:\\\\"
                            + "|\"(sh|bash|cmd|cmd\\.exe|/bin/\\w+)\"|split\\(\":\"\\)"
                            + "|joining\\(\"[:;]\"\\)|\"(Arial|DejaVu|Segoe|Helvetica|Liberation)\\b");

    /** The system's fonts and its means of confinement, on Linux and only if they are there. */
    private static final Set<String> KNOWN_TO_ASK_FIRST =
            Set.of("BundledFonts.java", "SystemWall.java");

    private static final Pattern NAME_EVERYWHERE = Pattern.compile("[A-Za-z0-9._@+-]{1,100}");

    private static List<Path> files(String... folders) throws IOException {
        List<Path> found = new ArrayList<>();
        for (String folder : folders) {
            try (Stream<Path> all = Files.walk(Path.of(folder))) {
                all.filter(Files::isRegularFile).forEach(found::add);
            }
        }
        assertTrue(found.size() > 10, "files found: " + found.size());
        return found;
    }

    @Test
    void theProgramNamesNothingOfOneSystem() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : files("src/main/java")) {
            if (KNOWN_TO_ASK_FIRST.contains(file.getFileName().toString())) {
                continue;
            }
            int line = 0;
            for (String text : Files.readAllLines(file)) {
                line++;
                if (OF_ONE_SYSTEM.matcher(text).find()) {
                    found.add(file + ":" + line + ": " + text.strip());
                }
            }
        }
        assertEquals(List.of(), found);
    }

    @Test
    void theSearchFindsWhatItLooksFor() {
        for (String bad :
                List.of("\"/tmp/x\"", "\"C:\\x\"", "\"sh\"", ".split(\":\")", "\"Arial\"")) {
            assertTrue(OF_ONE_SYSTEM.matcher(bad).find(), bad);
        }
    }

    @Test
    void everyFileCanHaveItsNameOnEverySystem() throws IOException {
        Map<String, Path> byName = new HashMap<>();
        for (Path file : files("src", "lessons", "docs")) {
            assertTrue(
                    NAME_EVERYWHERE.matcher(file.getFileName().toString()).matches(),
                    file.toString());
            Path twin = byName.put(file.toString().toLowerCase(Locale.ROOT), file);
            assertEquals(null, twin, "differs from " + file + " by case only");
        }
    }

    @Test
    void textFilesEndLinesTheSameWay() throws IOException {
        List<Path> odd =
                files("src/main", "lessons", "docs").stream()
                        .filter(
                                file ->
                                        file.toString()
                                                .matches(".*\\.(java|md|properties|csv|txt)"))
                        .filter(PortableFilesTest::hasCarriageReturn)
                        .toList();
        assertEquals(List.of(), odd);
    }

    private static boolean hasCarriageReturn(Path file) {
        try {
            return Files.readString(file).indexOf('\r') >= 0;
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }
}
