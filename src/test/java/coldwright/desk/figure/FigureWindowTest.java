package coldwright.desk.figure;

import static coldwright.desk.figure.FigureFixtures.imageOf;
import static coldwright.desk.figure.FigureFixtures.lines;
import static coldwright.desk.figure.FigureFixtures.pressWord;
import static coldwright.desk.figure.FigureFixtures.word;
import static coldwright.desk.page.OnPage.waitFor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.figure.model.ShownFigure;
import coldwright.figure.Figure;
import coldwright.paint.style.FigureTheme;
import coldwright.paint.style.PlotArea;

import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Reads, zooms, pins, saves and enlarges plates with a real mouse and a real keyboard. */
@ExtendWith(ApplicationExtension.class)
class FigureWindowTest {
    private static final ExecutorService PEN = Executors.newSingleThreadExecutor();

    private FigureFixtures plates;
    private Stage stage;

    @AfterAll
    static void putDownThePen() {
        PEN.shutdownNow();
    }

    @Start
    void start(Stage one) {
        stage = one;
        plates = new FigureFixtures(one, PEN);
    }

    private static ShownFigure of(Figure figure) {
        return new ShownFigure(figure, Optional.empty());
    }

    private static Point2D at(FigureView plate, double x, double y) {
        PlotArea plot = plate.face().plot().orElseThrow();
        FigureCanvas figureCanvas = plate.face();
        return figureCanvas.localToScreen(
                figureCanvas.snappedLeftInset() + plot.xPx(x),
                figureCanvas.snappedTopInset() + plot.yPx(y));
    }

    private static String read(FxRobot robot) {
        return robot.lookup(".cross-words").queryAllAs(Labeled.class).stream()
                .filter(Node::isVisible)
                .map(Labeled::getText)
                .findFirst()
                .orElse(null);
    }

    @Test
    void turningADialChangesTheImageAloneAndWordsFollowOnceItRests(FxRobot robot) throws Exception {
        FigureView plate = plates.show(robot, of(lines(0.1)));
        String first =
                waitFor(
                        () -> {
                            String text = plate.face().getAccessibleText();
                            return text.contains("−4") ? text : null;
                        },
                        "the figure in words");
        List<Node> children = List.copyOf(plate.getChildren());
        Object image = imageOf(plate);
        // in one go, so that the pause after which the words follow can't fall between two turns
        robot.interact(
                () -> {
                    for (int i = 1; i <= 20; i++) {
                        plates.drawn.setAll(of(lines(0.1 - 0.001 * i)));
                        assertFalse(plate.isNeedsLayout(), "nothing is laid out");
                        assertEquals(first, plate.face().getAccessibleText());
                    }
                });
        waitFor(() -> imageOf(plate) != image ? true : null, "a new image");
        assertEquals(children, plate.getChildren());
        waitFor(
                () -> plate.face().getAccessibleText().contains("−3.2") ? true : null,
                "the new figure in words");
    }

    @Test
    void axesStayWhileADialTurns(FxRobot robot) throws Exception {
        FigureView plate = plates.show(robot, of(lines(0.12)));
        PlotArea before = plate.face().plot().orElseThrow();
        Object image = imageOf(plate);
        robot.interact(() -> plates.drawn.setAll(of(lines(0.1))));
        waitFor(() -> imageOf(plate) != image ? true : null, "a new image");
        assertEquals(before, plate.face().plot().orElseThrow());
    }

    @Test
    void aValueIsReadUnderThePointerAndWithTheKeyboard(FxRobot robot) throws Exception {
        FigureView plate = plates.show(robot, of(lines(0.1)));
        robot.moveTo(at(plate, 20, -1.2));
        String words = waitFor(() -> read(robot), "what is read");
        assertTrue(words.matches("high: 20\\.\\d %, −1\\.0\\d °C"), words);

        robot.interact(() -> plate.face().requestFocus());
        robot.push(KeyCode.HOME);
        assertEquals("low: 0.0 %, 0.00 °C", plate.face().getAccessibleText());
        robot.push(KeyCode.RIGHT).push(KeyCode.DOWN);
        String spoken = plate.face().getAccessibleText();
        assertTrue(spoken.startsWith("high: 0.8 %"), spoken);
        assertEquals(spoken, read(robot));
        robot.push(KeyCode.END);
        assertEquals("high: 40.0 %, −2.00 °C", plate.face().getAccessibleText());
    }

    @Test
    void aPartIsSeenByDraggingAndTheWholeByADoubleClickOrKey(FxRobot robot) throws Exception {
        FigureView plate = plates.show(robot, of(lines(0.1)));
        PlotArea whole = plate.face().plot().orElseThrow();
        robot.moveTo(at(plate, 10, -0.5)).press(MouseButton.PRIMARY);
        robot.moveTo(at(plate, 20, -2.5)).release(MouseButton.PRIMARY);
        PlotArea part = waitFor(() -> other(plate, whole), "the part");
        assertEquals(10, part.x().from(), 0.3);
        assertEquals(20, part.x().to(), 0.3);
        pressWord(robot, "Reset zoom");
        waitFor(() -> other(plate, part), "the whole");
        assertEquals(whole.x(), plate.face().plot().orElseThrow().x());
        assertTrue(plate.face().isFocused(), "the word that went hands the focus on");

        robot.type(KeyCode.EQUALS);
        PlotArea nearer = waitFor(() -> other(plate, whole), "the nearer view");
        assertEquals(28, nearer.x().width(), 0.1);
        robot.type(KeyCode.DIGIT0);
        waitFor(() -> other(plate, nearer), "the whole by key");
        robot.type(KeyCode.EQUALS);
        PlotArea again = waitFor(() -> other(plate, whole), "the nearer view");
        robot.doubleClickOn(at(plate, 20, -2));
        waitFor(() -> other(plate, again), "the whole by double click");
        assertFalse(plate.model().zoomed().get());
    }

    private static PlotArea other(FigureView plate, PlotArea than) {
        return plate.face().plot().filter(plot -> !plot.equals(than)).orElse(null);
    }

    @Test
    void theWordsAreReachedByTabAndSeenThen(FxRobot robot) throws Exception {
        FigureView plate = plates.show(robot, of(lines(0.1)));
        robot.moveTo(new Point2D(600, 690));
        robot.interact(() -> plate.face().requestFocus());
        robot.push(KeyCode.TAB);
        Node focused = stage.getScene().getFocusOwner();
        assertTrue(focused.getStyleClass().contains("figure-button"), focused.toString());
        assertEquals(1, focused.getParent().getOpacity());
        robot.interact(() -> plates.column.getParent().requestFocus());
        waitFor(() -> focused.getParent().getOpacity() == 0 ? true : null, "quiet");
    }

    @Test
    void pinnedFiguresStayBelow(FxRobot robot) throws Exception {
        plates.show(robot, of(lines(0.1)));
        pressWord(robot, "Pin");
        robot.interact(() -> plates.drawn.setAll(of(lines(0.2))));
        assertTrue(word(robot, "Pinned: Two lines").isPresent());
        assertEquals(2, robot.lookup(".figure").queryAll().size());
        pressWord(robot, "Unpin");
        waitFor(() -> robot.lookup(".figure").queryAll().size() == 1 ? true : null, "one plate");
    }

    @Test
    void theEarlierTraceIsTakenAwayAndComesBack(FxRobot robot) throws Exception {
        FigureView plate =
                plates.show(robot, new ShownFigure(lines(0.1), Optional.of(lines(0.08))));
        Object image = imageOf(plate);
        pressWord(robot, "Hide earlier runs");
        Object without = waitFor(() -> imageOf(plate) != image ? imageOf(plate) : null, "it");
        assertNotSame(image, without);
        assertTrue(plate.model().earlier().isEmpty());
        pressWord(robot, "Show earlier runs");
        assertTrue(plate.model().earlier().isPresent());
    }

    @Test
    void aFigureIsSavedAndWhatCannotBeSavedIsSaid(FxRobot robot, @TempDir Path folder)
            throws Exception {
        plates.show(robot, of(lines(0.1)));
        Path csv = folder.resolve("lines.csv");
        plates.file = Optional.of(csv);
        pressWord(robot, "Save…");
        waitFor(
                () -> word(robot, "Saved as " + csv + ".").orElse(null),
                "the word that it is saved");
        assertTrue(Files.readString(csv).startsWith("\"low: sucrose, %\""), Files.readString(csv));
        Path doc = folder.resolve("lines.doc");
        plates.file = Optional.of(doc);
        pressWord(robot, "Save…");
        waitFor(
                () ->
                        word(
                                        robot,
                                        "Can’t save as "
                                                + doc
                                                + ": lines.doc isn't a figure's file; it must end in .svg, .png or .csv.")
                                .orElse(null),
                "the sentence");
    }

    @Test
    void aFigureIsCopied(FxRobot robot) throws Exception {
        plates.show(robot, of(lines(0.1)));
        pressWord(robot, "Copy");
        waitFor(() -> word(robot, "Copied the picture to the clipboard.").orElse(null), "the copy");
        assertTrue(
                waitFor(() -> Clipboard.getSystemClipboard().hasImage() ? true : null, "an image"));
    }

    @Test
    void dataStandAsATableAndInWords(FxRobot robot) throws Exception {
        FigureView plate = plates.show(robot, of(lines(0.1)));
        pressWord(robot, "As a table");
        TableView<?> table = robot.lookup(".data-table").queryAs(TableView.class);
        assertEquals(3, table.getColumns().size());
        assertEquals(Figure.POINTS_OF_A_FUNCTION, table.getItems().size());
        waitFor(() -> table.isFocused() ? true : null, "the focus on the table");
        robot.push(KeyCode.DOWN).push(KeyCode.DOWN);
        assertTrue(table.getSelectionModel().getSelectedIndex() > 0, "it is walked by keys");
        pressWord(robot, "As a table");
        assertTrue(robot.lookup(".data-table").tryQuery().isEmpty());
        pressWord(robot, "In words");
        Labeled words = robot.lookup(".figure-description").queryAs(Labeled.class);
        waitFor(() -> words.getText().contains("falls from 0 to −4 °C") ? true : null, "words");
        assertTrue(words.isVisible());
        assertEquals(words.getText(), plate.face().getAccessibleText());
    }

    @Test
    void aLargeFigureFillsTheWindowUntilEscape(FxRobot robot) throws Exception {
        FigureView plate = plates.show(robot, of(lines(0.1)));
        pressWord(robot, "Enlarge");
        Node large = robot.lookup(".enlarged-figure").query();
        waitFor(() -> large.getLayoutBounds().getHeight() > 690 ? true : null, "the large plate");
        robot.push(KeyCode.ESCAPE);
        assertTrue(robot.lookup(".enlarged-figure").tryQuery().isEmpty());
        assertTrue(plate.face().isFocused());
    }

    @Test
    void whereThereIsLittleRoomWordsStandBehindOne(FxRobot robot) throws Exception {
        robot.interact(() -> stage.setWidth(330));
        plates.show(robot, of(lines(0.1)));
        waitFor(() -> word(robot, "Pin").isEmpty() ? true : null, "the words to go");
        pressWord(robot, "More");
        assertTrue(word(robot, "Pin").isPresent());
        assertTrue(word(robot, "Pin").orElseThrow().isFocused());
    }

    @Test
    void onADarkPageThePlateIsDark(FxRobot robot) throws Exception {
        FigureView plate = plates.show(robot, of(lines(0.1)));
        Object image = imageOf(plate);
        robot.interact(() -> plates.room.theme().set(FigureTheme.DARK));
        waitFor(() -> imageOf(plate) != image ? true : null, "another image");
        javafx.scene.image.Image dark = (javafx.scene.image.Image) imageOf(plate);
        assertEquals(0xFF202B32, dark.getPixelReader().getArgb(2, 2));
    }
}
