package coldwright.desk.page;

import static coldwright.desk.page.OnPage.endOfLine;
import static coldwright.desk.page.OnPage.figureOnPage;
import static coldwright.desk.page.OnPage.has;
import static coldwright.desk.page.OnPage.inkOf;
import static coldwright.desk.page.OnPage.isWithin;
import static coldwright.desk.page.OnPage.labelIn;
import static coldwright.desk.page.OnPage.plate;
import static coldwright.desk.page.OnPage.press;
import static coldwright.desk.page.OnPage.reveal;
import static coldwright.desk.page.OnPage.slip;
import static coldwright.desk.page.OnPage.statusStarts;
import static coldwright.desk.page.OnPage.typeInto;
import static coldwright.desk.page.OnPage.waitFor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.Outcome;
import coldwright.desk.BenchRunner;
import coldwright.desk.code.CodeSlip;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.SnippetModel;
import coldwright.desk.model.SnippetModel.Phase;
import coldwright.lesson.LessonReader;
import coldwright.paint.ChartPainter;

import javafx.application.Platform;
import javafx.geometry.VerticalDirection;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.Image;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Presses real buttons and types real text in the window, on a real bench. */
@ExtendWith(ApplicationExtension.class)
class DeskWindowTest {
    private static final String LESSON =
            """
            # A lesson to press on

            Read *this* first.

            ## Draw a line

            ```forecast
            How high is it at its end?
            - low
            - * high

            It is what you wrote.
            ```

            ```java
            double top = 40;
            System.out.println("top " + top);
            show(Figure.of("A line").x("time", "s").y("height", "mm").line("line", 0, 10, x -> top * x));
            ```

            ```check
            top is 40 within 0.5 -- the first line
            top > 0 is true
            ```

            ## Run on

            ```java
            top * 2
            ```

            ## Read only

            The end.
            """;

    private static final ExecutorService WORK = Executors.newCachedThreadPool();
    private static BenchRunner bench;

    @TempDir private Path folder;
    private Stage stage;
    private DeskModel desk;

    @BeforeAll
    static void openBench() {
        bench = new BenchRunner(WORK);
    }

    @AfterAll
    static void closeBench() {
        bench.close();
        WORK.shutdownNow();
    }

    @Start
    void start(Stage stage) {
        this.stage = stage;
        desk = new DeskModel(LessonReader::read, bench, WORK, Platform::runLater);
        Pens pens =
                new Pens(
                        (drawn, sheet) ->
                                ChartPainter.paint(drawn.figure(), drawn.earlier(), sheet)
                                        .picture(),
                        WORK,
                        Platform::runLater);
        stage.setScene(new Scene(new DeskView(desk, pens, () -> {}, address -> {}), 1200, 780));
        stage.setX(0);
        stage.setY(0);
        stage.show();
        desk.fetch(() -> List.of(LessonReader.read("press.md", LESSON)));
    }

    @Test
    void aChangeIsTypedAndRunAndTheFigureChanges(FxRobot robot) throws Exception {
        SnippetModel snippet = snippet(0);
        press(robot, "Run", 0);
        Image first = waitFor(() -> figureOnPage(robot), "a figure");
        assertEquals(400, endOfLine(snippet.drawn().get(0)));
        assertEquals("top 40.0", snippet.printed().get().head());

        typeInto(robot, 0, "double top = ".length(), "1");
        assertTrue(snippet.text().get().startsWith("double top = 140;"));
        robot.push(KeyCode.CONTROL, KeyCode.ENTER);
        Image second =
                waitFor(
                        () -> {
                            Image now = figureOnPage(robot);
                            return snippet.drawn().get(0).earlier().isPresent() && now != first
                                    ? now
                                    : null;
                        },
                        "the new figure");
        assertEquals(1400, endOfLine(snippet.drawn().get(0)));
        assertNotEquals(inkOf(first), inkOf(second));
        waitFor(
                () ->
                        has(
                                        robot,
                                        "1 of 2 checks hold; they are meant for the snippets before your change.")
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
        String words = robot.from(problem).lookup(".trouble").query().getAccessibleText();
        assertTrue(words.contains("`nothing`"), words);
        assertTrue(robot.lookup(".compiler-words").tryQuery().isEmpty());
        robot.interact(() -> reveal(problem));
        robot.clickOn("Java’s own words");
        assertTrue(robot.lookup(".compiler-words").query().isVisible());

        typeInto(robot, 0, 0, " ");
        assertFalse(slip(robot, 0).getParagraph(0).getParagraphStyle().contains("wrong-line"));
    }

    @Test
    void anEndlessLoopIsStoppedAndTheWindowLives(FxRobot robot) throws Exception {
        SnippetModel snippet = snippet(0);
        robot.interact(() -> snippet.text().set("while (true) { }"));
        press(robot, "Run", 0);
        waitFor(() -> statusStarts(robot, "runs, ") ? true : null, "the time it runs");
        press(robot, "Stop", 0);
        waitFor(() -> snippet.phase().get() == Phase.RESTING ? true : null, "the stop");
        assertEquals(new Outcome.Stopped(), snippet.lastRun().get().outcome());
        press(robot, "Reset", 0);
        press(robot, "Run", 0);
        waitFor(() -> figureOnPage(robot), "a figure after the stop");
    }

    @Test
    void theContentsTellWhatIsDoneAndStepsAboveRunByThemselves(FxRobot robot) throws Exception {
        assertTrue(robot.lookup("Run on").tryQuery().isPresent());
        robot.clickOn("Run on");
        press(robot, "Run", 1);
        Labeled value =
                waitFor(() -> robot.lookup(".value").<Labeled>tryQuery().orElse(null), "a value");
        assertEquals(80, Double.parseDouble(value.getText()));
        waitFor(() -> has(robot, "Run on – done") ? true : null, "the mark");
        assertFalse(has(robot, "Draw a line – done"));
        assertSame(desk.open().get().steps().get(1), desk.open().get().inSight().get());
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
    void figuresGoUnderTheTextWhenTheTypeIsLarge(FxRobot robot) throws Exception {
        press(robot, "Run", 0);
        Node beside = waitFor(() -> plate(robot), "a figure");
        assertTrue(isWithin(beside, FigureColumn.class));
        robot.interact(() -> desk.typeSize().larger());
        Node under =
                waitFor(
                        () -> plate(robot) == beside ? null : plate(robot),
                        "the figure's new place");
        assertTrue(isWithin(under, LessonView.class));
        robot.interact(() -> desk.typeSize().usual());
        assertTrue(isWithin(waitFor(() -> plate(robot), "the figure"), FigureColumn.class));
    }

    @Test
    void theKeyboardReachesEverythingAndTheWheelScrollsThePage(FxRobot robot) throws Exception {
        typeInto(robot, 0, 0, "");
        robot.push(KeyCode.TAB);
        assertEquals("Run", ((Button) focused()).getText());
        robot.push(KeyCode.SPACE);
        waitFor(() -> figureOnPage(robot), "a figure");
        robot.push(KeyCode.F6);
        assertEquals("Draw a line – done", ((Button) focused()).getText());
        robot.push(KeyCode.DOWN);
        robot.push(KeyCode.ENTER);
        waitFor(
                () -> desk.open().get().inSight().get().number() == 2 ? true : null,
                "the second step");
        robot.push(KeyCode.CONTROL, KeyCode.EQUALS);
        assertEquals(110, desk.typeSize().percent().get());

        ScrollPane page = robot.lookup(".reading").query();
        CodeSlip slip = slip(robot, 0);
        robot.interact(() -> reveal(slip));
        double before = page.getVvalue();
        robot.moveTo(slip);
        robot.scroll(3, VerticalDirection.DOWN);
        waitFor(() -> page.getVvalue() != before ? true : null, "the page to scroll");
    }

    @Test
    void aBadFileIsToldInASentenceAndNothingIsLost(FxRobot robot) throws Exception {
        typeInto(robot, 0, 0, "/* mine */ ");
        Path empty = Files.writeString(folder.resolve("empty.md"), "");
        robot.interact(() -> desk.openFile(empty));
        waitFor(() -> robot.lookup(".notice-words").tryQuery().orElse(null), "the sentence");
        assertTrue(snippet(0).text().get().startsWith("/* mine */ double top"));
        robot.clickOn("Put away");

        Path unclosed =
                Files.writeString(folder.resolve("open.md"), "# T\n\n## S\n\n```java\n1 + 1\n");
        robot.interact(() -> desk.openFile(unclosed));
        waitFor(() -> robot.lookup(".fault").tryQuery().orElse(null), "the fault");
        press(robot, "Run", 0);
        waitFor(() -> has(robot, "2") ? true : null, "the value");
    }

    @Test
    void anImpossibleNumberIsToldAtItsLine(FxRobot robot) throws Exception {
        SnippetModel snippet = snippet(0);
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
                        robot.lookup(".trouble").queryAll().stream()
                                .map(Node::getAccessibleText)
                                .filter(words -> words.replace('−', '-').contains(part))
                                .findFirst()
                                .orElse(null),
                "a sentence with " + part);
    }

    private SnippetModel snippet(int index) throws Exception {
        return waitFor(
                () -> {
                    if (desk.open().get() == null) {
                        return null;
                    }
                    return desk.open().get().steps().stream()
                            .flatMap(step -> step.snippets().stream())
                            .skip(index)
                            .findFirst()
                            .orElse(null);
                },
                "the lesson");
    }

    private Node focused() {
        return stage.getScene().getFocusOwner();
    }
}
