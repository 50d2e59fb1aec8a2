package coldwright.workbook;

import coldwright.text.WholeFile;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.stream.Stream;

/**
 * Files that are written whole or not at all, and set aside rather than overwritten. {@link
 * KeptFiles} is the door to it.
 */
final class AtomicFile {
    /** No write takes this long; what is older was left by a program that was ended. */
    private static final Duration ABANDONED = Duration.ofMinutes(1);

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss");

    private AtomicFile() {}

    /**
     * Writes a file. Until the last moment it has its former content, then the new one.
     *
     * @param file which; its folder must be there
     * @param content its new content
     * @throws IOException if it can't; then it keeps its former content
     */
    static void write(Path file, byte[] content) throws IOException {
        WholeFile.writePrivate(file, content);
        forceFolder(file.getParent());
    }

    /** Makes the new name last through a power cut, where the system can. */
    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            System.getLogger("coldwright.workbook")
                    .log(System.Logger.Level.DEBUG, "a folder can't be forced to disk", e);
        }
    }

    /**
     * Moves a file to {@code NAME.damaged-YYYYMMDD-HHMMSS} beside it; never over another.
     *
     * @param file which
     * @param when the date and time for its name
     * @return where it is now
     * @throws IOException if it can't be moved
     */
    static Path setAside(Path file, LocalDateTime when) throws IOException {
        Path to = free(file.resolveSibling(file.getFileName() + ".damaged-" + STAMP.format(when)));
        return Files.move(file, to);
    }

    /**
     * Copies a file to {@code NAME-YYYYMMDD-HHMMSS.ENDING} in a folder; never over another.
     *
     * @param file which
     * @param folder where to; made if it is missing
     * @param when the date and time for its name
     * @return the copy, which is on the disk
     * @throws IOException if it can't be copied
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
        write(to, Files.readAllBytes(file));
        return to;
    }

    /** A folder in another, {@code put-away-YYYYMMDD-HHMMSS}, that was not there before. */
    static Path newDatedFolder(Path in, LocalDateTime when) throws IOException {
        return Files.createDirectory(free(in.resolve("put-away-" + STAMP.format(when))));
    }

    /** The path itself, or one with a number behind it if it is taken. */
    static Path free(Path wanted) {
        Path to = wanted;
        for (int i = 2; Files.exists(to); i++) {
            to = wanted.resolveSibling(wanted.getFileName() + "-" + i);
        }
        return to;
    }

    /** Takes away what programs that were ended left half-written in a folder. */
    static void sweep(Path folder) {
        Instant old = Instant.now().minus(ABANDONED);
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file :
                    files.filter(one -> one.toString().endsWith(WholeFile.PART)).toList()) {
                if (Files.getLastModifiedTime(file).toInstant().isBefore(old)) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (IOException e) {
            System.getLogger("coldwright.workbook")
                    .log(System.Logger.Level.DEBUG, "a folder can't be swept", e);
        }
    }
}
