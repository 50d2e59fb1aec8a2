package coldwright.workbook;

import static coldwright.workbook.entry.WorkbookText.text;

import coldwright.text.WholeFile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The folder for a user's data; it may not exist yet. */
public record DataFolder(Path path) {
    /** The system property that sets another folder. */
    public static final String PROPERTY = "coldwright.data";

    private static final Set<PosixFilePermission> OWNERS =
            PosixFilePermissions.fromString("rwx------");

    /** The folder in the system property {@value #PROPERTY}, or else the system's usual one. */
    public static DataFolder usual() {
        String named = System.getProperty(PROPERTY, "");
        return named.isBlank()
                ? of(
                        System.getProperty("os.name", ""),
                        System.getProperty("user.home", ""),
                        System.getenv())
                : new DataFolder(Path.of(named).toAbsolutePath());
    }

    /** The usual folder of a system, from its name, the user's home and the environment. */
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

    /** The XDG specification ignores relative paths. */
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
     * Nobody else may look into the folder, where the system supports that. A folder that is there
     * already is closed to others only if it has the program's name: another may be shared.
     */
    private void makePrivate() throws IOException {
        if (!Files.exists(path)
                && path.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.createDirectories(path, PosixFilePermissions.asFileAttribute(OWNERS));
        } else {
            Files.createDirectories(path);
        }
        PosixFileAttributeView view =
                Files.getFileAttributeView(path, PosixFileAttributeView.class);
        boolean own = path.endsWith("coldwright") || path.endsWith("Coldwright");
        if (view != null && own && !OWNERS.containsAll(view.readAttributes().permissions())) {
            view.setPermissions(OWNERS);
        }
    }

    /**
     * Creates the folder if it is missing, and tests whether it is writable. Returns why it can't
     * be used, one sentence; empty if it can.
     */
    Optional<String> make() {
        try {
            makePrivate();
            Files.delete(Files.createTempFile(path, "try-", WholeFile.PART));
            return Optional.empty();
        } catch (IOException | UnsupportedOperationException | SecurityException e) {
            return Optional.of(text("folder.unusable", path.toString(), PROPERTY));
        }
    }
}
