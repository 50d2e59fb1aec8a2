package coldwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

class TextFileTest {
    @TempDir Path folder;

    @Test
    void readsUtf8WithAndWithoutItsMark() {
        assertEquals("−18 °C", TextFile.of(utf8("−18 °C")).text().orElseThrow());
        assertEquals("−18 °C", TextFile.of(utf8("\uFEFF−18 °C")).text().orElseThrow());
    }

    @Test
    void saysTheLineOfTheFirstByteThatIsNoUtf8AndKeepsTheRest() {
        TextFile latin = TextFile.of("one\ntwo °C\nthree".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(
                List.of(
                        new TextFault(
                                2,
                                "the byte 0xB0 on this line isn't UTF-8; save the file as UTF-8")),
                latin.faults());
        assertEquals("one\ntwo \uFFFDC\nthree", latin.text().orElseThrow());
    }

    @Test
    void refusesUtf16() {
        for (byte[] bytes :
                List.of(
                        "name: x".getBytes(StandardCharsets.UTF_16),
                        "name: x".getBytes(StandardCharsets.UTF_16LE))) {
            TextFile file = TextFile.of(bytes);
            assertTrue(file.text().isEmpty());
            assertEquals("the file is UTF-16; save it as UTF-8", file.faults().get(0).words());
        }
    }

    @Test
    void saysWhyThereIsNoText() throws IOException {
        assertEquals(
                "there is no such file; check its name and folder",
                TextFile.read(folder.resolve("none.txt"), 10).faults().get(0).words());
        assertEquals(
                "this is a folder; name a file in it",
                TextFile.read(folder, 10).faults().get(0).words());
        Path large = Files.writeString(folder.resolve("large.txt"), "x".repeat(2_000_000));
        assertEquals(
                "the file has 2.0 MB; it may have at most 1.0 MB",
                TextFile.read(large, 1_000_000).faults().get(0).words());
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
