package coldwright.desk.page;

import static coldwright.desk.page.OnPage.waitFor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.BenchRunner;
import coldwright.desk.code.CodeEditor;
import coldwright.workbook.settings.Preferences;

import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
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

/** Writing in a snippet: names offered, help, brackets, indent, undo. */
@ExtendWith(ApplicationExtension.class)
final class EditorWindowTest {
    private static final ExecutorService WORK = Executors.newCachedThreadPool();

    /** Changes that follow each other sooner are taken back as one. */
    private static final long PAST_MERGING_MS = 700;

    private static BenchRunner bench;

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
        TestDesk.lay(stage, bench, WORK);
    }

    private CodeEditor slip(FxRobot robot) throws Exception {
        CodeEditor slip =
                (CodeEditor)
                        waitFor(
                                () ->
                                        robot.lookup(".code-editor").queryAll().stream()
                                                .filter(CodeEditor.class::isInstance)
                                                .findFirst()
                                                .orElse(null),
                                "a snippet");
        robot.interact(
                () -> {
                    slip.requestFocus();
                    slip.replaceText("double top = 40;\nMath.ro");
                    slip.moveTo(slip.getLength());
                });
        return slip;
    }

    @Test
    void offersNamesAndTakesOne(FxRobot robot) throws Exception {
        CodeEditor slip = slip(robot);
        robot.press(KeyCode.CONTROL, KeyCode.SPACE).release(KeyCode.SPACE, KeyCode.CONTROL);
        ListView<?> list =
                waitFor(
                        () ->
                                robot.listWindows().stream()
                                        .map(window -> window.getScene().getRoot())
                                        .flatMap(root -> root.lookupAll(".suggestions").stream())
                                        .map(node -> (ListView<?>) node)
                                        .filter(view -> !view.getItems().isEmpty())
                                        .findFirst()
                                        .orElse(null),
                        "the list");
        assertTrue(list.getItems().toString().contains("round"), list.getItems().toString());
        robot.type(KeyCode.ENTER);
        assertTrue(slip.getText().contains("Math.round"), slip.getText());
    }

    @Test
    void helpsOnTheWordAndPutsItAway(FxRobot robot) throws Exception {
        CodeEditor slip = slip(robot);
        robot.interact(() -> slip.moveTo(2));
        robot.type(KeyCode.F1);
        Node help = waitFor(() -> shown(robot), "help");
        assertTrue(((Labeled) help).getText().contains("double"));
        robot.clickOn("Dismiss");
        assertEquals(slip, slip.getScene().getFocusOwner());
    }

    private static Node shown(FxRobot robot) {
        return robot.lookup(".help-signature").queryAll().stream()
                .filter(node -> node.getParent().isVisible())
                .findFirst()
                .orElse(null);
    }

    @Test
    void indentsMarksBracketsAndTakesBack(FxRobot robot) throws Exception {
        CodeEditor slip = slip(robot);
        robot.interact(
                () -> {
                    slip.replaceText("for (;;) {");
                    slip.moveTo(slip.getLength());
                });
        robot.sleep(PAST_MERGING_MS);
        robot.type(KeyCode.ENTER);
        assertEquals("for (;;) {\n    ", slip.getText());
        robot.interact(() -> slip.moveTo(5));
        assertTrue(slip.getStyleAtPosition(5).contains("bracket"), "the one before the caret");
        assertTrue(slip.getStyleAtPosition(8).contains("bracket"), "and its partner");
        robot.press(KeyCode.CONTROL, KeyCode.Z).release(KeyCode.Z, KeyCode.CONTROL);
        assertEquals("for (;;) {", slip.getText());
    }
}
