package coldwright.desk.batch.model;

import coldwright.batch.BatchFileException;
import coldwright.batch.BatchLineage;
import coldwright.batch.Recipe;
import coldwright.desk.messages.Messages;
import coldwright.text.WholeFile;
import coldwright.workbook.Workbook;

import javafx.collections.ObservableList;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Opens and saves the cook's recipe files, and writes a batch as a lesson. Used on the window's
 * thread; reading and writing happen on another.
 */
public final class BatchFiles {
    private final Workbook workbook;
    private final Path folder;
    private final Executor background;
    private final Executor window;
    private final Consumer<String> notify;
    private final RecentFiles recent;

    BatchFiles(Workbook workbook, Executor background, Executor window, Consumer<String> notify) {
        this.workbook = workbook;
        this.folder = workbook.folder().path().resolve(BatchStore.FOLDER);
        this.background = background;
        this.window = window;
        this.notify = notify;
        this.recent = new RecentFiles(folder, workbook);
    }

    /**
     * Opens a copy of a recipe file; the file itself stays unchanged.
     *
     * @return completes when it is open, or a notice gives the error
     */
    public CompletableFuture<Void> open(Path file, BatchesModel batches) {
        return CompletableFuture.runAsync(
                () -> {
                    try {
                        Recipe recipe = FoundBatch.read(file).recipe();
                        window.execute(
                                () -> {
                                    batches.add(recipe, BatchLineage.first(0));
                                    remember(file);
                                });
                    } catch (BatchFileException | IOException e) {
                        say("batch.file.unread", file, BatchStore.said(e));
                    }
                },
                background);
    }

    /**
     * Writes a batch to a recipe file.
     *
     * @return completes when it is written, or a notice gives the error
     */
    public CompletableFuture<Void> save(BatchModel batch, Path file) {
        String text = BatchStore.textOf(batch);
        return CompletableFuture.runAsync(
                () -> {
                    try {
                        WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
                        window.execute(() -> remember(file));
                        say("batch.file.saved", file);
                    } catch (WholeFile.UnwrittenException e) {
                        say("batch.file.not-kept", file, e.reason().words());
                    }
                },
                background);
    }

    /**
     * Writes the batch as a lesson that shows its code.
     *
     * @param then receives the lesson's file, on the window's thread
     */
    public void showCode(BatchModel batch, Consumer<Path> then) {
        if (!batch.figuresAreOfNow()) {
            notify.accept(Messages.of("batch.file.mend-first"));
            return;
        }
        String text = LessonFromBatch.of(batch.recipe().get(), batch.figures().get().orElseThrow());
        Path file = folder.resolve("batch-" + batch.lineage().get().number() + ".md");
        apart(
                "batch.file.not-kept",
                file,
                () -> {
                    workbook.files().write(file, text, String.valueOf(file.getFileName()));
                    window.execute(() -> then.accept(file));
                });
    }

    /** The files that were opened or saved last, the latest first. */
    public ObservableList<Path> recent() {
        return recent.files();
    }

    /** Restores the list of recent files. */
    void restoreRecent() {
        apart(
                "batch.file.unread",
                folder,
                () -> {
                    List<Path> opened = recent.read();
                    window.execute(() -> recent.show(opened));
                });
    }

    private void remember(Path file) {
        String text = recent.plus(file);
        apart("batch.file.not-kept", RecentFiles.FILE, () -> recent.write(text));
    }

    private interface FileWork {
        void run() throws IOException;
    }

    /** Works with a file on the other thread, and says so if that fails. */
    private void apart(String failure, Object file, FileWork work) {
        background.execute(
                () -> {
                    try {
                        work.run();
                    } catch (IOException e) {
                        say(failure, file, BatchStore.said(e));
                    }
                });
    }

    private void say(String key, Object... values) {
        String words = Messages.of(key, values);
        window.execute(() -> notify.accept(words));
    }
}
