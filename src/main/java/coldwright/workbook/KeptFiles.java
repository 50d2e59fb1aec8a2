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
 * The only way for a window to write files of the data folder. It remembers the state of each file
 * that this window last read or wrote, and compares before each write. An unseen state is first
 * copied into the folder {@value #COPIES}.
 *
 * <p>The mark of a state is the SHA-256 of the file's bytes.
 */
public final class KeptFiles {
    /** The folder for copies in the data folder. */
    public static final String COPIES = "other-window";

    private static final String NO_FILE = "";

    private final Path folder;
    private final Map<Path, String> seen = new HashMap<>();
    private final Map<String, Path> copies = new HashMap<>();
    private Consumer<Copied> listener = copied -> {};

    KeptFiles(Path folder) {
        this.folder = folder;
    }

    /** Calls a listener on the writing thread after each copy. */
    synchronized void whenCopied(Consumer<Copied> is) {
        listener = is;
    }

    /**
     * The current mark of a file; empty if there is no such regular file. Take it before you read
     * the file: if another window writes in between, the file counts as unseen.
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

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java has SHA-256", e);
        }
    }

    /** Notes that this window shows a file's content; the mark is from before it was read. */
    public synchronized void saw(Path file, String mark) {
        seen.put(file, mark);
    }

    /** Whether a file has content that this window neither read nor wrote; false if missing. */
    public synchronized boolean isUnseen(Path file) throws IOException {
        String now = mark(file);
        return !now.equals(NO_FILE) && !now.equals(seen.get(file));
    }

    /** Forgets all marks after everything was moved away. */
    synchronized void forgetAll() {
        seen.clear();
    }

    /**
     * Writes a file whole or not at all, and creates its folder if missing. Unseen content is
     * copied first, once; {@code what} is the subject in the message about that. If the copy or the
     * file can't be written, the file is as it was.
     */
    public void write(Path file, String text, String what) throws IOException {
        write(file, text, what, NO_FILE);
    }

    /** The same; the new text includes everything of the state with the mark {@code merged}. */
    synchronized void write(Path file, String text, String what, String merged) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        String next = HexFormat.of().formatHex(sha256().digest(bytes));
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

    /** Moves a damaged file to {@code NAME.damaged-YYYYMMDD-HHMMSS}, never overwriting. */
    public Path setAside(Path file) throws IOException {
        return DatedFiles.setAside(file, LocalDateTime.now());
    }

    /** Renames a file without overwriting: a number is appended to the name if it exists. */
    public void rename(Path file, String name) throws IOException {
        Files.move(file, DatedFiles.free(file.getParent(), name, ""));
    }
}
