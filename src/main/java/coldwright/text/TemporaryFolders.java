package coldwright.text;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Folders in the system's temporary folder. The name of each has the ID of the process that made
 * it, so that a later process can delete it if that one was killed.
 */
public final class TemporaryFolders {
    private static final Pattern NAME = Pattern.compile("coldwright-(.+)-p(\\d+)-\\d+");

    /** Nobody looks at these once their process is gone. */
    private static final Set<String> OF_PROCESSES = Set.of("bench", "fonts", "toolkit");

    /** How long others are kept, such as the figures of a walk. */
    private static final Duration KEPT = Duration.ofDays(1);

    private TemporaryFolders() {}

    /** Creates an empty folder of this process for a purpose, such as {@code bench}. */
    public static Path create(String purpose) throws IOException {
        return Files.createTempDirectory(
                "coldwright-" + purpose + "-p" + ProcessHandle.current().pid() + "-");
    }

    /** Whether a path has the name of a folder for a purpose. */
    public static boolean isFor(String purpose, Path folder) {
        Matcher name = NAME.matcher(String.valueOf(folder.getFileName()));
        return name.matches() && name.group(1).equals(purpose);
    }

    /** Deletes this user's folders of processes that are gone; figures only after a day. */
    public static void sweep() {
        sweep(Path.of(System.getProperty("java.io.tmpdir")));
    }

    static void sweep(Path temporary) {
        try (DirectoryStream<Path> all = Files.newDirectoryStream(temporary, "coldwright-*")) {
            for (Path folder : all) {
                if (isLeftBehind(folder)) {
                    delete(folder);
                }
            }
        } catch (IOException e) {
            // the operating system clears its temporary folder
        }
    }

    private static boolean isLeftBehind(Path folder) throws IOException {
        Matcher name = NAME.matcher(folder.getFileName().toString());
        if (!name.matches() || ProcessHandle.of(Long.parseLong(name.group(2))).isPresent()) {
            return false;
        }
        Instant oldest = Instant.now().minus(KEPT);
        return Files.getOwner(folder).getName().endsWith(System.getProperty("user.name"))
                && (OF_PROCESSES.contains(name.group(1))
                        || Files.getLastModifiedTime(folder).toInstant().isBefore(oldest));
    }

    /** Deletes a folder and its contents. Follows no links; ignores what can't be deleted. */
    public static void delete(Path folder) {
        try {
            Files.walkFileTree(folder, new FolderDeletion());
        } catch (IOException e) {
            // the next sweep tries again
        }
    }

    private static final class FolderDeletion extends SimpleFileVisitor<Path> {
        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
                throws IOException {
            Files.deleteIfExists(file);
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult postVisitDirectory(Path visited, IOException e) throws IOException {
            Files.deleteIfExists(visited);
            return FileVisitResult.CONTINUE;
        }
    }
}
