package coldwright.desk.page;

import static coldwright.desk.page.OnPage.has;
import static coldwright.desk.page.OnPage.press;
import static coldwright.desk.page.OnPage.slip;
import static coldwright.desk.page.OnPage.snippet;
import static coldwright.desk.page.OnPage.statusStarts;
import static coldwright.desk.page.OnPage.typeInto;
import static coldwright.desk.page.OnPage.waitFor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.BenchRunner;
import coldwright.desk.code.CodeEditor;
import coldwright.desk.model.DeskModel;
import coldwright.workbook.settings.Preferences;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** What the page says beside its snippets, and how it takes it away again. */
@ExtendWith(ApplicationExtension.class)
class PageWordsWindowTest {
    private static final String TO_COME = "Run the step’s snippet to see its figure here.";

    private static final ExecutorService WORK =
            Executors.newCachedThreadPool(PageWordsWindowTest::daemon);
    private static BenchRunner bench;
    private DeskModel desk;

    private static Thread daemon(Runnable run) {
        Thread thread = new Thread(run);
        thread.setDaemon(true);
        return thread;
    }

    @BeforeAll
    static void openBench() {
        bench = new BenchRunner(WORK, Preferences::usual);
    }

    @Start
    void start(Stage stage) {
        desk = TestDesk.lay(stage, bench, WORK);
    }

    @AfterAll
    static void closeBench() {
        bench.close();
        WORK.shutdownNow();
    }

    @Test
    void aFigureIsPromisedOnlyWhereOneIsToCome(FxRobot robot) throws Exception {
        snippet(desk, 0);
        waitFor(() -> has(robot, TO_COME) ? true : null, "the promise of the first step");
        robot.interact(() -> desk.open().get().arrive(desk.open().get().steps().get(1)));
        WaitForAsyncUtils.waitForFxEvents();
        assertFalse(has(robot, TO_COME), "the second step draws nothing");
        robot.interact(() -> desk.open().get().arrive(desk.open().get().steps().get(0)));
        assertTrue(has(robot, TO_COME));
        robot.interact(() -> desk.open().get().snippets().get(0).run());
        waitFor(() -> has(robot, TO_COME) ? null : true, "the figure in its place");
    }

    @Test
    void escapePutsHelpAwayAlsoFromTheEditor(FxRobot robot) throws Exception {
        typeInto(robot, 0, "double top".length(), "");
        CodeEditor slip = slip(robot, 0);
        robot.push(KeyCode.F1);
        waitFor(() -> help(robot) ? true : null, "help");
        robot.push(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertFalse(help(robot));
        assertSame(slip, slip.getScene().getFocusOwner());

        robot.push(KeyCode.F1);
        waitFor(() -> help(robot) ? true : null, "help");
        Node away = robot.lookup(".help-pane .word").query();
        robot.interact(away::requestFocus);
        robot.push(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertFalse(help(robot));
        assertSame(slip, slip.getScene().getFocusOwner());
    }

    private static boolean help(FxRobot robot) {
        return robot.lookup(".help-pane").queryAll().stream().anyMatch(Node::isVisible);
    }

    @Test
    void whatCanBeDoneWithTheWholeLessonStandsInOneRow(FxRobot robot) throws Exception {
        snippet(desk, 0);
        Bounds all = bounds(robot, "Run all");
        Bounds paper = bounds(robot, "Print");
        assertEquals(all.getMaxY(), paper.getMaxY(), 2);
        assertTrue(paper.getMinX() > all.getMaxX());
        ButtonBase word = word(robot, "Print");
        robot.interact(word::fire);
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(all, bounds(robot, "Run all"), "what opens stands below the row");
        assertTrue(
                robot.lookup(".lesson-actions-opened").query().getBoundsInParent().getHeight()
                        > 20);
    }

    private static ButtonBase word(FxRobot robot, String words) throws Exception {
        return waitFor(
                () ->
                        robot
                                .lookup(".lesson-actions-row .word")
                                .queryAllAs(ButtonBase.class)
                                .stream()
                                .filter(one -> one.getText().equals(words))
                                .filter(one -> one.getWidth() > 0)
                                .findFirst()
                                .orElse(null),
                words);
    }

    private static Bounds bounds(FxRobot robot, String words) throws Exception {
        Node one = word(robot, words);
        return one.localToScene(one.getBoundsInLocal());
    }

    @Test
    void aStepThatRanForOneBelowSaysSo(FxRobot robot) throws Exception {
        press(robot, "Run", 1);
        waitFor(() -> statusStarts(robot, "ran for a snippet below") ? true : null, "the word");
        assertFalse(desk.open().get().steps().get(0).done().get());
        press(robot, "Run", 0);
        waitFor(() -> statusStarts(robot, "ran for a snippet below") ? null : true, "its own");
    }

    @Test
    void aLessonBegunAnewShowsNothingOfWhatRan(FxRobot robot) throws Exception {
        press(robot, "Run", 0);
        waitFor(() -> has(robot, "Draw a line – done") ? true : null, "the mark of the first step");
        robot.interact(() -> desk.open().get().reset());
        WaitForAsyncUtils.waitForFxEvents();
        assertFalse(has(robot, "Draw a line – done"));
        assertFalse(statusStarts(robot, "ran in"));
        assertFalse(has(robot, "top 40.0"), "what it printed");
        assertTrue(has(robot, TO_COME), "the figure is to come again");
        press(robot, "Run", 0);
        waitFor(() -> has(robot, "Draw a line – done") ? true : null, "done again");
    }
}
