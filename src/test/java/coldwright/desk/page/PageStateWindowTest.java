package coldwright.desk.page;

import static coldwright.desk.page.OnPage.waitFor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.figure.FigurePainter;
import coldwright.desk.figure.RenderContext;
import coldwright.desk.lesson.LessonView;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.messages.TermLink;
import coldwright.desk.model.ByHandRunner;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.PreferencesModel;
import coldwright.desk.model.ShownPage;
import coldwright.lesson.LessonReader;
import coldwright.workbook.settings.Preferences;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.Window;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Text, contents and figures agree, whichever way a page is left; no snippet is run here. */
@ExtendWith(ApplicationExtension.class)
class PageStateWindowTest {
    private static final String LESSON =
            """
            # A lesson with terms

            ## One

            The overrun of this mix is low. Overrun is air, and MSNF is milk.

            ```teacher
            Wait.
            ```

            ## Two

            %s

            ## Three

            The end.
            """
                    .formatted("A long paragraph about brines and ice.\n\n".repeat(40));

    private final ExecutorService work = Executors.newSingleThreadExecutor();
    private final List<Throwable> broken = new ArrayList<>();
    private final PreferencesModel settings = new PreferencesModel(Preferences.usual());
    private Stage stage;
    private DeskModel desk;

    @Start
    void start(Stage shown) {
        stage = shown;
        Thread.currentThread().setUncaughtExceptionHandler((thread, error) -> broken.add(error));
        desk =
                new DeskModel(
                        LessonReader::read,
                        new ByHandRunner(),
                        Runnable::run,
                        Platform::runLater,
                        TestDesk.UNKEPT);
        stage.setScene(new Scene(view(Optional.empty()), 1200, 780));
        stage.show();
        desk.fetch(() -> List.of(LessonReader.read("02-terms.md", LESSON)))
                .thenRun(() -> desk.open(desk.lessons().get(0)));
    }

    private DeskView view(Optional<DeskView> former) {
        RenderContext context = new RenderContext(FigurePainter.STILL, work, Platform::runLater);
        return new DeskView(desk, settings, context, TestDesk.idle(), former);
    }

    @AfterEach
    void close() {
        work.shutdownNow();
    }

    private LessonModel lesson() throws Exception {
        LessonModel lesson = waitFor(desk.open()::get, "the lesson");
        WaitForAsyncUtils.waitForFxEvents();
        return lesson;
    }

    private void press(FxRobot robot, KeyCode key) {
        robot.push(key);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void theClassroomViewLeavesTextContentsAndNotesTogether(FxRobot robot) throws Exception {
        LessonModel lesson = lesson();
        press(robot, KeyCode.F9);
        assertSame(ShownPage.CLASSROOM, desk.place().get());
        robot.clickOn("Teacher’s notes");
        assertTrue(waitFor(() -> windows() == 2 ? true : null, "the notes"));
        robot.interact(() -> lesson.arrive(lesson.steps().get(2)));
        robot.interact(() -> stage.requestFocus());
        press(robot, KeyCode.ESCAPE);
        assertSame(ShownPage.LESSON, desk.place().get());
        assertEquals(1, windows(), "the notes are still there");
        waitFor(() -> topOf(robot, "Three") < 700 ? true : null, "the step in the text");
        assertSame(lesson.steps().get(2), lesson.inSight().get());
        assertEquals("Three", here(robot));
        assertEquals(List.of(), broken);
    }

    private static LessonView page(FxRobot robot) {
        return robot.lookup(one -> one instanceof LessonView).query();
    }

    private static int windows() {
        return Window.getWindows().size();
    }

    private static double topOf(FxRobot robot, String title) {
        return robot.lookup(".step-title").queryAllAs(Label.class).stream()
                .filter(one -> one.getText().equals(title))
                .mapToDouble(one -> one.localToScene(0, 0).getY())
                .findFirst()
                .orElse(10_000);
    }

    private static String here(FxRobot robot) {
        return robot.lookup(".contents-row").queryAll().stream()
                .filter(
                        row ->
                                row.getPseudoClassStates().stream()
                                        .anyMatch(one -> one.getPseudoClassName().equals("here")))
                .map(row -> ((Button) row.lookup(".entry")).getText())
                .findFirst()
                .orElse("");
    }

    @Test
    void anotherViewTakesThePlaceOfTheFirst(FxRobot robot) throws Exception {
        lesson();
        waitFor(() -> topOf(robot, "Three") < 10_000 ? true : null, "the last step");
        robot.interact(() -> page(robot).setVvalue(0.5));
        WaitForAsyncUtils.waitForFxEvents();
        double read = topOf(robot, "Three");
        robot.interact(desk::openSettings);
        robot.interact(
                () -> {
                    DeskView former = (DeskView) stage.getScene().getRoot();
                    former.close();
                    stage.getScene().setRoot(view(Optional.of(former)));
                });
        robot.interact(() -> desk.open(desk.open().get()));
        waitFor(() -> Math.abs(topOf(robot, "Three") - read) < 2 ? true : null, "the same line");
        robot.interact(desk::openSettings);
        robot.interact(desk::goHome);
        press(robot, KeyCode.ESCAPE);
        robot.interact(() -> settings.largerType());
        assertEquals(List.of(), broken);
    }

    @Test
    void aClosedViewFollowsNoBatch(FxRobot robot) throws Exception {
        lesson();
        robot.interact(desk::openBatches);
        DeskView former = (DeskView) stage.getScene().getRoot();
        TextField name = (TextField) former.lookup(".brew-recipe .text-field");
        String before = name.getText();
        robot.interact(
                () -> {
                    former.close();
                    stage.getScene().setRoot(view(Optional.of(former)));
                    BatchModel batch = desk.batches().open().get();
                    batch.change("name", batch.recipe().get().called("Malt"));
                });
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(before, name.getText());
        TextField now = (TextField) stage.getScene().lookup(".brew-recipe .text-field");
        assertEquals("Malt", now.getText());
        assertEquals(List.of(), broken);
    }

    @Test
    void aTermShowsItsMeaningOnceAStep(FxRobot robot) throws Exception {
        lesson();
        List<TermLink> links = robot.lookup(".term").queryAllAs(TermLink.class).stream().toList();
        assertEquals(
                List.of("overrun", "MSNF", "brines"),
                links.stream().map(TermLink::getText).toList());
        robot.interact(links.get(0)::requestFocus);
        press(robot, KeyCode.ENTER);
        Node popover = robot.lookup(".term-popover").query();
        assertTrue(
                popover.getAccessibleText()
                        .startsWith("overrun. How much air increases the volume of a mix"));
        assertTrue(robot.lookup("All terms").queryButton().isFocused());
        press(robot, KeyCode.ESCAPE);
        assertTrue(links.get(0).isFocused());
        assertTrue(robot.lookup(".term-popover").queryAll().isEmpty());
        press(robot, KeyCode.ENTER);
        press(robot, KeyCode.ENTER);
        assertSame(ShownPage.GLOSSARY, desk.place().get());
        TextField search = robot.lookup(".text-field").query();
        robot.interact(() -> search.setText("volume of a"));
        assertEquals(
                "overrun",
                robot.from(robot.lookup(".term-entry").nth(0).<Node>query())
                        .lookup(".term-name")
                        .queryLabeled()
                        .getText());
        robot.interact(() -> search.setText("no such thing"));
        assertTrue(robot.lookup(".term-entry").queryAll().isEmpty());
        assertTrue(OnPage.has(robot, "No term found."));
        press(robot, KeyCode.ESCAPE);
        assertSame(ShownPage.LESSON, desk.place().get());
    }

    @Test
    void aNoticeMovesNoWordOfThePage(FxRobot robot) throws Exception {
        lesson();
        double before = topOf(robot, "Two");
        robot.interact(() -> desk.notify("Something is worth a notice."));
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(before, topOf(robot, "Two"));
        robot.interact(() -> desk.announce(java.nio.file.Path.of("new.md")));
        assertTrue(OnPage.has(robot, "Opening new.md …"));
        assertEquals("Something is worth a notice.", desk.notice().get());
        assertFalse(robot.lookup(".busy").query().getStyleClass().contains("notice"));
    }
}
