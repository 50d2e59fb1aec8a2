package coldwright.bench.remote;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;

/** The private folder of a bench's process: created by the program, deleted by either side. */
public final class BenchFolder {
    private static final String PREFIX = "coldwright-bench-";

    private BenchFolder() {}

    /**
     * Creates an empty bench folder in the system's temporary folder.
     *
     * @throws IOException if it can't be created
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
     * Whether a path has a bench folder's name. Both processes get the path from the other or from
     * the command line, and must delete nothing that wasn't created here.
     */
    static boolean isOne(Path folder) {
        Path name = folder.getFileName();
        return name != null && name.toString().startsWith(PREFIX);
    }

    /**
     * Deletes a bench folder and its contents. Follows no links; ignores files that can't be
     * deleted and any other folder.
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
