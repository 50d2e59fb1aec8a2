package coldwright.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.workbook.settings.Agreements;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.settings.PreferencesText;
import coldwright.workbook.settings.Theme;
import coldwright.workbook.work.ContentHash;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Damaged settings and agreements are set aside with a message; what can be read stays. */
class DamagedSettingsTest {
    private static final Preferences CHOSEN = Preferences.usual().with(Theme.DARK);
    private static final String SETTINGS = PreferencesText.write(CHOSEN);
    private static final String AGREED =
            Agreements.none()
                    .agree(ContentHash.of("one"), "One")
                    .agree(ContentHash.of("two"), "Two")
                    .text();

    private static List<Path> aside(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(one -> one.toString().contains(".damaged-")).toList();
        }
    }

    private static LoadedWork<?> load(Path folder, String name) {
        try (Workbook workbook = Workbook.open(new DataFolder(folder))) {
            return name.equals(WorkbookFiles.SETTINGS)
                    ? workbook.preferences()
                    : workbook.agreements();
        }
    }

    private static void isSetAside(String name, byte[] damaged) throws IOException {
        Path folder = Files.createTempDirectory("damaged-settings");
        try {
            Files.write(folder.resolve(name), damaged);
            LoadedWork<?> loaded = load(folder, name);
            assertFalse(loaded.messages().isEmpty(), "nothing is said");
            assertEquals(1, aside(folder).size(), "not set aside");
            assertArrayEquals(damaged, Files.readAllBytes(aside(folder).get(0)));
            assertTrue(
                    loaded.messages().get(loaded.messages().size() - 1).contains("was damaged"),
                    () -> loaded.messages().toString());
            assertEquals(List.of(), load(folder, name).messages(), "it is said once");
            assertEquals(loaded.value(), load(folder, name).value(), "what was read is saved");
        } finally {
            try (Stream<Path> all = Files.walk(folder)) {
                all.sorted((one, other) -> other.compareTo(one))
                        .forEach(one -> one.toFile().delete());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {WorkbookFiles.SETTINGS, WorkbookFiles.AGREED})
    void anEmptyOneAndAnotherVersions(String name) throws IOException {
        isSetAside(name, new byte[0]);
        String whole = name.equals(WorkbookFiles.AGREED) ? AGREED : SETTINGS;
        isSetAside(name, whole.replaceFirst(" 1\n", " 2\n").getBytes(StandardCharsets.UTF_8));
    }

    /** Agreements that are cut at the end of a line can't be noticed; Coldwright asks again. */
    @Cases(60)
    void aCutOne(Draw draw) throws IOException {
        String whole = draw.anyBoolean() ? AGREED : SETTINGS;
        int length = draw.intIn(0, whole.length() - 1);
        if (whole.equals(AGREED) && length > 0 && whole.charAt(length - 1) == '\n') {
            length--;
        }
        String name = whole.equals(AGREED) ? WorkbookFiles.AGREED : WorkbookFiles.SETTINGS;
        isSetAside(name, whole.substring(0, length).getBytes(StandardCharsets.UTF_8));
    }

    /** The highest bit of a byte flips, so that the file isn't UTF-8. */
    @Cases(40)
    void aBitFlippedOne(Draw draw) throws IOException {
        String whole = draw.anyBoolean() ? AGREED : SETTINGS;
        byte[] bytes = whole.getBytes(StandardCharsets.UTF_8);
        bytes[draw.intIn(0, bytes.length - 1)] ^= (byte) 0x80;
        isSetAside(whole.equals(AGREED) ? WorkbookFiles.AGREED : WorkbookFiles.SETTINGS, bytes);
    }
}
