package coldwright.desk;

import coldwright.desk.batch.model.BatchStore;
import coldwright.desk.figure.FigurePainter;
import coldwright.desk.figure.RenderContext;
import coldwright.desk.layout.AfterFrame;
import coldwright.desk.lesson.AppActions;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.PreferencesModel;
import coldwright.desk.page.DeskView;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.lesson.LessonReader;
import coldwright.paint.ChartPainter;
import coldwright.words.Words;
import coldwright.workbook.DataFolder;
import coldwright.workbook.LoadedWork;
import coldwright.workbook.Workbook;
import coldwright.workbook.settings.Preferences;

import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import javafx.stage.Window;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;

/** The JavaFX application: builds the window and its models, and closes them again. */
public final class DeskApp extends Application {
    /** The first frame lays out, the second is on the screen. */
    private static final int FRAMES_TO_SHOW = 2;

    /** The window's colour before the page appears; suits a light desktop and a dark one. */
    private static final Color BARE = Color.web("#8a979d");

    /** After so many frames the first steps of the lesson are on the page. */
    private static final int FRAMES_TO_READ = 6;

    private static final System.Logger LOG = System.getLogger("coldwright.desk");

    private final ExecutorService work = Executors.newCachedThreadPool(run -> daemon(run, "work"));
    private final ExecutorService painting =
            Executors.newSingleThreadExecutor(run -> daemon(run, "painting"));
    private final ScheduledExecutorService saveTimer =
            Executors.newSingleThreadScheduledExecutor(run -> daemon(run, "saving"));
    private Workbook workbook;
    private PreferencesModel settings;
    private StagePlace place;
    private WorkKeeper workKeeper;
    private BenchRunner bench;
    private BatchStore batches;
    private DeskModel desk;
    private HandoutPrinter printer;

    private static Thread daemon(Runnable run, String name) {
        Thread thread = new Thread(run, "desk-" + name);
        thread.setDaemon(true);
        return thread;
    }

    /** Shows the window at once; its content is built while it is being drawn. */
    @Override
    public void start(Stage stage) {
        Thread.currentThread().setUncaughtExceptionHandler((thread, error) -> broke(error));
        workbook = Workbook.open(DataFolder.usual());
        LoadedWork<Preferences> kept = workbook.preferences();
        settings = new PreferencesModel(kept.value());
        stage.setScene(new Scene(new StackPane(), BARE));
        stage.setTitle("Coldwright");
        place = new StagePlace(stage, kept.value().window());
        stage.show();
        AfterFrame.after(FRAMES_TO_SHOW, () -> fillWindow(stage, kept.messages()));
    }

    private void fillWindow(Stage stage, List<String> messages) {
        stage.getIcons().add(new Image(DeskApp.class.getResource("icon.png").toString()));
        bench = new BenchRunner(work, () -> settings.preferences().get());
        workKeeper =
                new WorkKeeper(
                        workbook, saveTimer, Platform::runLater, words -> desk.notify(words));
        desk = new DeskModel(LessonReader::read, bench, work, Platform::runLater, workKeeper);
        printer =
                new HandoutPrinter(
                        work,
                        Platform::runLater,
                        () -> new BenchRunner(work, () -> settings.preferences().get()),
                        words -> desk.notify(words));
        batches = new BatchStore(workbook, saveTimer, Platform::runLater, desk::notify);
        new LessonFileWatcher(desk, saveTimer, Platform::runLater);
        desk.batches().keepOn(batches);
        messages.forEach(desk::notify);
        desk.typeSize().set(settings.preferences().get().typeSizePercent());
        desk.typeSize()
                .percent()
                .addListener(
                        (value, was, is) ->
                                settings.change(all -> all.withTypeSizePercent(is.intValue())));
        settings.preferences().addListener((value, was, is) -> set(was, is, stage));
        workKeeper.settings().follow(settings.preferences().get(), this::settle);
        workKeeper.whenTakenOver(() -> batches.readAgain(desk.batches()));
        stage.getScene().setRoot(view(stage));
        if (desk.notice().get().isEmpty()) {
            toOpen().forEach(desk::announce);
        }
        stage.focusedProperty().addListener(value -> workKeeper.tryAgain());
        AfterFrame.after(FRAMES_TO_SHOW, this::fillAndWarm);
    }

    private DeskView view(Stage stage) {
        Words.show(settings.preferences().get().language().locale());
        FileDialogs dialogs = new FileDialogs(stage, desk, workKeeper, printer);
        RenderContext renderContext =
                new RenderContext(FigurePainter.STILL, painting, Platform::runLater);
        return new DeskView(
                desk,
                settings,
                renderContext,
                new AppActions(
                        dialogs::openFile,
                        address -> getHostServices().showDocument(address),
                        workKeeper::archive,
                        dialogs::handIn,
                        dialogs::handout,
                        () -> stage.setFullScreen(!stage.isFullScreen())));
    }

    /** Settings have changed: updates what depends on them. */
    private void set(Preferences was, Preferences is, Stage stage) {
        workKeeper.settings().keep(is);
        if (!was.limits().equals(is.limits())) {
            bench.renew();
        }
        if (was.language() != is.language()) {
            ((DeskView) stage.getScene().getRoot()).close();
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
                .thenRun(() -> AfterFrame.after(FRAMES_TO_SHOW, bench::open))
                .thenRun(
                        () ->
                                AfterFrame.after(
                                        FRAMES_TO_READ,
                                        () -> painting.execute(ChartPainter::warmUp)));
    }

    /** The files named on the command line. */
    private List<Path> toOpen() {
        return getParameters().getRaw().stream().map(Path::of).toList();
    }

    private void open(Path file) {
        if (file.toString().endsWith(BatchStore.ENDING)) {
            desk.openBatches();
            batches.files().open(file, desk.batches());
        } else {
            desk.openFile(file);
        }
    }

    private static List<Lesson> lessons() {
        LessonFolder shelf = LessonFolder.ofThisProgram();
        return shelf.names().stream().map(shelf::read).toList();
    }

    /** Logs an unexpected exception; the window stays opainting. */
    private void broke(Throwable error) {
        LOG.log(System.Logger.Level.ERROR, "the window broke", error);
        String words = Messages.of("desk.error");
        if (desk != null) {
            desk.notify(words);
        } else {
            Label alone = TextControls.label(words);
            Window.getWindows().forEach(one -> one.getScene().setRoot(new StackPane(alone)));
        }
    }

    @Override
    public void stop() {
        if (batches != null) {
            settings.change(all -> all.with(place.now()));
            workKeeper.takeOverAtLast();
            batches.close();
            workKeeper.close();
            bench.close();
        }
        saveTimer.shutdownNow();
        work.shutdownNow();
        painting.shutdownNow();
    }
}
