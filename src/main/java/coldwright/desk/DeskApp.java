package coldwright.desk;

import coldwright.desk.model.DeskModel;
import coldwright.desk.page.DeskView;
import coldwright.desk.page.FigurePainter;
import coldwright.desk.page.Frames;
import coldwright.desk.page.Pens;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;
import coldwright.lesson.LessonShelf;
import coldwright.paint.ChartPainter;

import javafx.application.Application;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.FileChooser;
import javafx.stage.Screen;
import javafx.stage.Stage;

import java.io.File;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** The program behind the window: puts the desk together and takes it apart again. */
public final class DeskApp extends Application {
    private static final double WIDTH_PX = 1280;
    private static final double HEIGHT_PX = 800;
    private static final double LEAST_WIDTH_PX = 480;
    private static final double LEAST_HEIGHT_PX = 360;

    /** The first frame lays out, the second is on the screen. */
    private static final int FRAMES_TO_SHOW = 2;

    /** By then the first steps of the lesson stand on the page. */
    private static final int FRAMES_TO_READ = 6;

    private static final System.Logger LOG = System.getLogger("coldwright.desk");

    private final ExecutorService work = Executors.newCachedThreadPool(run -> daemon(run, "work"));
    private final ExecutorService pen =
            Executors.newSingleThreadExecutor(run -> daemon(run, "pen"));
    private BenchRunner bench;
    private DeskModel desk;

    private static Thread daemon(Runnable run, String name) {
        Thread thread = new Thread(run, "desk-" + name);
        thread.setDaemon(true);
        return thread;
    }

    @Override
    public void start(Stage stage) {
        bench = new BenchRunner(work);
        desk = new DeskModel(LessonReader::read, bench, work, Platform::runLater);
        Thread.currentThread().setUncaughtExceptionHandler((thread, trouble) -> broke(trouble));
        Pens pens = new Pens(FigurePainter.STILL, pen, Platform::runLater);
        DeskView view =
                new DeskView(
                        desk,
                        pens,
                        () -> openFile(stage),
                        address -> getHostServices().showDocument(address));
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        stage.setScene(
                new Scene(
                        view,
                        Math.min(WIDTH_PX, screen.getWidth()),
                        Math.min(HEIGHT_PX, screen.getHeight())));
        stage.setMinWidth(LEAST_WIDTH_PX);
        stage.setMinHeight(LEAST_HEIGHT_PX);
        stage.setTitle("Coldwright");
        stage.show();
        Frames.after(FRAMES_TO_SHOW, this::fillAndWarm);
    }

    /** First the window, then its page and the bench together, then what drawing needs. */
    private void fillAndWarm() {
        bench.open();
        desk.fetch(DeskApp::lessons)
                .thenRun(
                        () ->
                                Frames.after(
                                        FRAMES_TO_READ, () -> pen.execute(ChartPainter::warmUp)));
    }

    private static List<Lesson> lessons() {
        LessonShelf shelf = LessonShelf.ofThisProgram();
        return shelf.names().stream().map(shelf::read).toList();
    }

    private void openFile(Stage stage) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Open a lesson file");
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter("Lessons", "*.md"),
                        new FileChooser.ExtensionFilter("All files", "*"));
        File file = chooser.showOpenDialog(stage);
        if (file != null) {
            desk.openFile(file.toPath());
        }
    }

    /** The window lives on, whatever broke in it. */
    private void broke(Throwable trouble) {
        LOG.log(System.Logger.Level.ERROR, "the window broke", trouble);
        desk.tell("Something in the window broke; your texts are kept. (" + trouble + ")");
    }

    @Override
    public void stop() {
        bench.close();
        work.shutdownNow();
        pen.shutdownNow();
    }
}
