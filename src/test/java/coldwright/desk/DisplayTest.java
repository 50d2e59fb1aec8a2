package coldwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

@EnabledOnOs(OS.LINUX)
class DisplayTest {
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
                "No window can be opened here: DISPLAY is not set, so no screen is known; set it to"
                        + " one, such as :0.\n",
                said(Map.of()));
        assertEquals(
                "No window can be opened here: only WAYLAND_DISPLAY is set, and the window needs"
                        + " X11; start XWayland, which sets DISPLAY.\n",
                said(Map.of("WAYLAND_DISPLAY", "wayland-0")));
    }

    @Test
    void aScreenThatDoesNotAnswerIsNamed() throws Exception {
        String said = said(Map.of("DISPLAY", ":98"));
        assertEquals(1, said.lines().count(), said);
        // where GTK or X11 itself is missing, that is said first
        assertTrue(said.contains("\":98\", does not answer") || said.contains("libgtk-3-0"), said);
    }

    @Test
    void whatTheToolkitSaysIsPutInWords() {
        assertTrue(
                Display.why(
                                new UnsupportedOperationException(
                                        "Unable to load glass GTK library."),
                                "")
                        .contains("the library GTK 3 is missing"));
        assertTrue(
                Display.why(
                                new RuntimeException(
                                        new UnsatisfiedLinkError(
                                                "no glass in java.library.path: x")),
                                "")
                        .contains("install GTK 3 and X11"));
        assertEquals(
                "No window can be opened here: the window toolkit says \"odd\".",
                Display.why(new IllegalArgumentException("odd"), ""));
    }

    private static String said(Map<String, String> environment)
            throws IOException, InterruptedException {
        ProcessBuilder builder =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                Teller.class.getName())
                        .redirectErrorStream(true);
        builder.environment().remove("DISPLAY");
        builder.environment().remove("WAYLAND_DISPLAY");
        builder.environment().putAll(environment);
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        return said;
    }
}
