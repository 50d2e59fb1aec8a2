package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A lesson asks for one file beside it, and gets its text and nothing else. */
final class AskedFileTest {
    @TempDir Path folder;

    private Lesson lesson(String asks) throws IOException {
        Path file = folder.resolve("lesson.md");
        Files.writeString(file, "# T\n\n<!--\nasks: " + asks + "\n-->\n\n## S\n\nText.\n");
        return LessonReader.read(file);
    }

    private static String code(Lesson lesson) {
        return ((LessonPart.Snippet) lesson.opening().get(0)).code();
    }

    @Test
    void theTextIsAStringInAGivenSnippet() throws IOException {
        Files.writeString(folder.resolve("oven-log.csv"), "min,°C\n0,\"20\"\r\n5,\\t\n");
        Lesson lesson = lesson("read oven-log.csv");
        assertEquals("String ovenLog = \"min,°C\\n0,\\\"20\\\"\\n5,\\\\t\\n\";", code(lesson));
        assertEquals("read oven-log.csv", lesson.asks());
        assertTrue(lesson.faults().isEmpty(), lesson.faults().toString());
    }

    @Test
    void aLongTextIsPutTogetherBecauseJavaLimitsAString() throws IOException {
        Files.writeString(folder.resolve("long.txt"), "0123456789".repeat(2_500));
        String code = code(lesson("read long.txt"));
        assertTrue(code.startsWith("String textLong = String.join(\"\", \"0123"), code);
        assertEquals(3, code.lines().count());
    }

    @Test
    void aMissingLargeOrLinkedFileIsAFaultAndTheTextIsEmpty() throws IOException {
        assertEquals("String none = \"\";", code(lesson("read none.txt")));
        assertEquals(1, lesson("read none.txt").faults().size());
        Files.writeString(folder.resolve("big.txt"), "x".repeat(AskedFile.MOST_BYTES + 1));
        assertEquals(1, lesson("read big.txt").faults().size());
        Path secret = Files.writeString(folder.resolve("secret"), "secret");
        Files.createSymbolicLink(folder.resolve("link.txt"), secret);
        assertEquals("String link = \"\";", code(lesson("read link.txt")));
    }

    private Lesson packed(String... entries) throws IOException {
        Path file = folder.resolve("pack.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (int i = 0; i < entries.length; i += 2) {
                zip.putNextEntry(new ZipEntry(entries[i]));
                zip.write(entries[i + 1].getBytes(StandardCharsets.UTF_8));
            }
        }
        return LessonPack.of(file).get(0);
    }

    @Test
    void inAPackTheFileIsBesideTheLesson() throws IOException {
        String asks = "# T\n\n<!--\nasks: read oven.csv\n-->\n\n## S\n\nText.\n";
        Lesson lesson = packed("oven.csv", "outer", "in/oven.csv", "inner", "in/lesson.md", asks);
        assertEquals("String oven = \"inner\";", code(lesson));
        assertTrue(lesson.faults().isEmpty(), lesson.faults().toString());
        Lesson alone = packed("other/oven.csv", "elsewhere", "lesson.md", asks);
        assertEquals("String oven = \"\";", code(alone));
        assertTrue(alone.faults().get(0).words().contains("the pack has no such file"));
        String much = "x".repeat(AskedFile.MOST_BYTES + 1);
        assertEquals(1, packed("oven.csv", much, "lesson.md", asks).faults().size());
        assertEquals("String oven = \"\";", code(packed("oven.csv", much, "lesson.md", asks)));
    }

    @ParameterizedTest
    @CsvSource({
        "read ..",
        "read ../secret",
        "read /etc/passwd",
        "read a/b",
        "read a\\b",
        "read",
        "write x",
        "nothing"
    })
    void otherWishesAreFaults(String asks) throws IOException {
        Lesson lesson = lesson(asks);
        assertEquals(1, lesson.faults().size());
        assertTrue(lesson.faults().get(0).words().contains("asks: read NAME"));
        assertTrue(lesson.opening().isEmpty());
    }

    @Test
    void everythingIsSaid() throws IOException {
        assertTrue(lesson("everything").asksForEverything());
    }
}
