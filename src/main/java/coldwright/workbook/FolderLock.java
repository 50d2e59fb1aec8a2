package coldwright.workbook;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** The lock of the one window that owns a folder; the system releases it when the program ends. */
final class FolderLock implements AutoCloseable {
    /**
     * On some systems closing any channel of a file releases all locks of the program on it, so no
     * second channel may be opened while the file is locked.
     */
    private static final Set<Path> HELD = new HashSet<>();

    private final Path folder;
    private final Optional<FileChannel> channel;

    private FolderLock(Path folder, Optional<FileChannel> channel) {
        this.folder = folder;
        this.channel = channel;
    }

    /** Takes the lock if it is free. On a system without locks everybody gets it. */
    static Optional<FolderLock> take(Path folder) throws IOException {
        synchronized (HELD) {
            Path real = folder.toRealPath();
            if (HELD.contains(real)) {
                return Optional.empty();
            }
            FileChannel channel =
                    FileChannel.open(
                            real.resolve("lock"),
                            StandardOpenOption.CREATE,
                            StandardOpenOption.WRITE);
            Optional<FolderLock> lock = take(real, channel);
            lock.ifPresent(held -> HELD.add(real));
            return lock;
        }
    }

    private static Optional<FolderLock> take(Path real, FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return Optional.of(new FolderLock(real, Optional.of(channel)));
            }
        } catch (OverlappingFileLockException e) {
            channel.close();
            return Optional.empty();
        } catch (IOException e) {
            channel.close();
            return Optional.of(new FolderLock(real, Optional.empty()));
        }
        channel.close();
        return Optional.empty();
    }

    @Override
    public void close() throws IOException {
        synchronized (HELD) {
            if (channel.isPresent()) {
                channel.get().close();
            }
            HELD.remove(folder);
        }
    }
}
