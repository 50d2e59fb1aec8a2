package coldwright.desk;

import coldwright.desk.layout.AfterFrame;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.PreferencesModel;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.paint.ChartPainter;
import coldwright.workbook.DataFolder;
import coldwright.workbook.LoadedWork;
import coldwright.workbook.Workbook;
import coldwright.workbook.settings.Preferences;

import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.stage.Stage;

import java.nio.file.Path;
import java.util.List;

/** The JavaFX application: shows the window, fills it, and closes it again. */
public final class DeskApp extends Application {
    /** The first frame lays out, the second is on the screen. */
    private static final int FRAMES_TO_SHOW = 2;

    /** The window's colour before the page appears; suits a light desktop and a dark one. */
    private static final Color BARE = Color.web("#8a979d");

    /** After so many frames the first steps of the lesson are on the page. */
    private static final int FRAMES_TO_READ = 6;

    private static final System.Logger LOG = System.getLogger("coldwright.desk");

    private final DeskThreads threads = DeskThreads.start();
    private PreferencesModel settings;
    private StagePlace place;
    private BenchRunner bench;
    private DeskWindow window;

    /** Shows the window at once; its content is built while it is being drawn. */
    @Override
    public void start(Stage stage) {
        Thread.currentThread().setUncaughtExceptionHandler((thread, error) -> broke(error, stage));
        Workbook workbook = Workbook.open(DataFolder.usual());
        LoadedWork<Preferences> kept = workbook.preferences();
        settings = new PreferencesModel(kept.value());
        stage.setTitle("Coldwright");
        place = new StagePlace(stage, kept.value().window());
        stage.setScene(new Scene(new StackPane(), place.now().width(), place.now().height(), BARE));
        stage.show();
        AfterFrame.after(FRAMES_TO_SHOW, () -> fillWindow(stage, workbook, kept.messages()));
    }

    private void fillWindow(Stage stage, Workbook workbook, List<String> messages) {
        for (String icon : List.of("icon.png", "icon-32.png")) {
            stage.getIcons().add(new Image(DeskApp.class.getResource(icon).toString()));
        }
        bench = new BenchRunner(threads.work(), () -> settings.preferences().get());
        window =
                new DeskWindow(
                        stage,
                        threads,
                        workbook,
                        settings,
                        bench,
                        bench::renew,
                        address -> getHostServices().showDocument(address));
        messages.forEach(window.desk()::notify);
        toOpen().forEach(window.desk()::announce);
        AfterFrame.after(FRAMES_TO_SHOW, this::fillAndWarm);
    }

    /** First the window, then its page, then the bench, then what drawing needs. */
    private void fillAndWarm() {
        window.desk()
                .fetch(DeskApp::lessons)
                .thenRun(() -> toOpen().forEach(window::open))
                .thenRun(() -> AfterFrame.after(FRAMES_TO_SHOW, bench::open))
                .thenRun(
                        () ->
                                AfterFrame.after(
                                        FRAMES_TO_READ,
                                        () -> threads.painting().execute(ChartPainter::warmUp)));
    }

    private List<Path> toOpen() {
        return getParameters().getRaw().stream().map(Path::of).toList();
    }

    private static List<Lesson> lessons() {
        LessonFolder folder = LessonFolder.ofThisProgram();
        return folder.names().stream().map(folder::read).toList();
    }

    private void broke(Throwable error, Stage stage) {
        if (window != null) {
            window.broke(error);
        } else {
            LOG.log(System.Logger.Level.ERROR, "the window broke", error);
            stage.getScene().setRoot(new StackPane(TextControls.label(Messages.of("desk.error"))));
        }
    }

    @Override
    public void stop() {
        if (window != null) {
            settings.change(all -> all.with(place.now()));
            window.close();
            bench.close();
        }
        threads.close();
    }
}
