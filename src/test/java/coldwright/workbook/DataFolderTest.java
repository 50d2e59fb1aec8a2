package coldwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

import java.nio.file.Path;
import java.util.Map;

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
}
