package coldwright.workbook;

import static coldwright.workbook.entry.WorkbookText.text;

import coldwright.lesson.Lesson;
import coldwright.workbook.entry.ParsedEntries;
import coldwright.workbook.settings.Agreements;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.settings.PreferencesText;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The folder of a user's saved data. One window at a time may write it; others may read it.
 *
 * <pre>{@code
 * try (Workbook workbook = Workbook.open(DataFolder.usual())) {
 *     LoadedWork<Optional<LessonWork>> loaded = workbook.load(key);
 *     workbook.save(loaded.value().orElse(empty).withDone("Toast", true)).ifPresent(this::show);
 * }
 * }</pre>
 *
 * <p>No method throws for errors of the disk or a file: each is one sentence for the user, and the
 * program continues without saving. Thread-safe. Methods that read or write wait for the disk, so
 * call them off the window's thread or rarely.
 */
public final class Workbook implements AutoCloseable {
    private final DataFolder folder;
    private final FolderClaim claim;
    private final WorkbookFiles store;
    private final Map<LessonKey, SharedFile<LessonWork>> works = new HashMap<>();
    private final Map<LessonKey, Form<LessonWork>> forms = new HashMap<>();
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

    /** Opens a workbook in a folder, created if missing; see {@link #notice}. */
    public static Workbook open(DataFolder folder) {
        Workbook workbook = new Workbook(folder);
        workbook.tryAgain();
        return workbook;
    }

    /** The language in a folder's settings, without claiming the folder. */
    public static Locale languageIn(DataFolder folder) {
        WorkbookFiles files = new WorkbookFiles(folder.path());
        return files.read(files.settingsFile())
                .text()
                .map(text -> PreferencesText.read(text).value())
                .orElse(Preferences.usual())
                .language()
                .locale();
    }

    /**
     * Tries again to get write access, unless there is already, and returns the new {@link
     * #notice}. After a success, save everything that was loaded, changed or not: that returns it
     * merged with the other window's changes.
     */
    public synchronized Optional<String> tryAgain() {
        if (!keeps() && claim.take()) {
            store.sweep();
        }
        return notice();
    }

    /** Why nothing is saved, one sentence for the user; empty if it can save. */
    public Optional<String> notice() {
        return claim.notice();
    }

    /** Whether it can save. */
    public boolean keeps() {
        return claim.holds();
    }

    /** Calls a listener after another window's change was copied, on the writing thread. */
    public void whenCopied(Consumer<Copied> listener) {
        store.files().whenCopied(listener);
    }

    /** The folder's other files, such as recipes; writing them keeps other windows' changes. */
    public KeptFiles files() {
        return store.files();
    }

    public DataFolder folder() {
        return folder;
    }

    /** Loads the work in a lesson as it was saved, not fitted to the current lesson. */
    public synchronized LoadedWork<Optional<LessonWork>> load(LessonKey key) {
        return load(key, Form.work(key));
    }

    /**
     * Loads the work in a lesson, if any, fitted to its current text. A damaged file is set aside,
     * its usable part is returned, and a message says so.
     */
    public synchronized LoadedWork<Optional<LessonWork>> load(LessonKey key, Lesson lesson) {
        return load(key, Form.work(key, lesson));
    }

    private LoadedWork<Optional<LessonWork>> load(LessonKey key, Form<LessonWork> form) {
        Path file = store.fileOf(key);
        forms.put(key, form);
        SharedFile<LessonWork> shared = new SharedFile<>(store, file);
        works.put(key, shared);
        return load(shared, file, form, this::save);
    }

    /** Fits the work in a lesson to its new text from now on. */
    public synchronized void fit(LessonKey key, Lesson lesson) {
        forms.put(key, Form.work(key, lesson));
    }

    /**
     * Notes the work that the page shows if it differs from the last save, because it was loaded or
     * merged. Differences from it at the next save are changes made here.
     */
    public synchronized void shows(LessonWork work) {
        shared(work.key()).given(work);
    }

    private SharedFile<LessonWork> shared(LessonKey key) {
        return works.computeIfAbsent(key, one -> new SharedFile<>(store, store.fileOf(one)));
    }

    /**
     * Saves the work in a lesson, merged with another window's changes since this one last loaded
     * or saved it, and returns the file's current value. If both changed the same snippet or
     * answer, this window's is saved and the other's file is copied first. At every moment the file
     * is complete, old or new.
     */
    public synchronized Saved<LessonWork> keep(LessonWork work) {
        LessonKey key = work.key();
        return keep(
                shared(key),
                forms.getOrDefault(key, Form.work(key)),
                work,
                work.title(),
                text("the-work", work.title()));
    }

    /** As {@link #keep(LessonWork)}; returns why it was not saved, a sentence; else empty. */
    public Optional<String> save(LessonWork work) {
        return keep(work).failure();
    }

    private <T> Saved<T> keep(
            SharedFile<T> file, Form<T> form, T value, String about, String what) {
        return keeps() ? file.save(value, form, about, what) : new Saved<>(value, notice());
    }

    /** Loads the settings, or the defaults if none are saved. */
    public synchronized LoadedWork<Preferences> preferences() {
        return loadOr(settings, store.settingsFile(), Form.SETTINGS, Preferences.usual());
    }

    /**
     * Saves the settings, merged with the keys that another window has changed since this one last
     * loaded or saved them, and returns the file's current value.
     */
    public synchronized Saved<Preferences> keep(Preferences preferences) {
        return keep(
                settings, Form.SETTINGS, preferences, WorkbookFiles.SETTINGS, text("the-settings"));
    }

    /** Loads the lessons that may run. */
    public synchronized LoadedWork<Agreements> agreements() {
        return loadOr(agreed, store.agreedFile(), Form.AGREED, Agreements.none());
    }

    /** Saves the lessons that may run, merged with those that another window has added. */
    public synchronized Saved<Agreements> keep(Agreements agreements) {
        return keep(agreed, Form.AGREED, agreements, WorkbookFiles.AGREED, text("the-agreement"));
    }

    /** A damaged file is set aside, and what can be read of it is saved in its place. */
    private <T> LoadedWork<Optional<T>> load(
            SharedFile<T> shared, Path file, Form<T> form, Function<T, Optional<String>> save) {
        WorkbookFiles.FileContent content = store.read(file);
        List<String> messages = new ArrayList<>(content.messages());
        Optional<ParsedEntries<Optional<T>>> parsed = content.text().map(form.reader());
        parsed.ifPresent(one -> messages.addAll(store.messages(file, one.faults())));
        Optional<T> value = parsed.flatMap(ParsedEntries::value).map(form.fit());
        if (messages.isEmpty()) {
            store.files().saw(file, content.mark());
            shared.shows(value);
        } else if (keeps() && store.setAside(file, messages).isEmpty()) {
            value.flatMap(save).ifPresent(messages::add);
        }
        return new LoadedWork<>(value, messages);
    }

    private <T> LoadedWork<T> loadOr(SharedFile<T> shared, Path file, Form<T> form, T none) {
        LoadedWork<Optional<T>> loaded =
                load(
                        shared,
                        file,
                        form,
                        value ->
                                keep(shared, form, value, "", file.getFileName().toString())
                                        .failure());
        if (loaded.value().isEmpty() && loaded.messages().isEmpty()) {
            shared.shows(Optional.of(none));
        }
        return new LoadedWork<>(loaded.value().orElse(none), loaded.messages());
    }

    /**
     * Moves all files into a new folder {@code put-away-YYYYMMDD-HHMMSS} in the workbook's folder.
     * Nothing is deleted; to restore the files, move them back by hand. The value is the new
     * folder, empty if nothing was moved.
     */
    public synchronized Saved<Optional<Path>> clear() {
        if (!keeps()) {
            return new Saved<>(Optional.empty(), notice());
        }
        forget();
        return store.archive();
    }

    /** Releases the workbook for another window. Later saves are ignored. */
    @Override
    public synchronized void close() {
        claim.close();
    }
}
