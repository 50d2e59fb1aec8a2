package coldwright.workbook;

import coldwright.text.WholeFile;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The one door through which a window writes files of the data folder. It remembers what this
 * window has seen of each file, that is, last read or wrote, and compares that with the file before
 * it writes. What it has not seen is copied into the folder {@value #COPIES} first.
 *
 * <p>A state of a file is known by its mark, the SHA-256 of its bytes.
 */
public final class KeptFiles {
    /** The folder in the data folder where copies are. */
    public static final String COPIES = "other-window";

    private static final String NO_FILE = "";

    private final Path folder;
    private final Map<Path, String> seen = new HashMap<>();
    private final Map<String, Path> copies = new HashMap<>();
    private Consumer<Copied> listener = copied -> {};

    KeptFiles(Path folder) {
        this.folder = folder;
    }

    /** Calls a listener on the writing thread whenever something was copied. */
    synchronized void whenCopied(Consumer<Copied> is) {
        listener = is;
    }

    /**
     * The mark of a file as it is now. Take it before you read the file: if another window writes
     * in between, the file counts as not seen.
     *
     * @param file which file
     * @return its mark; empty if there is no such plain file
     * @throws IOException if it can't be read
     */
    public String mark(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return NO_FILE;
        }
        MessageDigest digest = sha256();
        try (InputStream in = Files.newInputStream(file);
                DigestOutputStream out =
                        new DigestOutputStream(OutputStream.nullOutputStream(), digest)) {
            in.transferTo(out);
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static String markOf(byte[] bytes) {
        return HexFormat.of().formatHex(sha256().digest(bytes));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java has SHA-256", e);
        }
    }

    /**
     * This window has read a file and shows what is in it.
     *
     * @param file which file
     * @param mark its mark from before it was read
     */
    public synchronized void saw(Path file, String mark) {
        seen.put(file, mark);
    }

    /**
     * Whether a file holds what this window has neither read nor written.
     *
     * @param file which file
     * @return false if it is as this window saw it last, or missing
     * @throws IOException if it can't be read
     */
    public synchronized boolean isUnseen(Path file) throws IOException {
        String now = mark(file);
        return !now.equals(NO_FILE) && !now.equals(seen.get(file));
    }

    /** Everything was moved away: what was seen is seen no longer. */
    synchronized void forgetAll() {
        seen.clear();
    }

    /**
     * Writes a file whole or not at all. What it holds unseen is copied first, once.
     *
     * @param file which; its folder is made if it is missing
     * @param text its new text
     * @param what what it is about, for the sentence on the copy
     * @throws IOException if the copy or the file can't be written; then the file is as it was
     */
    public void write(Path file, String text, String what) throws IOException {
        write(file, text, what, NO_FILE);
    }

    /** The same; nothing of the state with the mark {@code merged} is missing in the new text. */
    synchronized void write(Path file, String text, String what, String merged) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        String next = markOf(bytes);
        Files.createDirectories(file.getParent());
        String now = mark(file);
        Optional<Path> copy = Optional.empty();
        if (isUnseen(file) && !now.equals(merged) && !now.equals(next)) {
            copy = copy(file, now);
        }
        WholeFile.writePrivate(file, bytes);
        seen.put(file, next);
        copy.ifPresent(to -> listener.accept(new Copied(what, to)));
    }

    private Optional<Path> copy(Path file, String mark) throws IOException {
        String once = file + " " + mark;
        if (copies.containsKey(once)) {
            return Optional.of(copies.get(once));
        }
        Path to = DatedFiles.copy(file, folder.resolve(COPIES), LocalDateTime.now());
        copies.put(once, to);
        return Optional.of(to);
    }

    /**
     * Moves a damaged file to {@code NAME.damaged-YYYYMMDD-HHMMSS} beside it; never over another.
     *
     * @param file which
     * @return where it is now
     * @throws IOException if it can't be moved
     */
    public Path setAside(Path file) throws IOException {
        return DatedFiles.setAside(file, LocalDateTime.now());
    }

    /**
     * Renames a file; never over another.
     *
     * @param file which
     * @param name its new name, with a number behind it if that is taken
     * @throws IOException if it can't be renamed
     */
    public void rename(Path file, String name) throws IOException {
        Files.move(file, DatedFiles.free(file.resolveSibling(name)));
    }
}
