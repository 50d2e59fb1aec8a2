package coldwright.bench.remote;

import coldwright.text.TemporaryFolders;

import java.io.IOException;
import java.nio.file.Path;

/** The private folder of a bench's process: created by the program, deleted by either side. */
public final class BenchFolder {
    private static final String PURPOSE = "bench";

    private BenchFolder() {}

    /**
     * Creates an empty bench folder in the system's temporary folder.
     *
     * @throws IOException if it can't be created
     */
    public static Path create() throws IOException {
        try {
            return TemporaryFolders.create(PURPOSE);
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
        return TemporaryFolders.isFor(PURPOSE, folder);
    }

    /** Deletes a bench folder and its contents, and no other folder. */
    public static void delete(Path folder) {
        if (isOne(folder)) {
            TemporaryFolders.delete(folder);
        }
    }
}
