package coldwright.batch;

import coldwright.text.TextFault;
import coldwright.text.TextFile;

import java.nio.file.Path;

/** Opens a recipe file on disk. */
public final class RecipeFileOpener {
    /** A long batch has 5,000 bytes. */
    private static final int MOST_BYTES = 1_000_000;

    private RecipeFileOpener() {}

    /**
     * Reads a recipe file.
     *
     * @throws BatchFileException at the first error
     */
    public static RecipeFile read(Path file) throws BatchFileException {
        TextFile read = TextFile.read(file, MOST_BYTES);
        if (!read.faults().isEmpty() || read.text().isEmpty()) {
            TextFault first = read.faults().get(0);
            throw new BatchFileException(file.toString(), first.line(), first.words());
        }
        return RecipeFileReader.read(file.toString(), read.text().get());
    }
}
