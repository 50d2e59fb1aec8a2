package coldwright.desk.batch.model;

import coldwright.batch.BatchLineage;
import coldwright.batch.Recipe;
import coldwright.desk.messages.Messages;
import coldwright.text.WholeFile;
import coldwright.workbook.Workbook;

import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Opens and saves the cook's recipe files, and writes a batch as a lesson. Used on the window's
 * thread; reading and writing happen on another.
 */
public final class BatchFiles {
    /** The files that were opened or saved last, in the data folder. */
    private static final String RECENT = "recent.txt";

    private static final int MOST_RECENT = 6;
    private final Workbook workbook;
    private final Path folder;
    private final Executor background;
    private final Executor window;
    private final Consumer<String> notify;
    private final ObservableList<Path> recent = FXCollections.observableArrayList();
    private final ObservableList<Path> shown = FXCollections.unmodifiableObservableList(recent);

    BatchFiles(Workbook workbook, Executor background, Executor window, Consumer<String> notify) {
        this.workbook = workbook;
        this.folder = workbook.folder().path().resolve(BatchStore.FOLDER);
        this.background = background;
        this.window = window;
        this.notify = notify;
    }

    /**
     * Opens a copy of a recipe file; the file itself stays unchanged.
     *
     * @return completes when it is open, or a notice gives the error
     */
    public CompletableFuture<Void> open(Path file, BatchesModel batches) {
        return apart(
                "batch.file.unread",
                file,
                () -> {
                    Recipe recipe = BatchStore.read(file).recipe();
                    window.execute(
                            () -> {
                                batches.add(recipe, BatchLineage.first(0));
                                remember(file);
                            });
                });
    }

    /**
     * Writes a batch to a recipe file.
     *
     * @return completes when it is written, or a notice gives the error
     */
    public CompletableFuture<Void> save(BatchModel batch, Path file) {
        String text = BatchStore.textOf(batch);
        return apart(
                "batch.file.not-kept",
                file,
                () -> {
                    WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
                    window.execute(() -> remember(file));
                    say("batch.file.saved", file);
                });
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
        return shown;
    }

    /** Restores the list of recent files. */
    void restoreRecent() {
        apart(
                "batch.file.unread",
                folder,
                () -> {
                    List<Path> opened = readRecent();
                    window.execute(() -> recent.setAll(opened));
                });
    }

    /** Puts a file first in the list, on the window's thread. */
    private void remember(Path file) {
        Path whole = file.toAbsolutePath();
        recent.remove(whole);
        recent.add(0, whole);
        while (recent.size() > MOST_RECENT) {
            recent.remove(recent.size() - 1);
        }
        List<Path> mine = List.copyOf(recent);
        apart("batch.file.not-kept", RECENT, () -> writeRecent(mine));
    }

    /** Writes the list, followed by files that another window has added since. */
    private void writeRecent(List<Path> mine) throws IOException {
        Path file = folder.resolve(RECENT);
        if (workbook.keeps()) {
            List<Path> theirs = workbook.files().isUnseen(file) ? readRecent() : List.of();
            String all =
                    Stream.concat(mine.stream(), theirs.stream())
                            .distinct()
                            .limit(MOST_RECENT)
                            .map(Path::toString)
                            .collect(Collectors.joining("\n"));
            workbook.files().write(file, all, RECENT);
        }
    }

    private List<Path> readRecent() throws IOException {
        Path file = folder.resolve(RECENT);
        if (!Files.exists(file)) {
            return List.of();
        }
        String mark = workbook.files().mark(file);
        List<Path> read =
                Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                        .filter(line -> !line.isBlank() && line.indexOf('\0') < 0)
                        .limit(MOST_RECENT)
                        .map(Path::of)
                        .toList();
        workbook.files().saw(file, mark);
        return read;
    }

    private interface FileWork {
        void run() throws IOException;
    }

    /** Works with a file on the other thread, and says so if that fails. */
    private CompletableFuture<Void> apart(String failure, Object file, FileWork work) {
        return CompletableFuture.runAsync(
                () -> {
                    try {
                        work.run();
                    } catch (IllegalArgumentException | IOException e) {
                        say(failure, file, BatchStore.said(e));
                    }
                },
                background);
    }

    private void say(String key, Object... values) {
        String words = Messages.of(key, values);
        window.execute(() -> notify.accept(words));
    }
}
