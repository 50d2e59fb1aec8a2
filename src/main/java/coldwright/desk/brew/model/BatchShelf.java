package coldwright.desk.brew.model;

import coldwright.batch.BatchFault;
import coldwright.desk.say.Say;
import coldwright.workbook.AtomicFile;

import javafx.beans.InvalidationListener;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Keeps batches as batch files in a folder: brings them back, writes each soon after a change, sets
 * a damaged one aside. Used on the window's thread; reading and writing happen on another.
 */
public final class BatchShelf implements AutoCloseable {
    /** How a batch file's name ends. */
    public static final String ENDING = ".batch";

    private static final String AWAY = ".away";
    private static final int MOST_BYTES = 1_000_000;

    private final Path folder;
    private final ScheduledExecutorService background;
    private final Executor window;
    private final Consumer<String> tell;
    private final BooleanSupplier may;
    private final Unwritten unwritten;
    private final Recents recent;

    /**
     * Makes a shelf; nothing is read yet.
     *
     * @param folder where; it need not be there
     * @param background a thread for reading and writing
     * @param window the window's thread
     * @param tell tells the cook something, on the window's thread
     * @param may whether this window may write; false while another keeps the folder
     */
    public BatchShelf(
            Path folder,
            ScheduledExecutorService background,
            Executor window,
            Consumer<String> tell,
            BooleanSupplier may) {
        this.folder = folder;
        this.background = background;
        this.window = window;
        this.tell = tell;
        this.may = may;
        this.unwritten =
                new Unwritten(
                        folder,
                        background,
                        may,
                        (name, e) -> say(Say.of("batch.file.not-kept", name, said(e))));
        this.recent = new Recents(folder, may);
    }

    /**
     * Brings back what was kept, and keeps what changes from now on.
     *
     * @param brew where the batches go
     * @return completes when they stand there
     */
    public CompletableFuture<Void> keep(BrewModel brew) {
        return CompletableFuture.supplyAsync(this::readAll, background)
                .thenAcceptAsync(
                        found -> {
                            found.forEach(one -> brew.add(one.recipe(), one.story()));
                            brew.batches().forEach(this::follow);
                            brew.batches().addListener(this::changed);
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
            change.getRemoved().forEach(this::putAway);
        }
    }

    private void follow(BatchModel batch) {
        InvalidationListener listener = value -> write(batch);
        batch.recipe().addListener(listener);
        batch.story().addListener(listener);
    }

    private void write(BatchModel batch) {
        Story story = batch.story().get();
        String text = RecipeText.of(batch.recipe().get(), story);
        unwritten.put(nameOf(story), text);
    }

    private static String nameOf(Story story) {
        return "batch-" + story.number() + ENDING;
    }

    private void putAway(BatchModel batch) {
        String name = nameOf(batch.story().get());
        unwritten.forget(name);
        background.execute(
                () -> {
                    Path file = folder.resolve(name);
                    if (may.getAsBoolean() && Files.exists(file)) {
                        try {
                            Files.move(
                                    file,
                                    folder.resolve(name + AWAY),
                                    java.nio.file.StandardCopyOption.REPLACE_EXISTING);
                        } catch (IOException e) {
                            say(Say.of("batch.file.not-kept", name, said(e)));
                        }
                    }
                });
    }

    private List<RecipeText.Read> readAll() {
        List<RecipeText.Read> all = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return all;
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(one -> one.toString().endsWith(ENDING)).toList()) {
                try {
                    all.add(read(file));
                } catch (BatchFault | IOException e) {
                    setAside(file, e);
                }
            }
            List<Path> opened = recent.read();
            window.execute(() -> recent.show(opened));
        } catch (IOException e) {
            say(Say.of("batch.file.unread", folder.toString(), said(e)));
        }
        all.sort(Comparator.comparingInt(one -> one.story().number()));
        return all;
    }

    private void setAside(Path file, Exception why) throws IOException {
        if (may.getAsBoolean()) {
            Path to = AtomicFile.setAside(file, LocalDateTime.now());
            say(Say.of("batch.file.damaged", said(why), to.getFileName().toString()));
        }
    }

    private static RecipeText.Read read(Path file) throws BatchFault, IOException {
        if (Files.size(file) > MOST_BYTES) {
            throw new IOException(Say.of("batch.file.too-long"));
        }
        String text = Files.readString(file, StandardCharsets.UTF_8);
        return RecipeText.read(String.valueOf(file.getFileName()), text);
    }

    /**
     * Opens a batch file of the cook's; it is copied, and stays as it is.
     *
     * @param file which
     * @param brew where the batch goes
     * @return completes when it is open or told why not
     */
    public CompletableFuture<Void> open(Path file, BrewModel brew) {
        return CompletableFuture.runAsync(
                () -> {
                    try {
                        Recipe recipe = read(file).recipe();
                        window.execute(
                                () -> {
                                    brew.add(recipe, Story.first(0));
                                    remember(file);
                                });
                    } catch (BatchFault | IOException e) {
                        say(Say.of("batch.file.unread", file.toString(), said(e)));
                    }
                },
                background);
    }

    /**
     * Writes a batch to a file of the cook's.
     *
     * @param batch which batch
     * @param file where to
     * @return completes when it is written or told why not
     */
    public CompletableFuture<Void> save(BatchModel batch, Path file) {
        String text = RecipeText.of(batch.recipe().get(), batch.story().get());
        return CompletableFuture.runAsync(
                () -> {
                    try {
                        AtomicFile.write(file.toAbsolutePath(), text);
                        window.execute(() -> remember(file));
                        say(Say.of("batch.file.saved", file.toString()));
                    } catch (IOException e) {
                        say(Say.of("batch.file.not-kept", file.toString(), said(e)));
                    }
                },
                background);
    }

    /**
     * Writes the batch as a lesson that shows its code.
     *
     * @param batch which batch
     * @param then takes the lesson's file, on the window's thread
     */
    public void showCode(BatchModel batch, Consumer<Path> then) {
        if (!batch.figuresAreOfNow()) {
            tell.accept(Say.of("batch.file.mend-first"));
            return;
        }
        String text = BatchLesson.of(batch.recipe().get(), batch.figures().get().orElseThrow());
        Path file = folder.resolve("batch-" + batch.story().get().number() + ".md");
        background.execute(
                () -> {
                    try {
                        Files.createDirectories(folder);
                        AtomicFile.write(file, text);
                        window.execute(() -> then.accept(file));
                    } catch (IOException e) {
                        say(Say.of("batch.file.not-kept", file.toString(), said(e)));
                    }
                });
    }

    /**
     * The cook's files that were opened or saved last.
     *
     * @return the latest first
     */
    public ObservableList<Path> recent() {
        return recent.files();
    }

    private void remember(Path file) {
        String text = recent.plus(file);
        background.execute(
                () -> {
                    try {
                        recent.write(text);
                    } catch (IOException e) {
                        say(Say.of("batch.file.not-kept", Recents.FILE, said(e)));
                    }
                });
    }

    private static String said(Exception trouble) {
        return trouble.getMessage() == null
                ? trouble.getClass().getSimpleName()
                : trouble.getMessage();
    }

    private void say(String words) {
        window.execute(() -> tell.accept(words));
    }

    /** Writes what waits. */
    @Override
    public void close() {
        unwritten.flush();
    }
}
