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
        Path to = free(file.resolveSibling(file.getFileName() + ".damaged-" + STAMP.format(when)));
        return Files.move(file, to);
    }

    /**
     * Copies a file to {@code NAME-YYYYMMDD-HHMMSS.ENDING} in a folder, created if missing, without
     * overwriting, and returns the copy, flushed to disk.
     */
    static Path copy(Path file, Path folder, LocalDateTime when) throws IOException {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.') < 0 ? name.length() : name.lastIndexOf('.');
        String stem = name.substring(0, dot) + "-" + STAMP.format(when);
        String ending = name.substring(dot);
        Files.createDirectories(folder);
        Path to = folder.resolve(stem + ending);
        for (int i = 2; Files.exists(to); i++) {
            to = folder.resolve(stem + "-" + i + ending);
        }
        WholeFile.writePrivate(to, Files.readAllBytes(file));
        return to;
    }

    /** Creates a new folder {@code put-away-YYYYMMDD-HHMMSS} in another. */
    static Path newDatedFolder(Path in, LocalDateTime when) throws IOException {
        return Files.createDirectory(free(in.resolve("put-away-" + STAMP.format(when))));
    }

    /** The path itself, or with a number appended if it exists. */
    static Path free(Path wanted) {
        Path to = wanted;
        for (int i = 2; Files.exists(to); i++) {
            to = wanted.resolveSibling(wanted.getFileName() + "-" + i);
        }
        return to;
    }
}
