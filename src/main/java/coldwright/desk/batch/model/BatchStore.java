package coldwright.desk.batch.model;

import coldwright.batch.BatchLineage;
import coldwright.batch.RecipeFile;
import coldwright.batch.RecipeFileReader;
import coldwright.batch.RecipeFileWriter;
import coldwright.desk.messages.Messages;
import coldwright.text.WholeFile;
import coldwright.workbook.DelayedWrites;
import coldwright.workbook.Workbook;

import javafx.beans.InvalidationListener;
import javafx.collections.ListChangeListener;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Stores batches as recipe files in a folder: restores them, writes each soon after a change, moves
 * a damaged one aside. Used on the window's thread; reading and writing happen on another.
 */
public final class BatchStore implements AutoCloseable {
    /** The file extension of a recipe file. */
    public static final String ENDING = ".batch";

    /** The folder's name in the data folder. */
    static final String FOLDER = "batches";

    private static final String ARCHIVE_FOLDER = ".away";

    private final Workbook workbook;
    private final Path folder;
    private final ScheduledExecutorService background;
    private final Executor window;
    private final Consumer<String> notify;
    private final DelayedWrites<String, PendingFile> pendingWrites;
    private final BatchFiles files;

    /** The text of each batch when its file was last read or written by this window. */
    private final Map<BatchModel, String> known = new HashMap<>();

    private List<BatchModel> followed = List.of();

    /** Another window has the folder or had it: nothing is written before it is read again. */
    private volatile boolean behind;

    /**
     * A store that hasn't read anything yet.
     *
     * @param workbook the data folder, with the batches in {@value #FOLDER}
     * @param background a thread for reading and writing
     * @param tell shows the cook a sentence, on the window's thread
     */
    public BatchStore(
            Workbook workbook,
            ScheduledExecutorService background,
            Executor window,
            Consumer<String> tell) {
        this.workbook = workbook;
        this.folder = workbook.folder().path().resolve(FOLDER);
        this.background = background;
        this.window = window;
        this.notify = tell;
        this.pendingWrites = new DelayedWrites<>(background, this::writeNow);
        this.files = new BatchFiles(workbook, background, window, tell);
    }

    /**
     * Restores the stored batches, and saves changes from now on.
     *
     * @return completes when they are restored
     */
    public CompletableFuture<Void> keep(BatchesModel brew) {
        files.restoreRecent();
        behind = !workbook.keeps();
        return CompletableFuture.supplyAsync(() -> read(true), background)
                .thenAcceptAsync(
                        found -> {
                            found.values().stream()
                                    .sorted(
                                            Comparator.comparingInt(
                                                    one -> one.read().lineage().number()))
                                    .forEach(one -> add(one, brew));
                            brew.batches().forEach(this::follow);
                            brew.batches().addListener(this::changed);
                            followed = brew.batches();
                        },
                        window);
    }

    private void changed(ListChangeListener.Change<? extends BatchModel> change) {
        while (change.next()) {
            change.getAddedSubList()
                    .forEach(
                            one -> {
                                follow(one);
                                write(one);
                            });
            change.getRemoved().forEach(this::archive);
        }
    }

    private void add(FoundBatch found, BatchesModel brew) {
        workbook.files().saw(found.file(), found.mark());
        BatchModel batch = brew.add(found.read().recipe(), found.read().lineage());
        known.put(batch, textOf(batch));
    }

    /**
     * Reads the folder again after another window has used it. Shows its changes to batches that
     * are unchanged here; if both windows changed a batch, this one's text is written and the
     * other's file is copied first.
     *
     * @return completes when they are shown
     */
    public CompletableFuture<Void> readAgain(BatchesModel brew) {
        return CompletableFuture.supplyAsync(() -> read(false), background)
                .thenAcceptAsync(
                        found -> {
                            List<BatchModel> mine = List.copyOf(brew.batches());
                            BatchModel open = brew.open().get();
                            found.forEach(
                                    (name, theirs) -> take(name, theirs, brew, free(brew, found)));
                            behind = false;
                            mine.stream().filter(this::isChanged).forEach(this::write);
                            if (open != null) {
                                brew.open(open);
                            }
                        },
                        window);
    }

    /** The batches on disk by file name: all, or those that this window hasn't seen. */
    private Map<String, FoundBatch> read(boolean all) {
        Map<String, FoundBatch> found = new TreeMap<>();
        for (Path file : paths()) {
            try {
                if (all || workbook.files().isUnseen(file)) {
                    String mark = workbook.files().mark(file);
                    found.put(
                            String.valueOf(file.getFileName()),
                            new FoundBatch(file, mark, read(file)));
                }
            } catch (IllegalArgumentException | IOException e) {
                setAside(file, e);
            }
        }
        return found;
    }

    /** A recipe file on disk, with its mark from before it was read. */
    private record FoundBatch(Path file, String mark, RecipeFile read) {}

    static RecipeFile read(Path file) {
        return RecipeFileReader.read(file, String.valueOf(file.getFileName()));
    }

    /** A number that no batch on the page or in the folder has. */
    private static int free(BatchesModel shown, Map<String, FoundBatch> found) {
        return found.values().stream()
                .mapToInt(one -> one.read().lineage().number() + 1)
                .reduce(shown.free(), Math::max);
    }

    private void take(String name, FoundBatch theirs, BatchesModel brew, int free) {
        Optional<BatchModel> here =
                brew.batches().stream()
                        .filter(one -> nameOf(one.lineage().get()).equals(name))
                        .findFirst();
        if (here.isPresent() && !known.containsKey(here.get())) {
            brew.renumber(here.get(), free, one -> !known.containsKey(one));
            here = Optional.empty();
        }
        if (here.isPresent() && isChanged(here.get())) {
            return;
        }
        if (here.isPresent()) {
            workbook.files().saw(theirs.file(), theirs.mark());
            here.get().change("", theirs.read().recipe());
            here.get().publish(theirs.read().lineage());
            known.put(here.get(), textOf(here.get()));
        } else {
            add(theirs, brew);
        }
    }

    /** Whether a batch differs from its file as last read or written by this window. */
    private boolean isChanged(BatchModel batch) {
        return !textOf(batch).equals(known.get(batch));
    }

    static String textOf(BatchModel batch) {
        return RecipeFileWriter.text(batch.recipe().get(), batch.lineage().get());
    }

    private void follow(BatchModel batch) {
        InvalidationListener listener = value -> write(batch);
        batch.recipe().addListener(listener);
        batch.lineage().addListener(listener);
    }

    private void write(BatchModel batch) {
        String text = textOf(batch);
        String file = nameOf(batch.lineage().get());
        String name = batch.recipe().get().name();
        pendingWrites.put(file, new PendingFile(batch, file, name.isBlank() ? file : name, text));
    }

    private boolean writeNow(PendingFile one) {
        if (workbook.keeps() && !behind) {
            try {
                workbook.files().write(folder.resolve(one.file()), one.text(), one.about());
                window.execute(() -> known.put(one.batch(), one.text()));
            } catch (IOException e) {
                say(Messages.of("batch.file.not-kept", one.file(), said(e)));
            }
        }
        return true;
    }

    private record PendingFile(BatchModel batch, String file, String about, String text) {}

    private static String nameOf(BatchLineage batchLineage) {
        return "batch-" + batchLineage.number() + ENDING;
    }

    private void archive(BatchModel batch) {
        String name = nameOf(batch.lineage().get());
        known.remove(batch);
        background.execute(
                () -> {
                    pendingWrites.flush();
                    Path file = folder.resolve(name);
                    if (workbook.keeps() && Files.exists(file)) {
                        try {
                            workbook.files().rename(file, name + ARCHIVE_FOLDER);
                        } catch (IOException e) {
                            say(Messages.of("batch.file.not-kept", name, said(e)));
                        }
                    }
                });
    }

    private List<Path> paths() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(one -> one.toString().endsWith(ENDING)).toList();
        } catch (IOException e) {
            say(Messages.of("batch.file.unread", folder.toString(), said(e)));
            return List.of();
        }
    }

    private void setAside(Path file, Exception why) {
        if (!workbook.keeps()) {
            return;
        }
        try {
            Path to = workbook.files().setAside(file);
            say(Messages.of("batch.file.damaged", said(why), to.getFileName().toString()));
        } catch (IOException e) {
            say(Messages.of("batch.file.unread", file.toString(), said(e)));
        }
    }

    static String said(Exception trouble) {
        if (trouble instanceof WholeFile.UnwrittenException unwritten) {
            return unwritten.reason().words();
        }
        return trouble.getMessage() == null
                ? trouble.getClass().getSimpleName()
                : trouble.getMessage();
    }

    private void say(String words) {
        window.execute(() -> notify.accept(words));
    }

    /** Opens and saves the cook's own recipe files, outside this folder. */
    public BatchFiles files() {
        return files;
    }

    /** Writes what is waiting. */
    @Override
    public void close() {
        behind = false;
        followed.stream().filter(this::isChanged).forEach(this::write);
        pendingWrites.flush();
    }
}
