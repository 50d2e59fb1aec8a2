package coldwright.desk.page;

import static coldwright.desk.page.OnPage.press;
import static coldwright.desk.page.OnPage.snippet;
import static coldwright.desk.page.OnPage.waitFor;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.BenchRunner;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.SnippetModel;
import coldwright.workbook.settings.Preferences;

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
    /** What a person notices as a halt. */
    private static final double STALL_MS = 100;

    /** A machine that makes the watcher itself late by so much says nothing of the window. */
    private static final double WATCHER_LATE_MS = 30;

    private static final int LOOKS = 100;
    private static final int PAUSE_MS = 20;
    private static final int TRIES = 4;

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
        press(robot, "Run", 0);
        waitFor(() -> snippet.phase().get() == SnippetModel.Phase.RUNNING ? true : null, "the run");
        double worst = Double.MAX_VALUE;
        for (int i = 0; i < TRIES && worst > STALL_MS; i++) {
            worst = Math.min(worst, worstWait());
        }
        robot.interact(snippet::stop);
        waitFor(
                () -> snippet.phase().get() == SnippetModel.Phase.RESTING ? true : null,
                "the stop");
        assertTrue(worst <= STALL_MS, "the window's thread was busy for " + worst + " ms");
    }

    /** The longest time that an errand waited for the window's thread, ms. */
    private static double worstWait() throws Exception {
        double worst = 0;
        for (int i = 0; i < LOOKS; i++) {
            long before = System.nanoTime();
            Thread.sleep(PAUSE_MS);
            double late = (System.nanoTime() - before) / 1e6 - PAUSE_MS;
            CompletableFuture<Long> done = new CompletableFuture<>();
            long asked = System.nanoTime();
            Platform.runLater(() -> done.complete(System.nanoTime()));
            double waited = (done.get(30, TimeUnit.SECONDS) - asked) / 1e6;
            if (late < WATCHER_LATE_MS) {
                worst = Math.max(worst, waited);
            }
        }
        return worst;
    }
}
