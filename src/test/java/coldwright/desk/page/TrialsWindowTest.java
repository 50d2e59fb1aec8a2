package coldwright.desk.page;

import static coldwright.desk.page.OnPage.has;
import static coldwright.desk.page.OnPage.waitFor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.BenchRunner;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.ShownPage;
import coldwright.lesson.LessonReader;
import coldwright.workbook.settings.Preferences;

import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** The kitchen trials in the window: there from the home page, and back by button and by key. */
@ExtendWith(ApplicationExtension.class)
class TrialsWindowTest {
    private static final String LINK = "Kitchen trials that need no machine";
    private static final String TITLE = "Kitchen trials without a machine";
    private static final String FIRST = "lessons/01-what-is-in-a-mix.md";
    private static final int TRIALS = 14;

    private final ExecutorService work = Executors.newCachedThreadPool();
    private BenchRunner bench;
    private DeskModel desk;

    @Start
    void start(Stage stage) {
        bench = new BenchRunner(work, Preferences::usual);
        desk = TestDesk.lay(stage, bench, work);
    }

    @AfterEach
    void close() {
        bench.close();
        work.shutdownNow();
    }

    private void goHome(FxRobot robot) throws Exception {
        waitFor(desk.open()::get, "the lesson");
        robot.interact(desk::goHome);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void openTrials(FxRobot robot) throws Exception {
        goHome(robot);
        Button link =
                waitFor(
                        () ->
                                robot.lookup(LINK).queryAllAs(Button.class).stream()
                                        .findFirst()
                                        .orElse(null),
                        "the link");
        robot.interact(link::requestFocus);
        robot.type(KeyCode.ENTER);
        waitFor(() -> has(robot, TITLE) ? true : null, "the page");
        assertEquals(ShownPage.TRIALS, desk.place().get());
    }

    @Test
    void allTrialsStandThereToReadAndNothingRuns(FxRobot robot) throws Exception {
        openTrials(robot);
        for (int n = 1; n <= TRIALS; n++) {
            String start = n + ". ";
            assertTrue(
                    robot.lookup(".step-title").queryAllAs(Label.class).stream()
                            .anyMatch(title -> title.getText().startsWith(start)),
                    "trial " + n);
        }
        assertTrue(robot.lookup(".code-editor").queryAll().isEmpty(), "no editor");
        assertTrue(robot.lookup(".listing").queryAll().isEmpty(), "the Java is folded");
        assertFalse(has(robot, "Run"), "no run button");
    }

    @Test
    void theCourseBookOpensAsALesson(FxRobot robot) throws Exception {
        goHome(robot);
        Button link =
                waitFor(
                        () ->
                                robot
                                        .lookup("For teachers: the course book")
                                        .queryAllAs(Button.class)
                                        .stream()
                                        .findFirst()
                                        .orElse(null),
                        "the link");
        for (int time = 1; time <= 2; time++) {
            robot.interact(link::fire);
            WaitForAsyncUtils.waitForFxEvents();
            assertEquals(ShownPage.LESSON, desk.place().get());
            assertEquals("The course", desk.open().get().lesson().title());
            robot.interact(desk::goHome);
        }
    }

    @Test
    void backByButtonEscapeAndAltLeft(FxRobot robot) throws Exception {
        openTrials(robot);
        robot.clickOn("Back");
        assertEquals(ShownPage.HOME, desk.place().get());
        openTrials(robot);
        robot.type(KeyCode.ESCAPE);
        assertEquals(ShownPage.HOME, desk.place().get());
        openTrials(robot);
        robot.press(KeyCode.ALT, KeyCode.LEFT).release(KeyCode.LEFT, KeyCode.ALT);
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(ShownPage.HOME, desk.place().get());
        waitFor(() -> has(robot, LINK) ? true : null, "the home page");
    }

    @Test
    void escapeLeavesALessonWhereItIs(FxRobot robot) throws Exception {
        waitFor(desk.open()::get, "the lesson");
        robot.type(KeyCode.ESCAPE);
        assertEquals(ShownPage.LESSON, desk.place().get());
    }

    @Test
    void aLinkToALessonOpensIt(FxRobot robot) throws Exception {
        robot.interact(
                () ->
                        desk.fetch(
                                () ->
                                        List.of(
                                                LessonReader.read(
                                                        FIRST, "# One\n\n## Step\n\nRead."))));
        waitFor(() -> desk.lessons().size() == 2 ? true : null, "a second lesson");
        openTrials(robot);
        Hyperlink link = robot.lookup(".prose-link").queryAllAs(Hyperlink.class).iterator().next();
        robot.interact(link::fire);
        assertSame(desk.lessons().get(1), desk.open().get());
        assertEquals(ShownPage.LESSON, desk.place().get());
    }
}
