package coldwright.desk;

import javafx.application.Platform;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Logger;

/** Checks, without output on the terminal, whether a window can be opened here. */
final class DisplayProbe {
    private static final String SORRY = "No window can be opened here: ";

    /** Kept because a logger without a strong reference loses its filter. */
    private static final Logger TOOLKIT_LOG = Logger.getLogger("javafx");

    private DisplayProbe() {}

    /**
     * Starts the toolkit.
     *
     * @throws NoDisplayException if it can't be started
     */
    static void start() throws NoDisplayException {
        Map<String, String> environment = System.getenv();
        Optional<String> missing = missing(System.getProperty("os.name"), environment);
        if (missing.isPresent()) {
            throw new NoDisplayException(missing.get(), null);
        }
        TOOLKIT_LOG.setFilter(
                record -> !record.getMessage().startsWith("Unsupported JavaFX configuration"));
        PrintStream terminal = System.err;
        System.setErr(
                new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8));
        try {
            Platform.startup(() -> {});
        } catch (IllegalStateException e) {
            // it runs already
        } catch (RuntimeException | LinkageError e) {
            throw new NoDisplayException(why(e, environment.getOrDefault("DISPLAY", "")), e);
        } finally {
            System.setErr(terminal);
        }
    }

    /** Which display setting an X11 window lacks; empty on systems that need none. */
    static Optional<String> missing(String system, Map<String, String> environment) {
        boolean asks = System.getProperty("glass.platform") == null;
        if (!asks || !system.toLowerCase(Locale.ROOT).contains("linux")) {
            return Optional.empty();
        }
        if (!environment.getOrDefault("DISPLAY", "").isBlank()) {
            return Optional.empty();
        }
        return Optional.of(
                SORRY
                        + (environment.getOrDefault("WAYLAND_DISPLAY", "").isBlank()
                                ? "DISPLAY is not set, so no screen is known; set it to one, such as :0."
                                : "only WAYLAND_DISPLAY is set, and the window needs X11; start"
                                        + " XWayland, which sets DISPLAY."));
    }

    /** Why the toolkit did not start. */
    static String why(Throwable error, String display) {
        StringBuilder said = new StringBuilder();
        for (Throwable one = error; one != null; one = one.getCause()) {
            said.append(one.getMessage()).append(' ');
        }
        String all = said.toString();
        if (all.contains("open DISPLAY")) {
            return SORRY
                    + "the screen that DISPLAY names, \"%s\", does not answer; look whether it runs and lets you in."
                            .formatted(display);
        }
        if (all.contains("GTK")) {
            return SORRY
                    + "the library GTK 3 is missing; install it (on Debian, the package libgtk-3-0).";
        }
        if (all.contains("no glass in java.library.path")) {
            return SORRY
                    + "a system library for windows is missing; install GTK 3 and X11 (on Debian, the package libgtk-3-0).";
        }
        return SORRY + "the window toolkit says \"%s\".".formatted(all.strip());
    }
}
