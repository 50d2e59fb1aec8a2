package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

class LessonPackTest {
    private static final byte[] LESSON =
            "# Oats\n\n## Toast\n\nText.\n".getBytes(StandardCharsets.UTF_8);

    @Test
    void readsItsLessonsInOrderAndPassesOverTheRest() throws IOException {
        byte[] zip = zip(LESSON, "b/02-oats.md", "a.md", "picture.png", "b/");
        assertEquals(
                List.of("pack.zip/a.md", "pack.zip/b/02-oats.md"),
                read(zip).stream().map(Lesson::file).toList());
        assertEquals("Oats", read(zip).get(0).title());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"../a.md", "x/../../a.md", "/etc/a.md", "C:/a.md", "x\\..\\a.md", "./a.md"})
    void refusesAPathThatLeadsOut(String path) throws IOException {
        assertEquals(
                "pack.zip has \""
                        + path
                        + "\", a path that leads out of the pack; nothing of pack.zip was read",
                refused(zip(LESSON, "good.md", path)));
    }

    @Test
    void refusesALink() throws IOException {
        byte[] zip = zip(LESSON, "a.md");
        int list = indexOfList(zip);
        zip[list + 5] = 3;
        zip[list + 41] = (byte) 0xA1;
        assertEquals(
                "pack.zip has a link, which might lead out of the pack; nothing of pack.zip was read",
                refused(zip));
    }

    @Test
    void refusesWhatGrowsTooLarge() throws IOException {
        byte[] zeros = new byte[(int) LessonPack.MOST_BYTES + 1];
        byte[] zip = zip(zeros, "zeros.bin");
        assertTrue(zip.length < 100_000, "a bomb is small");
        assertEquals(
                "pack.zip has more than 20000000 bytes when unpacked; a pack may have that many at most",
                refused(zip));
    }

    @Test
    void refusesALessonThatIsTooLarge() throws IOException {
        assertEquals(
                "pack.zip has a.md, which is larger than 1000000 bytes; a lesson may have that many at most",
                refused(zip(new byte[LessonReader.MOST_BYTES + 1], "a.md")));
    }

    @Test
    void refusesTooManyEntries() throws IOException {
        String[] names = new String[LessonPack.MOST_ENTRIES + 1];
        for (int i = 0; i < names.length; i++) {
            names[i] = i + ".md";
        }
        assertEquals(
                "pack.zip has more than 1000 entries; a pack may have that many at most",
                refused(zip(LESSON, names)));
    }

    @Test
    void refusesWhatHoldsNoLesson() {
        assertEquals(
                "pack.zip has no lessons; their names end in .md",
                refused("no zip".getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Lesson> read(byte[] zip) {
        return LessonPack.read("pack.zip", new ByteArrayInputStream(zip));
    }

    private static String refused(byte[] zip) {
        return assertThrows(IllegalArgumentException.class, () -> read(zip)).getMessage();
    }

    private static byte[] zip(byte[] content, String... names) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (String name : names) {
                zip.putNextEntry(new ZipEntry(name));
                if (!name.endsWith("/")) {
                    zip.write(content);
                }
            }
        }
        return bytes.toByteArray();
    }

    private static int indexOfList(byte[] zip) {
        for (int i = 0; i + 3 < zip.length; i++) {
            if (zip[i] == 'P' && zip[i + 1] == 'K' && zip[i + 2] == 1 && zip[i + 3] == 2) {
                return i;
            }
        }
        throw new AssertionError("a zip file has a list of its entries");
    }
}
