package coldwright.desk;

import coldwright.desk.brew.model.BatchShelf;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.LessonModel;
import coldwright.desk.model.Settings;
import coldwright.desk.model.Trouble;
import coldwright.desk.page.Deeds;
import coldwright.desk.page.DeskView;
import coldwright.desk.page.Frames;
import coldwright.desk.page.HandoutChoice;
import coldwright.desk.plate.FigurePainter;
import coldwright.desk.plate.Pens;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;
import coldwright.lesson.LessonShelf;
import coldwright.paint.ChartPainter;
import coldwright.print.Edition;
import coldwright.print.Wish;
import coldwright.text.WholeFile;
import coldwright.workbook.DataFolder;
import coldwright.workbook.Loaded;
import coldwright.workbook.Workbook;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.settings.Language;
import coldwright.workbook.settings.Preferences;

import javafx.application.Application;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.stage.FileChooser;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.Window;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;

/** The program behind the window: puts the desk together and takes it apart again. */
public final class DeskApp extends Application {
    private static final double WIDTH_PX = 1280;
    private static final double HEIGHT_PX = 800;
    private static final double LEAST_WIDTH_PX = 480;
    private static final double LEAST_HEIGHT_PX = 360;

    /** The first frame lays out, the second is on the screen. */
    private static final int FRAMES_TO_SHOW = 2;

    /** What is seen for a moment before the page is there, on a light desk or a dark one. */
    private static final Color BARE = Color.web("#8a979d");

    /** By then the first steps of the lesson stand on the page. */
    private static final int FRAMES_TO_READ = 6;

    private static final System.Logger LOG = System.getLogger("coldwright.desk");

    private final ExecutorService work = Executors.newCachedThreadPool(run -> daemon(run, "work"));
    private final ExecutorService pen =
            Executors.newSingleThreadExecutor(run -> daemon(run, "pen"));
    private final ScheduledExecutorService keeping =
            Executors.newSingleThreadScheduledExecutor(run -> daemon(run, "keeping"));
    private Workbook workbook;
    private Settings settings;
    private Keeper keeper;
    private BenchRunner bench;
    private BatchShelf batches;
    private DeskModel desk;
    private Printing press;

    private static Thread daemon(Runnable run, String name) {
        Thread thread = new Thread(run, "desk-" + name);
        thread.setDaemon(true);
        return thread;
    }

    /** The window stands at once; what fills it is made while it is being drawn. */
    @Override
    public void start(Stage stage) {
        Thread.currentThread().setUncaughtExceptionHandler((thread, trouble) -> broke(trouble));
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        stage.setScene(
                new Scene(
                        new StackPane(),
                        Math.min(WIDTH_PX, screen.getWidth()),
                        Math.min(HEIGHT_PX, screen.getHeight()),
                        BARE));
        stage.setMinWidth(LEAST_WIDTH_PX);
        stage.setMinHeight(LEAST_HEIGHT_PX);
        stage.setTitle("Coldwright");
        stage.show();
        Frames.after(FRAMES_TO_SHOW, () -> layTheDesk(stage));
    }

    private void layTheDesk(Stage stage) {
        stage.getIcons().add(new Image(DeskApp.class.getResource("icon.png").toString()));
        workbook = Workbook.open(DataFolder.usual());
        Loaded<Preferences> kept = workbook.preferences();
        settings = new Settings(kept.value());
        bench = new BenchRunner(work, () -> settings.preferences().get());
        keeper = new Keeper(workbook, keeping, Platform::runLater, words -> desk.tell(words));
        desk = new DeskModel(LessonReader::read, bench, work, Platform::runLater, keeper);
        press =
                new Printing(
                        work,
                        Platform::runLater,
                        () -> new BenchRunner(work, () -> settings.preferences().get()),
                        words -> desk.tell(words));
        batches = new BatchShelf(workbook, keeping, Platform::runLater, desk::tell);
        new Following(desk, keeping, Platform::runLater);
        desk.brew().keepOn(batches);
        kept.messages().forEach(desk::tell);
        desk.typeSize().set(kept.value().typeSizePercent());
        desk.typeSize()
                .percent()
                .addListener(
                        (value, was, is) ->
                                settings.change(all -> all.withTypeSizePercent(is.intValue())));
        settings.preferences().addListener((value, was, is) -> set(was, is, stage));
        keeper.follow(settings.preferences().get(), this::settle);
        keeper.whenTakenOver(() -> batches.readAgain(desk.brew()));
        stage.getScene().setRoot(view(stage));
        if (desk.notice().get().isEmpty()) {
            toOpen().forEach(desk::announce);
        }
        stage.focusedProperty().addListener(value -> keeper.tryAgain());
        Frames.after(FRAMES_TO_SHOW, this::fillAndWarm);
    }

    private DeskView view(Stage stage) {
        Say.in(language(settings.preferences().get().language()));
        Pens pens = new Pens(FigurePainter.STILL, pen, Platform::runLater);
        return new DeskView(
                desk,
                settings,
                pens,
                new Deeds(
                        () -> openFile(stage),
                        address -> getHostServices().showDocument(address),
                        keeper::putAway,
                        (lesson, name) -> handIn(lesson, name, stage),
                        (lesson, choice) -> handout(lesson, choice, stage),
                        () -> stage.setFullScreen(!stage.isFullScreen())));
    }

    private static Locale language(Language language) {
        return switch (language) {
            case SYSTEM -> Locale.getDefault();
            case EN -> Locale.ENGLISH;
            case DE -> Locale.GERMAN;
        };
    }

    /** Settings have changed: what hangs on them follows. */
    private void set(Preferences was, Preferences is, Stage stage) {
        keeper.keep(is);
        if (!was.limits().equals(is.limits())) {
            bench.renew();
        }
        if (was.language() != is.language()) {
            stage.getScene().setRoot(view(stage));
        }
    }

    /** Another window has changed settings. */
    private void settle(Preferences both) {
        settings.change(all -> both);
        desk.typeSize().set(both.typeSizePercent());
    }

    /** First the window, then its page, then the bench, then what drawing needs. */
    private void fillAndWarm() {
        desk.fetch(DeskApp::lessons)
                .thenRun(() -> toOpen().forEach(this::open))
                .thenRun(() -> Frames.after(FRAMES_TO_SHOW, bench::open))
                .thenRun(
                        () ->
                                Frames.after(
                                        FRAMES_TO_READ, () -> pen.execute(ChartPainter::warmUp)));
    }

    /** What was named when the program was started. */
    private List<Path> toOpen() {
        return getParameters().getRaw().stream().map(Path::of).toList();
    }

    private void open(Path file) {
        if (file.toString().endsWith(BatchShelf.ENDING)) {
            desk.openBatches();
            batches.open(file, desk.brew());
        } else {
            desk.openFile(file);
        }
    }

    private static List<Lesson> lessons() {
        LessonShelf shelf = LessonShelf.ofThisProgram();
        return shelf.names().stream().map(shelf::read).toList();
    }

    private void handIn(LessonModel lesson, String name, Stage stage) {
        HandIn work = HandIn.of(keeper.workOn(lesson), name, lesson.lesson(), Instant.now());
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Say.of("hand-in.save"));
        chooser.setInitialFileName(work.fileName());
        File file = chooser.showSaveDialog(stage);
        if (file != null) {
            try {
                WholeFile.write(file.toPath(), work.text().getBytes(StandardCharsets.UTF_8));
                desk.tell(Say.of("hand-in.saved", file.getName()));
            } catch (WholeFile.UnwrittenException e) {
                desk.tell(Trouble.unwritten(file, e));
            }
        }
    }

    private void handout(LessonModel lesson, HandoutChoice choice, Stage stage) {
        if (!lesson.gate().open().get() && choice.edition() != Edition.BLANK) {
            desk.tell(Say.of("handout.not-agreed"));
            return;
        }
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Say.of("handout"));
        chooser.setInitialFileName(lesson.lesson().name() + ".pdf");
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter("PDF", "*.pdf"),
                        new FileChooser.ExtensionFilter("HTML", "*.html"));
        File file = chooser.showSaveDialog(stage);
        if (file != null) {
            Optional<HandIn> own =
                    choice.withWork()
                            ? Optional.of(
                                    HandIn.of(
                                            keeper.workOn(lesson),
                                            "",
                                            lesson.lesson(),
                                            Instant.now()))
                            : Optional.empty();
            press.write(
                    lesson.lesson(),
                    new Wish(choice.edition(), choice.paper(), false, own),
                    file.toPath(),
                    lesson.gate().open().get());
        }
    }

    private void openFile(Stage stage) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Say.of("open-file"));
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter(
                                Say.of("open-file.lessons"), "*.md", "*.zip"),
                        new FileChooser.ExtensionFilter(Say.of("open-file.all"), "*"));
        File file = chooser.showOpenDialog(stage);
        if (file != null) {
            desk.openFile(file.toPath());
        }
    }

    /** The window lives on, whatever broke in it. */
    private void broke(Throwable trouble) {
        LOG.log(System.Logger.Level.ERROR, "the window broke", trouble);
        String words = Say.of("desk.broke", trouble);
        if (desk != null) {
            desk.tell(words);
        } else {
            Label alone = Words.label(words);
            Window.getWindows().forEach(one -> one.getScene().setRoot(new StackPane(alone)));
        }
    }

    @Override
    public void stop() {
        if (batches != null) {
            keeper.takeOverAtLast();
            batches.close();
            keeper.close();
            bench.close();
        }
        keeping.shutdownNow();
        work.shutdownNow();
        pen.shutdownNow();
    }
}
