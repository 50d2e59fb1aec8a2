package coldwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.workbook.settings.Language;
import coldwright.workbook.settings.Preferences;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Each system has its custom; one property stands above all. */
class DataFolderTest {
    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "the paths are those of other systems")
    void eachSystemHasItsFolder() {
        assertEquals("/home/ada/.local/share/coldwright", of("Linux", Map.of()));
        assertEquals("/data/coldwright", of("Linux", Map.of("XDG_DATA_HOME", "/data")));
        assertEquals(
                "/home/ada/.local/share/coldwright",
                of("FreeBSD", Map.of("XDG_DATA_HOME", "not/absolute")));
        assertEquals("/home/ada/Library/Application Support/Coldwright", of("Mac OS X", Map.of()));
        assertEquals("/roaming/Coldwright", of("Windows 11", Map.of("APPDATA", "/roaming")));
        assertEquals("/home/ada/AppData/Roaming/Coldwright", of("Windows 10", Map.of()));
    }

    private static String of(String system, Map<String, String> environment) {
        return DataFolder.of(system, "/home/ada", environment).path().toString();
    }

    @Test
    void thePropertyStandsAboveTheCustom() {
        String former = System.getProperty(DataFolder.PROPERTY);
        try {
            System.setProperty(DataFolder.PROPERTY, "elsewhere");
            assertEquals(Path.of("elsewhere").toAbsolutePath(), DataFolder.usual().path());
        } finally {
            if (former == null) {
                System.clearProperty(DataFolder.PROPERTY);
            } else {
                System.setProperty(DataFolder.PROPERTY, former);
            }
        }
    }

    private static String permissions(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "it has no such permissions")
    void nobodyElseMayLookIntoIt(@TempDir Path at) throws IOException {
        Path made = at.resolve("share").resolve("coldwright");
        assertEquals(Optional.empty(), new DataFolder(made).make());
        assertEquals("rwx------", permissions(made));

        Files.setPosixFilePermissions(made, PosixFilePermissions.fromString("rwxr-xr-x"));
        try (Workbook workbook = Workbook.open(new DataFolder(made))) {
            workbook.keep(Preferences.usual().withTypeSizePercent(120));
        }
        assertEquals("rwx------", permissions(made));
        assertEquals("rw-------", permissions(made.resolve("settings.txt")));
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "it has no such permissions")
    void aFolderOfAnotherNameKeepsItsPermissions(@TempDir Path at) throws IOException {
        Path shared = Files.createDirectory(at.resolve("school"));
        Files.setPosixFilePermissions(shared, PosixFilePermissions.fromString("rwxrwxr-x"));
        assertEquals(Optional.empty(), new DataFolder(shared).make());
        assertEquals("rwxrwxr-x", permissions(shared));
    }

    @Test
    void theLanguageIsReadWithoutClaimingTheFolder(@TempDir Path at) throws IOException {
        DataFolder folder = new DataFolder(at.resolve("coldwright"));
        assertEquals(Locale.getDefault(), Workbook.languageIn(folder));
        try (Workbook workbook = Workbook.open(folder)) {
            workbook.keep(Preferences.usual().with(new Language("de")));
            assertEquals(Locale.GERMAN, Workbook.languageIn(folder));
        }
    }
}
