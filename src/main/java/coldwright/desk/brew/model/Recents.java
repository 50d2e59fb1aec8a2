package coldwright.desk.brew.model;

import coldwright.workbook.AtomicFile;

import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;

/** The cook's files that were opened or saved last, kept as one list in the shelf's folder. */
final class Recents {
    static final String FILE = "recent.txt";
    private static final int MOST = 6;

    private final Path folder;
    private final BooleanSupplier may;
    private final ObservableList<Path> files = FXCollections.observableArrayList();
    private final ObservableList<Path> shown = FXCollections.unmodifiableObservableList(files);

    Recents(Path folder, BooleanSupplier may) {
        this.folder = folder;
        this.may = may;
    }

    /** The latest first; not to be changed. */
    ObservableList<Path> files() {
        return shown;
    }

    /** Puts a file first, on the window's thread, and gives the list to be written. */
    String plus(Path file) {
        Path whole = file.toAbsolutePath();
        files.remove(whole);
        files.add(0, whole);
        while (files.size() > MOST) {
            files.remove(files.size() - 1);
        }
        return String.join("\n", files.stream().map(Path::toString).toList());
    }

    void show(List<Path> read) {
        files.setAll(read);
    }

    void write(String text) throws IOException {
        if (may.getAsBoolean()) {
            Files.createDirectories(folder);
            AtomicFile.write(folder.resolve(FILE), text);
        }
    }

    List<Path> read() throws IOException {
        Path file = folder.resolve(FILE);
        if (!Files.exists(file)) {
            return List.of();
        }
        return Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                .filter(line -> !line.isBlank() && line.indexOf('\0') < 0)
                .limit(MOST)
                .map(Path::of)
                .toList();
    }
}
