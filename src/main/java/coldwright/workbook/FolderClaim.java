package coldwright.workbook;

import static coldwright.workbook.entry.WorkbookText.text;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * Whether this window owns a folder, and why not. The system releases the folder's lock when the
 * program ends.
 */
final class FolderClaim implements AutoCloseable {
    /**
     * On some systems closing any channel of a file releases all locks of the program on it, so no
     * second channel may be opened while the file is locked.
     */
    private static final Set<Path> HELD = new HashSet<>();

    private final DataFolder folder;
    private volatile Optional<Path> owned = Optional.empty();
    private volatile Optional<String> notice = Optional.empty();
    private FileChannel channel;

    FolderClaim(DataFolder folder) {
        this.folder = folder;
    }

    /** Takes the folder if it is free; returns whether this window owns it. */
    boolean take() {
        notice = folder.make();
        if (notice.isEmpty()) {
            try {
                owned = locked(folder.path().toRealPath());
                notice = holds() ? Optional.empty() : Optional.of(text("lock.taken"));
            } catch (IOException e) {
                notice = Optional.of(WorkbookFiles.sentence(text("lock.failed"), e));
            }
        }
        return holds();
    }

    /** Locks a folder if it is free. On a system without locks everybody gets it. */
    private Optional<Path> locked(Path real) throws IOException {
        synchronized (HELD) {
            if (HELD.contains(real)) {
                return Optional.empty();
            }
            channel =
                    FileChannel.open(
                            real.resolve("lock"),
                            StandardOpenOption.CREATE,
                            StandardOpenOption.WRITE);
            boolean free;
            try {
                free = channel.tryLock() != null;
            } catch (OverlappingFileLockException e) {
                free = false;
            } catch (IOException e) {
                channel.close();
                free = true;
            }
            if (!free) {
                channel.close();
                return Optional.empty();
            }
            HELD.add(real);
            return Optional.of(real);
        }
    }

    boolean holds() {
        return owned.isPresent();
    }

    /** One sentence for the user; empty if this window owns the folder. */
    Optional<String> notice() {
        return notice;
    }

    @Override
    public void close() {
        synchronized (HELD) {
            owned.ifPresent(
                    real -> {
                        try {
                            channel.close();
                        } catch (IOException e) {
                            System.getLogger("coldwright.workbook")
                                    .log(System.Logger.Level.DEBUG, "the lock did not close", e);
                        }
                        HELD.remove(real);
                    });
        }
        owned = Optional.empty();
        notice = Optional.of(text("closed"));
    }
}
