package coldwright.text;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;

/** A file is written whole, or what stood there stands and the reason is told. */
class WholeFileTest {
    private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);

    @TempDir Path folder;

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static WholeFile.UnwrittenException refused(Path file, byte[] content) {
        return assertThrows(
                WholeFile.UnwrittenException.class, () -> WholeFile.write(file, content));
    }

    @Test
    void writesAndReplacesAndLeavesNothingElse() throws IOException {
        Path file = folder.resolve("Blatt ü.pdf");
        WholeFile.write(file, "a longer former text".getBytes(StandardCharsets.UTF_8));
        WholeFile.write(file, NEW);
        assertArrayEquals(NEW, Files.readAllBytes(file));
        WholeFile.writePrivate(file, NEW);
        assertEquals(List.of("Blatt ü.pdf"), names());
    }

    @Test
    void saysThatItIsAFolderOrHasNone() throws IOException {
        Path inner = Files.createDirectory(folder.resolve("inner"));
        assertEquals(WholeFile.Reason.A_FOLDER, refused(inner, NEW).reason());
        Path nowhere = folder.resolve("none/sheet.pdf");
        assertEquals(
                nowhere
                        + " can't be written: its folder doesn't exist; create it or choose another",
                refused(nowhere, NEW).getMessage());
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void saysThatItsFolderIsClosed() throws IOException {
        Path closed = Files.createDirectory(folder.resolve("closed"));
        Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            Assumptions.assumeFalse(Files.isWritable(closed), "this user may write anywhere");
            assertEquals(
                    WholeFile.Reason.NOT_ALLOWED, refused(closed.resolve("a.pdf"), NEW).reason());
        } finally {
            Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void writesToWhatIsNoPlainFile() throws IOException {
        Path device = Path.of("/dev/null");
        Assumptions.assumeTrue(Files.isWritable(device));
        WholeFile.write(device, NEW);
        assertTrue(Files.exists(device) && !Files.isRegularFile(device));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void saysWhatADeviceRefuses() {
        Path full = Path.of("/dev/full");
        Assumptions.assumeTrue(Files.isWritable(full));
        String told = refused(full, NEW).getMessage();
        assertTrue(told.startsWith("/dev/full can't be written: "), told);
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void writesThroughALinkAndIsAsReadableAsAnyFile() throws IOException {
        Path real = Files.writeString(folder.resolve("real.pdf"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.pdf"), real);
        WholeFile.write(link, NEW);
        assertTrue(Files.isSymbolicLink(link));
        assertArrayEquals(NEW, Files.readAllBytes(real));
        Path usual = Files.writeString(folder.resolve("usual.pdf"), "old");
        assertEquals(Files.getPosixFilePermissions(usual), Files.getPosixFilePermissions(real));
        WholeFile.writePrivate(real, NEW);
        assertTrue(
                Files.getPosixFilePermissions(real).stream()
                        .noneMatch(PosixFilePermission.OTHERS_READ::equals));
    }
}
