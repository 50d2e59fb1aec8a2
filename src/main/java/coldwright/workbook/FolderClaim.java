package coldwright.workbook;

import java.io.IOException;
import java.util.Optional;

/** Whether this window owns a folder, and why not. */
final class FolderClaim implements AutoCloseable {
    private static final String TAKEN =
            "another Coldwright window saves your work; changes here are not saved until it is closed";

    private final DataFolder folder;
    private volatile Optional<FolderLock> lock = Optional.empty();
    private volatile Optional<String> notice = Optional.empty();

    FolderClaim(DataFolder folder) {
        this.folder = folder;
    }

    /** Takes the folder if it is free; returns whether this window owns it. */
    boolean take() {
        notice = folder.make();
        if (notice.isEmpty()) {
            try {
                lock = FolderLock.take(folder.path());
                notice = lock.isPresent() ? Optional.empty() : Optional.of(TAKEN);
            } catch (IOException e) {
                notice = Optional.of(WorkbookFiles.sentence("can't lock the workbook", e));
            }
        }
        return holds();
    }

    boolean holds() {
        return lock.isPresent();
    }

    /** One sentence for the user; empty if this window owns the folder. */
    Optional<String> notice() {
        return notice;
    }

    @Override
    public void close() {
        if (lock.isPresent()) {
            try {
                lock.get().close();
            } catch (IOException e) {
                System.getLogger("coldwright.workbook")
                        .log(System.Logger.Level.DEBUG, "the lock did not close", e);
            }
            lock = Optional.empty();
        }
        notice = Optional.of("the workbook is closed; later changes are not saved");
    }
}
