package coldwright.desk.page;

import static coldwright.desk.page.OnPage.snippet;
import static coldwright.desk.page.OnPage.waitFor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.BenchRunner;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.model.DeskModel;
import coldwright.workbook.settings.Preferences;

import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Dials, the home page, the settings and the view for a room, by key and mouse. */
@ExtendWith(ApplicationExtension.class)
final class DialWindowTest {
    private static final ExecutorService WORK = Executors.newCachedThreadPool();

    /** What comes of a run makes the page longer; at its ends it would stand at 0 or 1. */
    private static final double AS_THE_PAGE_GROWS = 0.03;

    private static BenchRunner bench;
    private DeskModel desk;
    private Stage stage;

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
        this.stage = stage;
        desk = TestDesk.lay(stage, bench, WORK);
    }

    private SnippetModel dialled(FxRobot robot) throws Exception {
        waitFor(() -> desk.open().get(), "the lesson");
        SnippetModel snippet = snippet(desk, 0);
        robot.interact(
                () -> snippet.text().set("double top = 40; // dial 0 to 80 step 2 mm\ntop * 10"));
        return snippet;
    }

    private static Slider slider(FxRobot robot) throws Exception {
        return waitFor(
                () -> robot.lookup(".dial .slider").<Slider>tryQuery().orElse(null), "a dial");
    }

    @Test
    void arrowKeysTurnADialAndTheTextFollowsWhenItRests(FxRobot robot) throws Exception {
        SnippetModel snippet = dialled(robot);
        Slider slider = slider(robot);
        robot.interact(slider::requestFocus);
        robot.type(KeyCode.RIGHT);
        robot.type(KeyCode.RIGHT);
        waitFor(() -> OnPage.has(robot, "440") ? true : null, "the value at 44");
        waitFor(() -> snippet.text().get().contains("top = 44;") ? true : null, "the text");
        robot.type(KeyCode.PAGE_DOWN);
        waitFor(() -> OnPage.has(robot, "240") ? true : null, "ten notches down");
        assertTrue(slider.getAccessibleText().startsWith("top, 0 to 80 mm"));
    }

    @Test
    void homeAndEndTurnTheDialAndLeaveThePageWhereItIs(FxRobot robot) throws Exception {
        dialled(robot);
        Slider slider = slider(robot);
        ScrollPane page =
                robot.lookup(
                                node ->
                                        node instanceof ScrollPane pane
                                                && pane.getStyleClass().contains("reading"))
                        .query();
        robot.interact(
                () -> {
                    slider.requestFocus();
                    page.setVvalue(0.1);
                });
        double before = page.getVvalue();
        robot.type(KeyCode.END);
        waitFor(() -> OnPage.has(robot, "800") ? true : null, "the value at 80");
        assertEquals(before, page.getVvalue(), AS_THE_PAGE_GROWS);
        robot.type(KeyCode.HOME);
        waitFor(() -> OnPage.has(robot, "0") ? true : null, "the value at 0");
        assertEquals(before, page.getVvalue(), AS_THE_PAGE_GROWS);
    }

    @Test
    void aTypedNumberIsTakenAndNonsenseIsToldInASentence(FxRobot robot) throws Exception {
        SnippetModel snippet = dialled(robot);
        slider(robot);
        TextField field = robot.lookup(".dial-number").query();
        robot.interact(
                () -> {
                    field.requestFocus();
                    field.setText("900");
                });
        robot.type(KeyCode.ENTER);
        assertTrue(OnPage.has(robot, "“900” isn’t a number from 0 to 80."));
        robot.interact(() -> field.setText("12.5"));
        robot.type(KeyCode.ENTER);
        waitFor(() -> snippet.text().get().contains("top = 12.5;") ? true : null, "the text");
        waitFor(() -> OnPage.has(robot, "125") ? true : null, "the value");
    }

    @Test
    void homeSettingsAndRoomAreAKeyOrAWordAway(FxRobot robot) throws Exception {
        dialled(robot);
        robot.type(KeyCode.F9);
        waitFor(() -> robot.lookup(".classroom").tryQuery().orElse(null), "the room");
        assertTrue(OnPage.has(robot, "Step 1 of 3 · A lesson to press on"));
        robot.clickOn("Next step");
        assertEquals(2, desk.open().get().inSight().get().number());
        robot.type(KeyCode.F9);
        assertFalse(robot.lookup(".classroom").tryQuery().isPresent());
        robot.clickOn("Settings");
        robot.clickOn("dark");
        assertTrue(stage.getScene().getRoot().getStyleClass().contains("dark"));
        robot.clickOn("light");
        assertFalse(stage.getScene().getRoot().getStyleClass().contains("dark"));
        robot.clickOn("Coldwright");
        waitFor(() -> robot.lookup(".home-picture").tryQuery().orElse(null), "home");
    }

    @Test
    void handsAreCountedInTheRoom(FxRobot robot) throws Exception {
        dialled(robot);
        robot.type(KeyCode.F9);
        waitFor(() -> robot.lookup(".votes").tryQuery().orElse(null), "the hands");
        robot.clickOn("+");
        robot.clickOn("+");
        assertTrue(OnPage.has(robot, "2"));
    }
}
