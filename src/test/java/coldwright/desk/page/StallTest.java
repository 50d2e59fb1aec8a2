package coldwright.desk.page;

import static coldwright.desk.page.OnPage.snippet;
import static coldwright.desk.page.OnPage.waitFor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.desk.BenchRunner;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.model.DeskModel;
import coldwright.workbook.settings.Preferences;

import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.stage.Stage;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/** The window's thread never waits for the bench. */
@ExtendWith(ApplicationExtension.class)
final class StallTest {
    /** A second's worth; the measured run says how long the window makes one wait. */
    private static final int FRAMES = 60;

    private static final ExecutorService WORK = Executors.newCachedThreadPool();
    private static BenchRunner bench;
    private DeskModel desk;

    @BeforeAll
    static void open() {
        bench = new BenchRunner(WORK, Preferences::usual);
    }

    @AfterAll
    static void close() {
        bench.close();
        WORK.shutdownNow();
    }

    @Start
    void start(Stage stage) {
        desk = TestDesk.lay(stage, bench, WORK);
    }

    @Test
    void theWindowGoesOnWhileTheBenchHangs(FxRobot robot) throws Exception {
        SnippetModel snippet = snippet(desk, 0);
        robot.interact(
                () ->
                        snippet.text()
                                .set(
                                        "while (true) { try { while (true) { System.out.print(1); }"
                                                + " } catch (Throwable t) { } }"));
        Platform.runLater(snippet::run); // a click would wait for the window without end
        waitFor(() -> snippet.phase().get() == SnippetModel.Phase.RUNNING ? true : null, "the run");
        CompletableFuture<SnippetModel.Phase> drawn = new CompletableFuture<>();
        Platform.runLater(() -> afterFrames(drawn, snippet));
        assertEquals(
                SnippetModel.Phase.RUNNING,
                drawn.get(OnPage.PATIENCE_S, TimeUnit.SECONDS),
                "the frames came while the bench hung");
        robot.interact(snippet::stop);
        waitFor(
                () -> snippet.phase().get() == SnippetModel.Phase.RESTING ? true : null,
                "the stop");
    }

    /** Counts the frames that the window draws, then says what the snippet does. */
    private static void afterFrames(
            CompletableFuture<SnippetModel.Phase> drawn, SnippetModel snippet) {
        new AnimationTimer() {
            private int frames;

            @Override
            public void handle(long now) {
                if (++frames == FRAMES) {
                    stop();
                    drawn.complete(snippet.phase().get());
                }
            }
        }.start();
    }
}
