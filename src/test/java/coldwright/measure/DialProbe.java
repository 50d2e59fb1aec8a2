package coldwright.measure;

import coldwright.desk.BenchRunner;
import coldwright.desk.figure.FigurePainter;
import coldwright.desk.figure.RenderContext;
import coldwright.desk.lesson.model.DialModel;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.PreferencesModel;
import coldwright.desk.page.DeskView;
import coldwright.desk.page.TestDesk;
import coldwright.lesson.LessonReader;
import coldwright.workbook.settings.Preferences;

import com.sun.javafx.tk.RenderJob;
import com.sun.javafx.tk.Toolkit;

import javafx.application.Application;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.stage.Stage;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/**
 * A process of its own that turns a dial in the window and says, for each turn, how many
 * milliseconds went by from the event to the frame that shows the new figure being drawn to its
 * end. Then it runs a snippet that prints without end and says how long the window's thread makes a
 * task wait.
 */
public final class DialProbe {
    private static final int WARM_UP = 60;
    private static final int TURNS = 200;
    private static final int ERRANDS = 100;
    private static final int PATIENCE_S = 60;
    private static final String HANGS =
            "while (true) { try { while (true) { System.out.print(1); } } catch (Throwable t) { } }";

    /** When, in one turn, the result was there, the figure painted, and the frame laid out. */
    private static volatile long resultAt;

    private static volatile long paintedAt;
    private static volatile long laidOutAt;

    private DialProbe() {}

    /** The desk with one lesson. */
    public static final class OneLesson extends Application {
        private static final CompletableFuture<DeskModel> DESK = new CompletableFuture<>();
        private final ExecutorService work = Executors.newCachedThreadPool(DialProbe::daemon);
        private final ExecutorService pen = Executors.newSingleThreadExecutor(DialProbe::daemon);

        @Override
        public void start(Stage stage) {
            BenchRunner bench = new BenchRunner(work, Preferences::usual);
            DeskModel desk =
                    new DeskModel(
                            LessonReader::read, bench, work, Platform::runLater, TestDesk.UNKEPT);
            RenderContext renderContext =
                    new RenderContext(FigurePainter.STILL, pen, Platform::runLater);
            DeskView view =
                    new DeskView(
                            desk,
                            new PreferencesModel(Preferences.usual()),
                            renderContext,
                            TestDesk.idle(),
                            Optional.empty());
            stage.setScene(new Scene(view, 1280, 800));
            stage.show();
            desk.fetch(() -> List.of(LessonReader.read("dial.md", BenchMeasures.lesson())))
                    .thenRun(() -> desk.open(desk.lessons().get(0)))
                    .thenRun(() -> DESK.complete(desk));
        }
    }

    private static Thread daemon(Runnable run) {
        Thread thread = new Thread(run);
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Turns and reports.
     *
     * @param words none
     * @throws Exception if no figure comes
     */
    public static void main(String[] words) throws Exception {
        daemon(() -> Application.launch(OneLesson.class)).start();
        DeskModel desk = OneLesson.DESK.get(PATIENCE_S, TimeUnit.SECONDS);
        var snippet = desk.open().get().snippets().get(0);
        Platform.runLater(snippet::run);
        WindowProbe.await(() -> WindowProbe.nodes(WindowProbe::isFigure).findAny().isPresent());
        Thread.sleep(3_000);
        ImageView plate =
                (ImageView) WindowProbe.nodes(WindowProbe::isFigure).findFirst().orElseThrow();
        DialModel dial = snippet.dials().get(0);
        Platform.runLater(
                () ->
                        snippet.result()
                                .lastRun()
                                .addListener(value -> resultAt = System.nanoTime()));
        Random random = new Random(7);
        for (int i = -WARM_UP; i < TURNS; i++) {
            double ms = turn(dial, 41 + (i + WARM_UP) % 200, plate);
            if (i >= 0) {
                WindowProbe.say("dial", ms);
                WindowProbe.say("dial_painted", (paintedAt - resultAt) / 1e6);
                WindowProbe.say("dial_frame", (laidOutAt - paintedAt) / 1e6);
                WindowProbe.say("dial_drawn", (System.nanoTime() - laidOutAt) / 1e6);
            }
            Thread.sleep(20 + random.nextInt(40));
        }
        errandsWhileTheBenchHangs(snippet);
        Platform.exit();
        System.exit(0);
    }

    private static void errandsWhileTheBenchHangs(SnippetModel snippet) throws Exception {
        Platform.runLater(
                () -> {
                    snippet.text().set(HANGS);
                    snippet.run();
                });
        WindowProbe.await(() -> snippet.phase().get() == SnippetModel.Phase.RUNNING);
        for (int i = 0; i < ERRANDS; i++) {
            Thread.sleep(20);
            CompletableFuture<Long> done = new CompletableFuture<>();
            long asked = System.nanoTime();
            Platform.runLater(() -> done.complete(System.nanoTime()));
            WindowProbe.say("errand", (done.get(PATIENCE_S, TimeUnit.SECONDS) - asked) / 1e6);
        }
    }

    private static double turn(DialModel dial, double to, ImageView plate) throws Exception {
        CompletableFuture<Double> presented = new CompletableFuture<>();
        Platform.runLater(
                () -> {
                    long event = System.nanoTime();
                    plate.imageProperty()
                            .addListener(
                                    new ChangeListener<Image>() {
                                        @Override
                                        public void changed(
                                                javafx.beans.value.ObservableValue<? extends Image>
                                                        value,
                                                Image was,
                                                Image is) {
                                            plate.imageProperty().removeListener(this);
                                            paintedAt = System.nanoTime();
                                            onceDrawn(plate, event, presented);
                                        }
                                    });
                    dial.turn(to);
                });
        return presented.get(PATIENCE_S, TimeUnit.SECONDS);
    }

    /** The next frame shows it; its drawing goes before any job that is asked for after it. */
    private static void onceDrawn(
            ImageView plate, long event, CompletableFuture<Double> presented) {
        Runnable afterLayout =
                new Runnable() {
                    @Override
                    public void run() {
                        plate.getScene().removePostLayoutPulseListener(this);
                        laidOutAt = System.nanoTime();
                        Platform.runLater(
                                () ->
                                        Toolkit.getToolkit()
                                                .addRenderJob(
                                                        new RenderJob(
                                                                () ->
                                                                        presented.complete(
                                                                                (System.nanoTime()
                                                                                                - event)
                                                                                        / 1e6))));
                    }
                };
        plate.getScene().addPostLayoutPulseListener(afterLayout);
    }
}
