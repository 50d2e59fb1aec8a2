package coldwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.text.TemporaryFolders;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

@EnabledOnOs(OS.LINUX)
class DisplayProbeTest {
    /** Says on the terminal what opening the window says. */
    public static final class Teller {
        private Teller() {}

        public static void main(String[] words) {
            try {
                Desk.open(Optional.empty());
            } catch (NoDisplayException e) {
                System.out.println(e.getMessage());
            }
        }
    }

    @Test
    void withoutAScreenOneSentenceIsSaidAndNothingElse() throws Exception {
        assertEquals(
                "No window can be opened here: DISPLAY isn’t set. Set it to a screen, such as :0.\n",
                said(Map.of()));
        assertEquals(
                "No window can be opened here: only WAYLAND_DISPLAY is set, and the window needs"
                        + " X11. Start XWayland, which sets DISPLAY.\n",
                said(Map.of("WAYLAND_DISPLAY", "wayland-0")));
    }

    @Test
    void aScreenThatDoesNotAnswerIsNamed() throws Exception {
        String said = said(Map.of("DISPLAY", ":98"));
        assertEquals(1, said.lines().count(), said);
        // where GTK or X11 itself is missing, that is said first
        assertTrue(
                said.contains("“:98” that DISPLAY names doesn’t answer")
                        || said.contains("libgtk-3-0"),
                said);
    }

    @Test
    void aHomeThatCantBeWrittenToGivesWayToATemporaryFolder(@TempDir Path home) {
        try {
            DisplayProbe.leaveFullHome(home);
            assertNull(System.getProperty(DisplayProbe.UNPACKS_TO));
            DisplayProbe.leaveFullHome(home.resolve("none"));
            Path instead = Path.of(System.getProperty(DisplayProbe.UNPACKS_TO));
            assertTrue(TemporaryFolders.isFor("toolkit", instead), instead.toString());
            TemporaryFolders.delete(instead);
        } finally {
            System.clearProperty(DisplayProbe.UNPACKS_TO);
        }
    }

    @Test
    void whatTheToolkitSaysIsPutInWords() {
        assertTrue(
                DisplayProbe.why(
                                new UnsupportedOperationException(
                                        "Unable to load glass GTK library."),
                                "")
                        .contains("the library GTK 3 is missing"));
        assertTrue(
                DisplayProbe.why(
                                new RuntimeException(
                                        new UnsatisfiedLinkError(
                                                "no glass in java.library.path: x")),
                                "")
                        .contains("Install GTK 3 and X11"));
        assertEquals(
                "No window can be opened here. The window toolkit reports “odd”.",
                DisplayProbe.why(new IllegalArgumentException("odd"), ""));
    }

    private static String said(Map<String, String> environment)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(flagsThatKeepNewerJavaQuiet());
        command.addAll(
                List.of("-cp", System.getProperty("java.class.path"), Teller.class.getName()));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().remove("DISPLAY");
        builder.environment().remove("WAYLAND_DISPLAY");
        builder.environment().putAll(environment);
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        return said;
    }

    /** Those that the build starts the program with, and this test. */
    private static List<String> flagsThatKeepNewerJavaQuiet() {
        return ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
                .filter(flag -> flag.startsWith("--"))
                .toList();
    }
}
