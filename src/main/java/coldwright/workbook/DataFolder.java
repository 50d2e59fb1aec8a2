package coldwright.workbook;

import coldwright.text.WholeFile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The folder where a user's data is kept.
 *
 * @param path the folder; it need not exist yet
 */
public record DataFolder(Path path) {
    /** The system property that names another folder. */
    public static final String PROPERTY = "coldwright.data";

    /**
     * The usual folder of this user on this system.
     *
     * @return what the system property {@value #PROPERTY} names, else what the system's custom is
     */
    public static DataFolder usual() {
        String named = System.getProperty(PROPERTY, "");
        return named.isBlank()
                ? of(
                        System.getProperty("os.name", ""),
                        System.getProperty("user.home", ""),
                        System.getenv())
                : new DataFolder(Path.of(named).toAbsolutePath());
    }

    /** The custom of a system: its name, the user's home, the environment. */
    static DataFolder of(String system, String home, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        Path user = Path.of(home);
        if (name.startsWith("windows")) {
            return new DataFolder(
                    absolute(environment.get("APPDATA"))
                            .orElse(user.resolve("AppData").resolve("Roaming"))
                            .resolve("Coldwright"));
        }
        if (name.startsWith("mac")) {
            return new DataFolder(
                    user.resolve("Library").resolve("Application Support").resolve("Coldwright"));
        }
        return new DataFolder(
                absolute(environment.get("XDG_DATA_HOME"))
                        .orElse(user.resolve(".local").resolve("share"))
                        .resolve("coldwright"));
    }

    /** The XDG rules say that a relative path is to be ignored. */
    private static Optional<Path> absolute(String text) {
        try {
            return Optional.ofNullable(text)
                    .filter(words -> !words.isBlank())
                    .map(Path::of)
                    .filter(Path::isAbsolute);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /**
     * Makes the folder where it is missing, and tries whether it can be written to.
     *
     * @return why it can't be used, one sentence; empty if it can
     */
    Optional<String> make() {
        try {
            Files.createDirectories(path);
            Files.delete(Files.createTempFile(path, "try-", WholeFile.PART));
            return Optional.empty();
        } catch (IOException | UnsupportedOperationException | SecurityException e) {
            return Optional.of(
                    "what you do is not kept, for the folder %s can't be made or written to; look whether you may, or name another with -D%s=FOLDER"
                            .formatted(path, PROPERTY));
        }
    }
}
