package coldwright.workbook;

import coldwright.lesson.Lesson;
import coldwright.workbook.entry.ParsedEntries;
import coldwright.workbook.settings.Agreements;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The folder with all that the program keeps for a user. One window at a time keeps it; another may
 * read it.
 *
 * <pre>{@code
 * try (Workbook workbook = Workbook.open(DataFolder.usual())) {
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
    private final DataFolder folder;
    private final FolderClaim claim;
    private final WorkbookFiles store;
    private final Map<LessonKey, SharedFile<LessonWork>> works = new HashMap<>();
    private final Map<LessonKey, Forms.Work> forms = new HashMap<>();
    private SharedFile<Preferences> settings;
    private SharedFile<Agreements> agreed;

    private Workbook(DataFolder folder) {
        this.folder = folder;
        this.claim = new FolderClaim(folder);
        this.store = new WorkbookFiles(folder.path());
        forget();
    }

    private void forget() {
        works.clear();
        settings = new SharedFile<>(store, store.settingsFile());
        agreed = new SharedFile<>(store, store.agreedFile());
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
     * Tries again to keep the workbook, unless it does already. If it does now, save whatever was
     * loaded before, changed or not: that gives it back together with what the other window wrote.
     *
     * @return as {@link #notice} from now on
     */
    public synchronized Optional<String> tryAgain() {
        if (!keeps() && claim.take()) {
            store.sweep();
        }
        return notice();
    }

    /**
     * Why nothing is kept.
     *
     * @return one sentence for the user; empty if what is saved is kept
     */
    public Optional<String> notice() {
        return claim.notice();
    }

    /**
     * Whether what is saved is kept.
     *
     * @return true if so
     */
    public boolean keeps() {
        return claim.holds();
    }

    /**
     * Calls a listener whenever a file is written over that another window had changed, so that a
     * copy of it was made. It is called on the thread that writes.
     *
     * @param listener takes what was copied
     */
    public void whenCopied(Consumer<Copied> listener) {
        store.files().whenCopied(listener);
    }

    /**
     * The folder's other files, such as batches.
     *
     * @return writes no file without keeping what another window wrote there
     */
    public KeptFiles files() {
        return store.files();
    }

    /**
     * Where it is.
     *
     * @return the folder
     */
    public DataFolder folder() {
        return folder;
    }

    /**
     * Loads the work in a lesson as it was kept, whatever the lesson is today.
     *
     * @param key what it is filed under
     * @return as {@link #load(LessonKey, Lesson)}
     */
    public synchronized LoadedWork<Optional<LessonWork>> load(LessonKey key) {
        return load(new Forms.Work(key, work -> work));
    }

    /**
     * Loads the work in a lesson, fitted to its text of today. A damaged file is set aside beside
     * its place, what is usable of it is given, and a message says so.
     *
     * @param key what it is filed under
     * @param lesson the lesson as it is today
     * @return the work; empty if there is none
     */
    public synchronized LoadedWork<Optional<LessonWork>> load(LessonKey key, Lesson lesson) {
        return load(Forms.Work.of(key, lesson));
    }

    private LoadedWork<Optional<LessonWork>> load(Forms.Work form) {
        LessonKey key = form.key();
        Path file = store.fileOf(key);
        WorkbookFiles.FileContent fileContent = store.read(file);
        List<String> messages = new ArrayList<>(fileContent.messages());
        Optional<ParsedEntries<Optional<LessonWork>>> parsed = fileContent.text().map(form::read);
        parsed.ifPresent(one -> messages.addAll(store.messages(file, one.faults())));
        Optional<LessonWork> work = parsed.flatMap(ParsedEntries::value).map(form.fit());
        forms.put(key, form);
        SharedFile<LessonWork> shared = new SharedFile<>(store, file);
        works.put(key, shared);
        if (messages.isEmpty()) {
            store.files().saw(file, fileContent.mark());
            shared.shows(work);
        } else if (keeps() && store.setAside(file, messages).isEmpty()) {
            work.flatMap(this::save).ifPresent(messages::add);
        }
        return new LoadedWork<>(work, messages);
    }

    /**
     * A lesson's text has changed: from now on its work is fitted to the new one.
     *
     * @param key what the work is filed under
     * @param lesson the lesson as it is today
     */
    public synchronized void fit(LessonKey key, Lesson lesson) {
        forms.put(key, Forms.Work.of(key, lesson));
    }

    /**
     * Says what the page shows where that is not what was saved last, because it was loaded or
     * merged. What differs from it at the next save is a change made here.
     *
     * @param work the work that the page shows
     */
    public synchronized void shows(LessonWork work) {
        shared(work.key()).given(work);
    }

    private SharedFile<LessonWork> shared(LessonKey key) {
        return works.computeIfAbsent(key, one -> new SharedFile<>(store, store.fileOf(one)));
    }

    /**
     * Saves the work in a lesson, together with what another window has written since this one last
     * loaded or saved it. Where both changed the same snippet or answer, this window's is saved and
     * the other's file is copied first. At every moment the file is the former one or the new one,
     * whole.
     *
     * @param work the work
     * @return what the file holds now
     */
    public synchronized Saved<LessonWork> keep(LessonWork work) {
        LessonKey key = work.key();
        return keep(
                shared(key),
                forms.getOrDefault(key, new Forms.Work(key, one -> one)),
                work,
                work.title(),
                "the work in \"" + work.title() + "\"");
    }

    /**
     * As {@link #keep(LessonWork)}.
     *
     * @return why it was not kept, one sentence; empty if it is on the disk
     */
    public Optional<String> save(LessonWork work) {
        return keep(work).failure();
    }

    private <T> Saved<T> keep(
            SharedFile<T> file, Form<T> form, T value, String about, String what) {
        return keeps() ? file.save(value, form, about, what) : new Saved<>(value, notice());
    }

    /**
     * Loads the settings.
     *
     * @return the settings, the usual ones where none are kept
     */
    public synchronized LoadedWork<Preferences> preferences() {
        return load(settings, store.settingsFile(), Forms.SETTINGS, Preferences.usual());
    }

    /**
     * Saves the settings, together with the keys that another window has changed since this one
     * last loaded or saved them.
     *
     * @param preferences the settings
     * @return what the file holds now
     */
    public synchronized Saved<Preferences> keep(Preferences preferences) {
        return keep(settings, Forms.SETTINGS, preferences, WorkbookFiles.SETTINGS, "the settings");
    }

    /**
     * Loads the agreements.
     *
     * @return the lessons that may run
     */
    public synchronized LoadedWork<Agreements> agreements() {
        return load(agreed, store.agreedFile(), Forms.AGREED, Agreements.none());
    }

    /**
     * Saves the agreements, together with those that another window has added.
     *
     * @param agreements the lessons that may run
     * @return what the file holds now
     */
    public synchronized Saved<Agreements> keep(Agreements agreements) {
        return keep(agreed, Forms.AGREED, agreements, WorkbookFiles.AGREED, "the agreement");
    }

    private <T> LoadedWork<T> load(SharedFile<T> shared, Path file, Form<T> form, T none) {
        WorkbookFiles.FileContent fileContent = store.read(file);
        List<String> messages = new ArrayList<>(fileContent.messages());
        boolean aside = !messages.isEmpty() && keeps() && store.setAside(file, messages).isEmpty();
        ParsedEntries<Optional<T>> parsed = form.read(fileContent.text().orElse(""));
        T value = parsed.value().orElse(none);
        messages.addAll(store.messages(file, parsed.faults()));
        if (fileContent.messages().isEmpty()) {
            store.files().saw(file, fileContent.mark());
            shared.shows(Optional.of(value));
        } else if (aside) {
            shared.shows(Optional.empty());
        }
        return new LoadedWork<>(value, messages);
    }

    /**
     * Moves everything into a new folder {@code put-away-YYYYMMDD-HHMMSS} in the workbook's folder.
     * Nothing is deleted; move it back by hand to have it again.
     *
     * @return where everything lies now
     */
    public synchronized ArchivedWorkbook clear() {
        if (!keeps()) {
            return new ArchivedWorkbook(Optional.empty(), notice());
        }
        forget();
        return store.archive();
    }

    /** Lets the workbook go to another window. What is saved afterwards is not kept. */
    @Override
    public synchronized void close() {
        claim.close();
    }
}
