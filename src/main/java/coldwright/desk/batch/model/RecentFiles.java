package coldwright.desk.batch.model;

import coldwright.workbook.Workbook;

import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The files that the cook opened or saved last, stored as one list in the data folder. */
final class RecentFiles {
    static final String FILE = "recent.txt";
    private static final int MOST = 6;

    private final Path folder;
    private final Workbook workbook;
    private final ObservableList<Path> files = FXCollections.observableArrayList();
    private final ObservableList<Path> shown = FXCollections.unmodifiableObservableList(files);

    RecentFiles(Path folder, Workbook workbook) {
        this.folder = folder;
        this.workbook = workbook;
    }

    /** The latest first; not to be changed. */
    ObservableList<Path> files() {
        return shown;
    }

    /** Puts a file first, on the window's thread, and returns the list to be written. */
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

    /** Writes the list, followed by files that another window has added since. */
    void write(String text) throws IOException {
        Path file = folder.resolve(FILE);
        if (workbook.keeps()) {
            String all =
                    workbook.files().isUnseen(file)
                            ? Stream.concat(text.lines(), read().stream().map(Path::toString))
                                    .distinct()
                                    .limit(MOST)
                                    .collect(Collectors.joining("\n"))
                            : text;
            workbook.files().write(file, all, FILE);
        }
    }

    List<Path> read() throws IOException {
        Path file = folder.resolve(FILE);
        if (!Files.exists(file)) {
            return List.of();
        }
        String mark = workbook.files().mark(file);
        List<Path> read =
                Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                        .filter(line -> !line.isBlank() && line.indexOf('\0') < 0)
                        .limit(MOST)
                        .map(Path::of)
                        .toList();
        workbook.files().saw(file, mark);
        return read;
    }
}
