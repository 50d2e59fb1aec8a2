package coldwright.bench.process;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;

/** The folder that each bench's process has to itself. */
final class Folders {
    private Folders() {}

    static Path create() throws IOException {
        return Files.createTempDirectory("coldwright-bench-");
    }

    /** Deletes a folder with all in it; follows no link; leaves what can't be deleted. */
    static void delete(Path folder) {
        try {
            Files.walkFileTree(folder, new Deletion());
        } catch (IOException e) {
            // the operating system clears its temporary folder
        }
    }

    private static final class Deletion extends SimpleFileVisitor<Path> {
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
