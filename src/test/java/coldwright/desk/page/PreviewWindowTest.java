package coldwright.desk.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.BenchRunner;
import coldwright.desk.lesson.LessonView;
import coldwright.desk.model.DeskModel;
import coldwright.workbook.settings.Preferences;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.text.Text;
import javafx.stage.Stage;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/** The page of a lesson follows its file while somebody writes it. */
@ExtendWith(ApplicationExtension.class)
class PreviewWindowTest {
    private static final String TEXT =
            """
            # Why ripple stays soft

            <!--
            asks: everything
            -->

            Jam in a hard tub.

            ## Sugar

            A first step.

            ```java
            double sugar = 60;
            ```
            %s
            ## Water

            A last step.
            """;

    private final ExecutorService work = Executors.newCachedThreadPool(PreviewWindowTest::daemon);
    private final BenchRunner bench = new BenchRunner(work, Preferences::usual);
    private DeskModel desk;

    private static Thread daemon(Runnable run) {
        Thread thread = new Thread(run);
        thread.setDaemon(true);
        return thread;
    }

    @Start
    void start(Stage stage) {
        desk = TestDesk.lay(stage, bench, work);
    }

    @AfterEach
    void close() {
        bench.close();
        work.shutdownNow();
    }

    private static boolean says(FxRobot robot, String words) {
        return robot.lookup(node -> isSeen(node) && said(node).contains(words))
                .tryQuery()
                .isPresent();
    }

    private static boolean isSeen(Node node) {
        return node == null || node.isVisible() && isSeen(node.getParent());
    }

    private static String said(Node node) {
        return node instanceof Text text
                ? text.getText()
                : node instanceof Labeled labeled ? String.valueOf(labeled.getText()) : "";
    }

    private static LessonView page(FxRobot robot) {
        return robot.lookup(node -> node instanceof LessonView).query();
    }

    private static void await(Callable<Boolean> wanted) throws Exception {
        OnPage.waitFor(() -> wanted.call() ? wanted : null, "the page as it was written");
    }

    private void refresh(Path file, String text) throws Exception {
        Files.writeString(file, text);
        desk.refresh(file).get(OnPage.PATIENCE_S, TimeUnit.SECONDS);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void faultsStandInTheirStepAndGoWhenMendedAndTheAuthorIsAskedOnce(
            FxRobot robot, @TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("ripple.md"), TEXT.formatted(""));
        robot.interact(() -> desk.openFile(file));
        await(() -> says(robot, "asks for more than lessons may do"));
        Button writing =
                robot.lookup(node -> said(node).startsWith("I’m writing it")).queryAs(Button.class);
        robot.interact(writing::fire);
        WaitForAsyncUtils.waitForFxEvents();

        refresh(file, TEXT.formatted("\n```chek\nsugar is 60\n```\n"));
        await(() -> says(robot, "kind of block"));
        assertFalse(says(robot, "asks for more than lessons may do"), "asked again");
        assertEquals(2, desk.open().get().steps().stream().filter(s -> s.number() > 0).count());

        refresh(file, TEXT.formatted("\nMended.\n\n## A new step\n\nIt came.\n"));
        await(() -> says(robot, "It came."));
        assertFalse(says(robot, "kind of block"), "the fault stayed");
    }

    @Test
    void theModeIsSaidUntilItIsEndedAndSnippetsThatFailAreCounted(
            FxRobot robot, @TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("ripple.md"), TEXT.formatted(""));
        robot.interact(() -> desk.openFile(file));
        await(() -> says(robot, "asks for more than lessons may do"));
        assertFalse(says(robot, "Following ripple.md"));
        Button writing =
                robot.lookup(node -> said(node).startsWith("I’m writing it")).queryAs(Button.class);
        robot.interact(
                () -> {
                    writing.requestFocus();
                    writing.fire();
                });
        WaitForAsyncUtils.waitForFxEvents();
        assertSame(page(robot), page(robot).getScene().getFocusOwner(), "the page stays here");
        robot.interact(() -> desk.open().get().runAll());
        await(() -> desk.open().get().snippets().get(0).result().everFinished().get());

        refresh(file, TEXT.replace("= 60", "= SUGAR_6").formatted("\n```chek\na is 1\n```\n"));
        await(() -> says(robot, "This lesson’s text has 2 errors"));
        assertTrue(says(robot, "ripple.md:14: "), "the snippet's line in the file");
        assertTrue(says(robot, "Following ripple.md"));

        refresh(file, TEXT.formatted(""));
        await(() -> desk.open().get().snippets().get(0).result().everFinished().get());
        await(() -> !says(robot, "This lesson’s text has"));
        Button end =
                robot.lookup(node -> said(node).startsWith("I’ve finished")).queryAs(Button.class);
        robot.interact(end::fire);
        await(() -> !says(robot, "Following ripple.md"));
        refresh(file, TEXT.formatted("More.\n"));
        await(() -> says(robot, "asks for more than lessons may do"));
    }

    @Test
    void thePageStaysWhereItWasScrolledTo(FxRobot robot, @TempDir Path folder) throws Exception {
        String much = "\n" + "Water, sugar and time.\n\n".repeat(80);
        Path file = Files.writeString(folder.resolve("long.md"), TEXT.formatted(much));
        robot.interact(() -> desk.openFile(file));
        await(() -> says(robot, "A last step."));
        robot.interact(() -> page(robot).setVvalue(0.5));
        WaitForAsyncUtils.waitForFxEvents();
        LessonView before = page(robot);
        double down = before.getVvalue();

        refresh(file, TEXT.formatted(much.replace("time", "cold")));
        await(() -> page(robot) != before && Math.abs(page(robot).getVvalue() - down) < 0.05);
        assertTrue(says(robot, "Water, sugar and cold."));
    }
}
