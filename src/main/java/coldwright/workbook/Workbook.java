package coldwright.workbook;

import coldwright.workbook.entry.Parsed;
import coldwright.workbook.settings.Agreements;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.settings.PreferencesText;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.WorkText;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The folder with all that the program keeps for a user. One window at a time keeps it; another may
 * read it.
 *
 * <pre>{@code
 * try (Workbook workbook = Workbook.open(DataFolder.usual())) {
 *     workbook.notice().ifPresent(this::tell);
 *     Loaded<Optional<LessonWork>> loaded = workbook.load(key);
 *     workbook.save(loaded.value().orElse(empty).withDone("Toast", true)).ifPresent(this::tell);
 * }
 * }</pre>
 *
 * <p>Nothing here throws for what is wrong with the disk or a file: each is one sentence for the
 * user, and the program goes on without keeping. May be used from several threads. Methods that
 * read or write wait for the disk, so call them off the window's thread or rarely.
 */
public final class Workbook implements AutoCloseable {
    private static final String TAKEN =
            "another Coldwright window keeps this workbook; what you change here is not kept until it is closed";

    private final DataFolder folder;
    private final Store store;
    private final Set<LessonKey> stale = new HashSet<>();
    private Optional<FolderLock> lock = Optional.empty();
    private Optional<String> notice = Optional.empty();

    private Workbook(DataFolder folder) {
        this.folder = folder;
        this.store = new Store(folder.path());
    }

    /**
     * Opens a workbook.
     *
     * @param folder where it lies; made if it is missing
     * @return the workbook; {@link #notice} says whether it keeps what it is given
     */
    public static Workbook open(DataFolder folder) {
        Workbook workbook = new Workbook(folder);
        workbook.tryAgain();
        return workbook;
    }

    /**
     * Tries again to keep the workbook, unless it does already. If that turns out well, load again
     * whatever was loaded before: the other window may have changed it. Until then, saving it is
     * refused.
     *
     * @return as {@link #notice} from now on
     */
    public synchronized Optional<String> tryAgain() {
        if (lock.isPresent()) {
            return notice;
        }
        notice = folder.make();
        if (notice.isEmpty()) {
            try {
                lock = FolderLock.take(folder.path());
                notice = lock.isPresent() ? Optional.empty() : Optional.of(TAKEN);
            } catch (IOException e) {
                notice = Optional.of(Store.sentence("the lock of the workbook can't be had", e));
            }
        }
        if (lock.isPresent()) {
            store.sweep();
        }
        return notice;
    }

    /**
     * Why nothing is kept.
     *
     * @return one sentence for the user; empty if what is saved is kept
     */
    public synchronized Optional<String> notice() {
        return notice;
    }

    /**
     * Whether what is saved is kept.
     *
     * @return true if so
     */
    public synchronized boolean keeps() {
        return lock.isPresent();
    }

    /** Whether a save of this lesson may be tried; false if it must be loaded again first. */
    synchronized boolean takes(LessonKey key) {
        return keeps() && !stale.contains(key);
    }

    /**
     * Where it lies.
     *
     * @return the folder
     */
    public DataFolder folder() {
        return folder;
    }

    /**
     * Loads the work in a lesson. A damaged file is set aside beside its place, what is usable of
     * it is given, and a message says so.
     *
     * @param key what it is filed under
     * @return the work; empty if there is none
     */
    public synchronized Loaded<Optional<LessonWork>> load(LessonKey key) {
        Path file = store.fileOf(key);
        Store.Content content = store.read(file);
        if (content.missing()) {
            markRead(key, keeps());
            return new Loaded<>(Optional.empty(), List.of());
        }
        List<String> messages = new ArrayList<>(content.messages());
        Optional<LessonWork> work = Optional.empty();
        if (content.text().isPresent()) {
            Parsed<Optional<LessonWork>> parsed = WorkText.read(key, content.text().get());
            work = parsed.value();
            messages.addAll(store.told(file, parsed.faults()));
        }
        markRead(key, keeps());
        if (!messages.isEmpty() && keeps()) {
            Optional<String> failure = store.setAside(file, messages);
            markRead(key, failure.isEmpty());
            if (failure.isEmpty()) {
                work.flatMap(this::save).ifPresent(messages::add);
            }
        }
        return new Loaded<>(work, messages);
    }

    private void markRead(LessonKey key, boolean mayBeReplaced) {
        if (mayBeReplaced) {
            stale.remove(key);
        } else {
            stale.add(key);
        }
    }

    /**
     * Saves the work in a lesson. At every moment the file holds what was saved before or what is
     * saved now, whole.
     *
     * @param work the work
     * @return why it was not kept, one sentence; empty if it lies on the disk
     */
    public synchronized Optional<String> save(LessonWork work) {
        if (stale.contains(work.key()) && keeps()) {
            return Optional.of(
                    "the work in \"%s\" was changed elsewhere or is damaged; open the lesson again before you change it here"
                            .formatted(work.title()));
        }
        return write(
                store.fileOf(work.key()),
                "the work in \"" + work.title() + "\"",
                WorkText.write(work));
    }

    /**
     * Loads the settings.
     *
     * @return the settings, the usual ones where none are kept
     */
    public synchronized Loaded<Preferences> preferences() {
        Path file = store.settingsFile();
        Store.Content content = readOrSetAside(file);
        Parsed<Preferences> parsed = PreferencesText.read(content.text().orElse(""));
        return new Loaded<>(parsed.value(), all(content, store.told(file, parsed.faults())));
    }

    /**
     * Saves the settings.
     *
     * @param preferences the settings
     * @return why they were not kept, one sentence; empty if they were
     */
    public synchronized Optional<String> save(Preferences preferences) {
        return write(store.settingsFile(), "the settings", PreferencesText.write(preferences));
    }

    /**
     * Loads the agreements.
     *
     * @return the lessons that may run
     */
    public synchronized Loaded<Agreements> agreements() {
        Path file = store.agreedFile();
        Store.Content content = readOrSetAside(file);
        Parsed<Agreements> parsed = Agreements.read(content.text().orElse(""));
        return new Loaded<>(parsed.value(), all(content, store.told(file, parsed.faults())));
    }

    /**
     * Saves the agreements.
     *
     * @param agreements the lessons that may run
     * @return why they were not kept, one sentence; empty if they were
     */
    public synchronized Optional<String> save(Agreements agreements) {
        return write(store.agreedFile(), "the agreement", agreements.text());
    }

    /**
     * Moves everything into a new folder {@code put-away-YYYYMMDD-HHMMSS} in the workbook's folder.
     * Nothing is deleted; move it back by hand to have it again.
     *
     * @return where everything lies now
     */
    public synchronized PutAway clear() {
        if (!keeps()) {
            return new PutAway(Optional.empty(), notice);
        }
        return store.putAway();
    }

    private Store.Content readOrSetAside(Path file) {
        Store.Content content = store.read(file);
        List<String> messages = new ArrayList<>(content.messages());
        if (!messages.isEmpty() && keeps()) {
            store.setAside(file, messages);
        }
        return new Store.Content(content.missing(), content.text(), messages);
    }

    private static List<String> all(Store.Content content, List<String> more) {
        List<String> messages = new ArrayList<>(content.messages());
        messages.addAll(more);
        return messages;
    }

    private Optional<String> write(Path file, String what, String text) {
        return keeps() ? store.write(file, what, text) : notice;
    }

    /** Lets the workbook go to another window. What is saved afterwards is not kept. */
    @Override
    public synchronized void close() {
        if (lock.isPresent()) {
            try {
                lock.get().close();
            } catch (IOException e) {
                System.getLogger("coldwright.workbook")
                        .log(System.Logger.Level.DEBUG, "the lock did not close", e);
            }
            lock = Optional.empty();
        }
        notice = Optional.of("the workbook is closed; what you change now is not kept");
    }
}
