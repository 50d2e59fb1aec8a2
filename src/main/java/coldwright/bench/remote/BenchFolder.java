package coldwright.bench.remote;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;

/** The folder that each bench's process has to itself: made by the program, deleted by either. */
public final class BenchFolder {
    private static final String PREFIX = "coldwright-bench-";

    private BenchFolder() {}

    /**
     * Makes an empty one in the system's temporary folder.
     *
     * @return its path
     * @throws IOException if none can be made there
     */
    public static Path create() throws IOException {
        try {
            return Files.createTempDirectory(PREFIX);
        } catch (IOException e) {
            throw new IOException(
                    "no folder can be made for it in %s; look whether the disk there is full"
                            .formatted(System.getProperty("java.io.tmpdir")),
                    e);
        }
    }

    /**
     * Whether a path may be one of these folders. Both processes are told the path by the other or
     * by their command line, and delete nothing that was not made here.
     *
     * @param folder a path
     * @return whether its name is a bench folder's
     */
    static boolean isOne(Path folder) {
        Path name = folder.getFileName();
        return name != null && name.toString().startsWith(PREFIX);
    }

    /**
     * Deletes such a folder with all in it; follows no link, and leaves what can't be deleted and
     * what is no bench folder.
     *
     * @param folder the folder
     */
    public static void delete(Path folder) {
        if (!isOne(folder)) {
            return;
        }
        try {
            Files.walkFileTree(folder, new FolderDeletion());
        } catch (IOException e) {
            // the operating system clears its temporary folder
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
