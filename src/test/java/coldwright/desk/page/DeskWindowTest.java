package coldwright.desk.page;

import static coldwright.desk.page.OnPage.endOfLine;
import static coldwright.desk.page.OnPage.figureOnPage;
import static coldwright.desk.page.OnPage.has;
import static coldwright.desk.page.OnPage.inkOf;
import static coldwright.desk.page.OnPage.labelIn;
import static coldwright.desk.page.OnPage.press;
import static coldwright.desk.page.OnPage.reveal;
import static coldwright.desk.page.OnPage.slip;
import static coldwright.desk.page.OnPage.snippet;
import static coldwright.desk.page.OnPage.statusStarts;
import static coldwright.desk.page.OnPage.typeInto;
import static coldwright.desk.page.OnPage.waitFor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.RunOutcome;
import coldwright.desk.BenchRunner;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.lesson.model.SnippetModel.Phase;
import coldwright.desk.model.DeskModel;
import coldwright.workbook.settings.Preferences;

import javafx.scene.Node;
import javafx.scene.image.Image;
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

/** Presses real buttons and types real text in the window, on a real bench. */
@ExtendWith(ApplicationExtension.class)
class DeskWindowTest {
    private static final ExecutorService WORK = Executors.newCachedThreadPool();
    private static BenchRunner bench;

    private DeskModel desk;

    @BeforeAll
    static void openBench() {
        bench = new BenchRunner(WORK, Preferences::usual);
    }

    @AfterAll
    static void closeBench() {
        bench.close();
        WORK.shutdownNow();
    }

    @Start
    void start(Stage stage) {
        desk = TestDesk.lay(stage, bench, WORK);
    }

    @Test
    void aChangeIsTypedAndRunAndTheFigureChanges(FxRobot robot) throws Exception {
        SnippetModel snippet = snippet(desk, 0);
        press(robot, "Run", 0);
        Image first = waitFor(() -> figureOnPage(robot), "a figure");
        assertEquals(400, endOfLine(snippet.result().drawn().get(0)));
        assertEquals("top 40.0", snippet.result().printed().get().head());

        typeInto(robot, 0, "double top = ".length(), "1");
        assertTrue(snippet.text().get().startsWith("double top = 140;"));
        robot.push(KeyCode.CONTROL, KeyCode.ENTER);
        Image second =
                waitFor(
                        () -> {
                            Image now = figureOnPage(robot);
                            return snippet.result().drawn().get(0).earlier().isPresent()
                                            && now != first
                                    ? now
                                    : null;
                        },
                        "the new figure");
        assertEquals(1400, endOfLine(snippet.result().drawn().get(0)));
        assertNotEquals(inkOf(first), inkOf(second));
        waitFor(
                () ->
                        has(
                                        robot,
                                        "1 of 2 checks pass. They are meant for the snippets before your change.")
                                ? true
                                : null,
                "the checks");

        press(robot, "Reset", 0);
        assertTrue(snippet.text().get().startsWith("double top = 40;"));
    }

    @Test
    void anErrorStandsAtItsLine(FxRobot robot) throws Exception {
        typeInto(robot, 0, "double top = ".length(), "nothing + ");
        press(robot, "Run", 0);
        Node problem = waitFor(() -> robot.lookup(".problem").tryQuery().orElse(null), "a problem");
        assertTrue(slip(robot, 0).getParagraph(0).getParagraphStyle().contains("wrong-line"));
        assertTrue(robot.from(problem).lookup("Line 1").tryQuery().isPresent());
        String words = robot.from(problem).lookup(".error").query().getAccessibleText();
        assertTrue(words.contains("`nothing`"), words);
        assertTrue(robot.lookup(".compiler-words").tryQuery().isEmpty());
        robot.interact(() -> reveal(problem));
        robot.clickOn("Java’s message");
        assertTrue(robot.lookup(".compiler-words").query().isVisible());

        typeInto(robot, 0, 0, " ");
        assertFalse(slip(robot, 0).getParagraph(0).getParagraphStyle().contains("wrong-line"));
    }

    @Test
    void anEndlessLoopIsStoppedAndTheWindowLives(FxRobot robot) throws Exception {
        SnippetModel snippet = snippet(desk, 0);
        robot.interact(() -> snippet.text().set("while (true) { }"));
        press(robot, "Run", 0);
        waitFor(() -> statusStarts(robot, "running, ") ? true : null, "the time it runs");
        press(robot, "Stop", 0);
        waitFor(() -> snippet.phase().get() == Phase.RESTING ? true : null, "the stop");
        assertEquals(new RunOutcome.Stopped(), snippet.result().lastRun().get().outcome());
        press(robot, "Reset", 0);
        press(robot, "Run", 0);
        waitFor(() -> figureOnPage(robot), "a figure after the stop");
    }

    @Test
    void aForecastStandsBesideTheResult(FxRobot robot) throws Exception {
        robot.interact(() -> reveal(robot.lookup("low").query()));
        robot.clickOn("low");
        press(robot, "Run", 0);
        Node answer =
                waitFor(
                        () ->
                                robot.lookup(".answer").queryAll().stream()
                                        .filter(Node::isVisible)
                                        .findFirst()
                                        .orElse(null),
                        "the answer");
        assertEquals("low", labelIn(robot, answer, ".beside-said"));
        assertEquals("high", labelIn(robot, answer, ".beside-right"));
        assertTrue(robot.lookup("low").query().isDisabled());
    }

    @Test
    void anImpossibleNumberIsToldAtItsLine(FxRobot robot) throws Exception {
        SnippetModel snippet = snippet(desk, 0);
        robot.interact(() -> snippet.text().set("var pot = 1;\nMix.of(grams(-5, WATER));"));
        press(robot, "Run", 0);
        String negative = trouble(robot, "-5");
        assertTrue(robot.lookup("Line 2").tryQuery().isPresent(), negative);
        robot.interact(
                () ->
                        snippet.text()
                                .set("Mix.of(grams(9, WATER)).freezingCurve().icePercentAt(-300)"));
        press(robot, "Run", 0);
        trouble(robot, "-300");
    }

    private static String trouble(FxRobot robot, String part) throws Exception {
        return waitFor(
                () ->
                        robot.lookup(".error").queryAll().stream()
                                .map(Node::getAccessibleText)
                                .filter(words -> words.replace('−', '-').contains(part))
                                .findFirst()
                                .orElse(null),
                "a sentence with " + part);
    }
}
