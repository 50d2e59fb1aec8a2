package coldwright.desk.page;

import static coldwright.desk.page.OnPage.figureOnPage;
import static coldwright.desk.page.OnPage.has;
import static coldwright.desk.page.OnPage.isWithin;
import static coldwright.desk.page.OnPage.plate;
import static coldwright.desk.page.OnPage.press;
import static coldwright.desk.page.OnPage.reveal;
import static coldwright.desk.page.OnPage.slip;
import static coldwright.desk.page.OnPage.snippet;
import static coldwright.desk.page.OnPage.typeInto;
import static coldwright.desk.page.OnPage.waitFor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.BenchRunner;
import coldwright.desk.code.CodeEditor;
import coldwright.desk.figure.FigureColumn;
import coldwright.desk.lesson.LessonView;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.PreferencesModel;
import coldwright.workbook.settings.Preferences;

import javafx.geometry.VerticalDirection;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
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
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Goes through the window by mouse, keyboard and wheel, at two sizes of type, and opens files. */
@ExtendWith(ApplicationExtension.class)
class DeskReachTest {
    private static final ExecutorService WORK = Executors.newCachedThreadPool();
    private static BenchRunner bench;

    @TempDir private Path folder;
    private final PreferencesModel settings = new PreferencesModel(Preferences.usual());
    private Stage stage;
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
        this.stage = stage;
        desk = TestDesk.lay(stage, bench, WORK, settings);
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
    void figuresGoUnderTheTextWhenTheTypeIsLarge(FxRobot robot) throws Exception {
        press(robot, "Run", 0);
        Node beside = waitFor(() -> plate(robot), "a figure");
        assertTrue(isWithin(beside, FigureColumn.class));
        robot.interact(() -> settings.largerType());
        Node under =
                waitFor(
                        () -> plate(robot) == beside ? null : plate(robot),
                        "the figure's new place");
        assertTrue(isWithin(under, LessonView.class));
        robot.interact(() -> settings.usualType());
        assertTrue(isWithin(waitFor(() -> plate(robot), "the figure"), FigureColumn.class));
    }

    @Test
    void theKeyboardReachesEverythingAndTheWheelScrollsThePage(FxRobot robot) throws Exception {
        typeInto(robot, 0, 0, "");
        robot.push(KeyCode.TAB);
        assertEquals("Run", ((Button) focused()).getText());
        robot.push(KeyCode.SPACE);
        waitFor(() -> figureOnPage(robot), "a figure");
        waitFor(() -> has(robot, "Draw a line – done") ? true : null, "the mark");
        robot.push(KeyCode.F6);
        assertEquals("Draw a line – done", ((Button) focused()).getText());
        robot.push(KeyCode.DOWN);
        robot.push(KeyCode.ENTER);
        waitFor(
                () -> desk.open().get().inSight().get().number() == 2 ? true : null,
                "the second step");
        robot.push(KeyCode.CONTROL, KeyCode.EQUALS);
        assertEquals(110, settings.typePercent());

        ScrollPane page = robot.lookup(".reading").query();
        CodeEditor slip = slip(robot, 0);
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
        assertTrue(snippet(desk, 0).text().get().startsWith("/* mine */ double top"));
        robot.clickOn("Dismiss");

        Path unclosed =
                Files.writeString(
                        folder.resolve("open.md"),
                        "# T\n\n## S\n\n```java\nnew java.io.File(\"x\").getName().length() + 1\n");
        robot.interact(() -> desk.openFile(unclosed));
        waitFor(() -> robot.lookup(".fault").tryQuery().orElse(null), "the fault");
        press(robot, "Run", 0);
        waitFor(
                () -> desk.open().get().gate().asking().get() ? true : null,
                "the question, because lessons can't use files");
        robot.clickOn("Allow its snippets");
        press(robot, "Run", 0);
        waitFor(() -> has(robot, "2") ? true : null, "the value");
    }

    private Node focused() {
        return stage.getScene().getFocusOwner();
    }
}
