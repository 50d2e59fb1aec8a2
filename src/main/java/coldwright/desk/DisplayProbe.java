package coldwright.desk;

import coldwright.desk.messages.Messages;
import coldwright.text.TemporaryFolders;

import javafx.application.Platform;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Checks, without output on the terminal, whether a window can be opened here. */
final class DisplayProbe {
    /** Kept because a logger without a strong reference loses its filter. */
    private static final Logger TOOLKIT_LOG = Logger.getLogger("javafx");

    /** Where the toolkit unpacks its libraries; in the user's home if not set. */
    static final String UNPACKS_TO = "javafx.cachedir";

    /** They take some 4 MB. */
    private static final long UNPACKED_BYTES = 16 << 20;

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
        leaveFullHome(Path.of(System.getProperty("user.home")));
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

    /**
     * A home without room or rights for the toolkit's libraries gives way to a temporary folder.
     */
    static void leaveFullHome(Path home) {
        try {
            if (System.getProperty(UNPACKS_TO) == null
                    && (!Files.isWritable(home)
                            || Files.getFileStore(home).getUsableSpace() < UNPACKED_BYTES)) {
                System.setProperty(UNPACKS_TO, TemporaryFolders.create("toolkit").toString());
            }
        } catch (IOException e) {
            // the toolkit tries its usual folder and says what it lacks
        }
    }

    /** Which display setting an X11 window lacks; empty on systems that need none. */
    static Optional<String> missing(String system, Map<String, String> environment) {
        boolean needsX11 =
                System.getProperty("glass.platform") == null
                        && system.toLowerCase(Locale.ROOT).contains("linux");
        if (!needsX11 || !environment.getOrDefault("DISPLAY", "").isBlank()) {
            return Optional.empty();
        }
        return Optional.of(
                Messages.of(
                        environment.getOrDefault("WAYLAND_DISPLAY", "").isBlank()
                                ? "display.unset"
                                : "display.wayland"));
    }

    /** Why the toolkit did not start. */
    static String why(Throwable error, String display) {
        String all =
                Stream.iterate(error, Objects::nonNull, Throwable::getCause)
                        .map(Throwable::getMessage)
                        .collect(Collectors.joining(" "));
        if (all.contains("open DISPLAY")) {
            return Messages.of("display.silent", display);
        }
        if (all.contains("GTK")) {
            return Messages.of("display.gtk");
        }
        if (all.contains("no glass in java.library.path")) {
            return Messages.of("display.glass");
        }
        return Messages.of("display.other", all);
    }
}
