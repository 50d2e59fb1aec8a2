package coldwright.workbook;

import coldwright.text.WholeFile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;

/** Moves and copies files to names with a date, without overwriting. */
final class DatedFiles {
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss");

    private DatedFiles() {}

    /**
     * Moves a file to {@code NAME.damaged-YYYYMMDD-HHMMSS}, never overwriting; returns the path.
     */
    static Path setAside(Path file, LocalDateTime when) throws IOException {
        String name = file.getFileName() + ".damaged-" + STAMP.format(when);
        return Files.move(file, free(file.getParent(), name, ""));
    }

    /**
     * Copies a file to {@code NAME-YYYYMMDD-HHMMSS.ENDING} in a folder, created if missing, without
     * overwriting, and returns the copy, flushed to disk.
     */
    static Path copy(Path file, Path folder, LocalDateTime when) throws IOException {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.') < 0 ? name.length() : name.lastIndexOf('.');
        Files.createDirectories(folder);
        Path to =
                free(
                        folder,
                        name.substring(0, dot) + "-" + STAMP.format(when),
                        name.substring(dot));
        WholeFile.writePrivate(to, Files.readAllBytes(file));
        return to;
    }

    /** Creates a new folder {@code put-away-YYYYMMDD-HHMMSS} in another. */
    static Path newDatedFolder(Path in, LocalDateTime when) throws IOException {
        return Files.createDirectory(free(in, "put-away-" + STAMP.format(when), ""));
    }

    /** A path in a folder, with a number at the end of its stem if it exists. */
    static Path free(Path folder, String stem, String ending) {
        Path to = folder.resolve(stem + ending);
        for (int i = 2; Files.exists(to); i++) {
            to = folder.resolve(stem + "-" + i + ending);
        }
        return to;
    }
}
