package coldwright.bench.remote;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

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
     * Deletes a bench folder and its contents. Follows no links, and ignores files that can't be
     * deleted. Deletes nothing that wasn't created here: each side gets the path from the other.
     */
    public static void delete(Path folder) {
        Path name = folder.getFileName();
        if (name == null || !name.toString().startsWith(PREFIX)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).forEach(one -> one.toFile().delete());
        } catch (IOException | UncheckedIOException e) {
            // the operating system clears its temporary folder
        }
    }
}
