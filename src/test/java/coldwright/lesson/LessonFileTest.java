package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;

/** Files that are no lessons, or not quite. */
class LessonFileTest {
    private static final String GOOD = "# Oats\n\n## Toast at 180 °C\n\nWords.\n";

    /** No array takes so many bytes: whoever reads the file fails. */
    private static final long TOO_LARGE_TO_READ = 3_000_000_000L;

    /** Guards against a reader that never ends. */
    private static final Duration HUNG = Duration.ofMinutes(1);

    @TempDir Path folder;

    private String faultOf(Path file) {
        Lesson lesson = LessonReader.read(file);
        assertEquals(1, lesson.faults().size(), lesson.faults().toString());
        return lesson.faults().get(0).toString().replace(folder.toString(), "F");
    }

    private Path written(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void anEmptyFile() throws IOException {
        assertEquals(
                "F/e.md:1: the file is empty; begin it with a title such as `# Sugar and ice` and a step such as `## Why the tub is a brick`",
                faultOf(written("e.md", new byte[0])));
    }

    @Test
    void aFolder() throws IOException {
        assertEquals("F: this is a folder; name one of the lessons in it", faultOf(folder));
        written("b.md", utf8(GOOD));
        written("a.md", utf8(GOOD));
        assertEquals(
                "F: this is a folder; name one of the lessons in it, such as a.md, b.md",
                faultOf(folder));
    }

    @Test
    void aMissingFile() throws IOException {
        assertEquals(
                "F/oats.md: there is no such file; check its name and folder",
                faultOf(folder.resolve("oats.md")));
        written("oat.md", utf8(GOOD));
        assertEquals(
                "F/oats.md: there is no such file: did you mean \"oat.md\"?",
                faultOf(folder.resolve("oats.md")));
        assertEquals(
                "F/no/oats.md: there is no such file; check its name and folder",
                faultOf(folder.resolve("no/oats.md")));
    }

    @Test
    void aHugeFileIsRefusedUnread() throws IOException {
        Path huge = folder.resolve("huge.md");
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(TOO_LARGE_TO_READ);
        }
        assertEquals(
                "F/huge.md: the file has 3000.0 MB; it may have at most 1.0 MB", faultOf(huge));
    }

    @Test
    void latin1KeepsItsSteps() throws IOException {
        Path file = written("l.md", GOOD.getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(
                "F/l.md:3: the byte 0xB0 on this line isn't UTF-8; save the file as UTF-8",
                faultOf(file));
        assertEquals("Toast at 180 \uFFFDC", LessonReader.read(file).steps().get(0).title());
    }

    @Test
    void aFileThatEndsWithinACharacter() throws IOException {
        byte[] cut = utf8(GOOD + "°");
        assertEquals(
                "F/c.md:6: the byte 0xC2 on this line isn't UTF-8; save the file as UTF-8",
                faultOf(written("c.md", java.util.Arrays.copyOf(cut, cut.length - 1))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE"})
    void utf16(String charset) throws IOException {
        assertEquals(
                "F/u.md:1: the file is UTF-16; save it as UTF-8",
                faultOf(written("u.md", GOOD.getBytes(Charset.forName(charset)))));
    }

    @Test
    void aByteOrderMarkIsNoFault() throws IOException {
        Lesson lesson = LessonReader.read(written("m.md", utf8("\uFEFF" + GOOD)));
        assertEquals(java.util.List.of(), lesson.faults());
        assertEquals("Oats", lesson.title());
    }

    @Test
    void aNulCharacter() throws IOException {
        assertEquals(
                "F/n.md:6: there is a NUL character here; remove it, or save the file as UTF-8 text",
                faultOf(written("n.md", utf8(GOOD + "\0end"))));
    }

    @Test
    void aPicture() throws IOException {
        byte[] noise = new byte[5000];
        new java.util.Random(1).nextBytes(noise);
        assertTrue(LessonReader.read(written("p.md", noise)).faults().size() >= 1);
    }

    @Test
    void aLargeLessonIsReadToItsEnd() {
        String large = "# t\n\n## s\n\n" + "[".repeat(100_000) + "*a **a ".repeat(30_000);
        assertTimeoutPreemptively(HUNG, () -> LessonReader.read("a.md", large));
    }
}
