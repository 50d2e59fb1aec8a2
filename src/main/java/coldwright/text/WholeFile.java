package coldwright.text;

import coldwright.words.Phrase;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;

/** Writes files whole or not at all: until the write is complete, a file keeps its old content. */
public final class WholeFile {
    /** The extension of a file that is being written. */
    public static final String PART = ".part";

    private static final System.Logger LOGGER = System.getLogger("coldwright.text");

    /** No write takes this long; an older part file was left by a program that was killed. */
    private static final Duration ABANDONED = Duration.ofMinutes(1);

    private static final int MOST_TRIES = 5;
    private static final Duration BETWEEN_TRIES = Duration.ofMillis(20);

    /** Space that a file system needs besides the bytes of a file, with room to spare. */
    private static final long NAME_AND_PLACE_BYTES = 8192;

    private WholeFile() {}

    /**
     * Writes a file with the permissions of its folder; one that exists is replaced, but a device
     * or a pipe is written to. If it can't be written, it is unchanged.
     */
    public static void write(Path file, byte[] content) throws UnwrittenException {
        try {
            Path real = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
            if (Files.isDirectory(real)) {
                throw new UnwrittenException(Reason.A_FOLDER, file, null);
            }
            if (Files.exists(real) && !Files.isRegularFile(real)) {
                Files.write(real, content);
                return;
            }
            Path part = real.resolveSibling("." + UUID.randomUUID() + PART);
            write(part, content, real, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (UnwrittenException e) {
            throw e;
        } catch (IOException e) {
            throw new UnwrittenException(reason(file, content.length), file, e);
        }
    }

    /**
     * Writes a file that only the user may read, where the system supports that, into a folder that
     * exists. If it can't be written, it is unchanged.
     */
    public static void writePrivate(Path file, byte[] content) throws IOException {
        Path part = Files.createTempFile(file.getParent(), file.getFileName() + "-", PART);
        write(part, content, file, StandardOpenOption.WRITE);
    }

    private static void write(Path part, byte[] content, Path to, StandardOpenOption... how)
            throws IOException {
        try {
            try (FileChannel out = FileChannel.open(part, how)) {
                ByteBuffer bytes = ByteBuffer.wrap(content);
                while (bytes.hasRemaining()) {
                    out.write(bytes);
                }
                out.force(true);
            }
            replace(part, to);
            forceFolder(to.getParent());
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** Makes the new name survive a power cut, where the system supports that. */
    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            LOGGER.log(System.Logger.Level.DEBUG, "a folder can't be forced to disk", e);
        }
    }

    /** Deletes part files that killed programs left in a folder. */
    public static void sweep(Path folder) {
        Instant old = Instant.now().minus(ABANDONED);
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(one -> one.toString().endsWith(PART)).toList()) {
                if (Files.getLastModifiedTime(file).toInstant().isBefore(old)) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (IOException e) {
            LOGGER.log(System.Logger.Level.DEBUG, "a folder can't be swept", e);
        }
    }

    /** Tries a few times: on some systems a reader keeps a file busy for a moment. */
    private static void replace(Path part, Path file) throws IOException {
        for (int tries = 1; ; tries++) {
            try {
                Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
                return;
            } catch (AtomicMoveNotSupportedException | FileAlreadyExistsException e) {
                Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
                return;
            } catch (AccessDeniedException e) {
                if (tries == MOST_TRIES) {
                    throw e;
                }
                LockSupport.parkNanos(BETWEEN_TRIES.toNanos());
            }
        }
    }

    private static Reason reason(Path file, long bytes) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            return Reason.NO_FOLDER;
        }
        if (!Files.isWritable(folder)) {
            return Reason.NOT_ALLOWED;
        }
        try {
            long room = Files.getFileStore(folder).getUsableSpace();
            return room < bytes + NAME_AND_PLACE_BYTES ? Reason.NO_ROOM : Reason.OTHER;
        } catch (IOException e) {
            return Reason.OTHER;
        }
    }

    /** Reasons why a file can't be written. */
    public enum Reason {
        A_FOLDER,
        NO_FOLDER,
        NOT_ALLOWED,
        NO_ROOM,
        OTHER;

        /** The reason and its fix, such as {@code its disk is full; make room or give another}. */
        public String words() {
            return Phrase.of("text", "Reason." + this).shown();
        }
    }

    /** A file was not written. */
    public static final class UnwrittenException extends IOException {
        private static final long serialVersionUID = 1;

        private final Reason reason;

        UnwrittenException(Reason reason, Path file, IOException cause) {
            super(Phrase.of("text", "unwritten", file.toString(), reason.words()).shown(), cause);
            this.reason = reason;
        }

        public Reason reason() {
            return reason;
        }
    }
}
