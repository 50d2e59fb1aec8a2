package coldwright.desk.batch.model;

import coldwright.batch.BatchFileException;
import coldwright.batch.BatchLineage;
import coldwright.batch.RecipeFile;
import coldwright.batch.RecipeFileReader;
import coldwright.desk.messages.Messages;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.stream.Stream;

/**
 * A recipe file as found on disk.
 *
 * @param file the file
 * @param mark its mark from before it was read
 * @param read its content
 */
record FoundBatch(Path file, String mark, RecipeFile read) {
    private static final int MOST_BYTES = 1_000_000;

    static RecipeFile read(Path file) throws BatchFileException, IOException {
        if (Files.size(file) > MOST_BYTES) {
            throw new IOException(Messages.of("batch.file.too-long"));
        }
        String text = Files.readString(file, StandardCharsets.UTF_8);
        return RecipeFileReader.read(String.valueOf(file.getFileName()), text);
    }

    int number() {
        return read.lineage().number();
    }

    /** A number that no batch on the page or in the folder has. */
    static int free(Collection<BatchModel> shown, Collection<FoundBatch> found) {
        return 1
                + Stream.concat(
                                shown.stream().map(one -> one.lineage().get()),
                                found.stream().map(one -> one.read().lineage()))
                        .mapToInt(BatchLineage::number)
                        .max()
                        .orElse(0);
    }
}
