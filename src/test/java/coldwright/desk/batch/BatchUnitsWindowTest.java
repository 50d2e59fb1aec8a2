package coldwright.desk.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.figure.FigurePainter;
import coldwright.desk.figure.FigureSettings;
import coldwright.desk.figure.FileChooserPrompt;
import coldwright.desk.figure.RenderContext;
import coldwright.figure.UnitConversion;
import coldwright.words.Words;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.stage.Stage;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** The units and the decimal mark of the reader reach each text of the page. */
@ExtendWith(ApplicationExtension.class)
class BatchUnitsWindowTest extends BatchHands {
    private static final ExecutorService WORK = Executors.newCachedThreadPool();

    private FigureSettings room;

    @AfterAll
    static void stop() {
        WORK.shutdownNow();
        Words.show(Locale.ENGLISH);
        Words.show(Words.Units.METRIC);
    }

    @Start
    void start(Stage stage) {
        Words.show(Locale.ENGLISH);
        Words.show(Words.Units.METRIC);
        brew = new BatchesModel(WORK, Platform::runLater);
        brew.startBatch("Blood-orange sorbet");
        RenderContext context = new RenderContext(FigurePainter.STILL, WORK, Platform::runLater);
        room = new FigureSettings(context, FileChooserPrompt.BY_DIALOG);
        BatchView view = new BatchView(brew, room, file -> {}, name -> Optional.empty());
        view.getStyleClass().add("desk");
        view.getStylesheets()
                .add(0, getClass().getResource("/coldwright/desk/page.css").toExternalForm());
        stage.setScene(new Scene(view, 1200, 780));
        stage.show();
    }

    private void show(FxRobot robot, Locale language, UnitConversion units) throws Exception {
        await(() -> brew.open().get().figuresAreOfNow(), "the figures");
        // so little sugar that there are plans
        robot.interact(() -> amount(robot, 1).setText("60 g"));
        await(() -> brew.open().get().figuresAreOfNow(), "the figures of less sugar");
        robot.interact(
                () -> {
                    Words.show(language);
                    Words.show(new Words.Units(units::unit, units::value));
                    room.units().set(UnitConversion.AS_IT_IS);
                    room.units().set(units);
                    brew.open().get().change("", brew.open().get().recipe().get().called("Sorbet"));
                });
        await(() -> brew.open().get().figuresAreOfNow(), "the figures again");
        await(() -> !robot.lookup(".brew-offer").queryAll().isEmpty(), "the plans in these units");
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** The texts that are visible. */
    private static List<String> texts(FxRobot robot) {
        return robot
                .lookup(node -> node instanceof Labeled && isShown(node))
                .queryAllAs(Labeled.class)
                .stream()
                .map(Labeled::getText)
                .map(text -> text.replace('\u00a0', ' ').replace('\u202f', ' '))
                .toList();
    }

    private static boolean isShown(Node node) {
        return node == null || node.isVisible() && isShown(node.getParent());
    }

    private static List<String> matching(FxRobot robot, String pattern) {
        return texts(robot).stream().filter(text -> text.matches("(?s).*" + pattern)).toList();
    }

    @Test
    void fahrenheitAndOuncesAreInEachTextAndField(FxRobot robot) throws Exception {
        show(robot, Locale.ENGLISH, new UnitConversion(true, true));

        assertEquals(List.of(), matching(robot, "\\d °C.*"));
        assertEquals(
                List.of(),
                matching(robot, "\\d g(?! of sucrose per| of mix|,? of sugars per)\\b.*"));
        assertTrue(matching(robot, "\\d °F.*").size() > 8, () -> texts(robot).toString());
        assertTrue(matching(robot, "\\d oz.*").size() > 4, () -> texts(robot).toString());
        assertEquals("−0.4", field(robot, "Freezer, °F").getText().replace('-', '−'));
        assertEquals("25.04", field(robot, "Total, oz").getText());

        robot.interact(() -> field(robot, "Freezer, °F").setText("5"));
        assertEquals(-15, brew.open().get().recipe().get().freezerC(), 1e-9);
        assertEquals("5", field(robot, "Freezer, °F").getText());
        robot.interact(() -> field(robot, "Total, oz").setText("40"));
        assertEquals(1134, brew.open().get().recipe().get().massG(), 0.5);
    }

    @Test
    void aGermanPageHasTheDecimalComma(FxRobot robot) throws Exception {
        show(robot, Locale.GERMAN, UnitConversion.AS_IT_IS);

        assertEquals(List.of(), matching(robot, "\\d\\.\\d.*"));
        assertTrue(matching(robot, "\\d,\\d.*").size() > 3, () -> texts(robot).toString());
    }

    private static TextField field(FxRobot robot, String name) {
        return robot.lookup(".text-field").queryAllAs(TextField.class).stream()
                .filter(one -> name.equals(one.getAccessibleText()))
                .findFirst()
                .orElseThrow();
    }
}
