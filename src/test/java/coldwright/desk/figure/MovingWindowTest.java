package coldwright.desk.figure;

import static coldwright.desk.figure.FigureFixtures.globules;
import static coldwright.desk.figure.FigureFixtures.imageOf;
import static coldwright.desk.figure.FigureFixtures.pressWord;
import static coldwright.desk.figure.FigureFixtures.word;
import static coldwright.desk.page.OnPage.waitFor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.figure.model.CurveSketch;
import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.lesson.model.PredictionModel;
import coldwright.desk.model.PredictionModels;
import coldwright.lesson.ExpectedAnswer;
import coldwright.paint.style.PlotArea;

import javafx.geometry.Point2D;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.Slider;
import javafx.scene.control.Spinner;
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

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;

/** Plays drawings and draws curves, with a real mouse and a real keyboard. */
@ExtendWith(ApplicationExtension.class)
class MovingWindowTest {
    private static final ExecutorService PEN = Executors.newSingleThreadExecutor();

    private FigureFixtures plates;

    @AfterAll
    static void putDownThePen() {
        PEN.shutdownNow();
    }

    @Start
    void start(Stage stage) {
        plates = new FigureFixtures(stage, PEN);
    }

    @Test
    void aDrawingPlaysToItsEndWhenPressed(FxRobot robot) throws Exception {
        FigureView plate = plates.show(robot, new ShownFigure(globules(6), Optional.empty()));
        Object first = imageOf(plate);
        Thread.sleep(300);
        assertEquals(0, plate.model().play().moment().get(), "nothing moves by itself");
        pressWord(robot, "Play");
        assertTrue(word(robot, "Pause").isPresent());
        waitFor(() -> plate.model().play().moment().get() == 5 ? true : null, "the end");
        waitFor(() -> word(robot, "Play").orElse(null), "the rest");
        waitFor(() -> imageOf(plate) != first ? true : null, "another moment");
        assertEquals("5 min", robot.lookup(".play-time").queryAs(Labeled.class).getText());
        waitFor(
                () ->
                        plate.face().getAccessibleText().startsWith("5 min: moved by 5. ")
                                ? true
                                : null,
                "what you see");
    }

    @Test
    void aDrawingIsSavedAsAFilmOrStoppedAndThenNothingStays(FxRobot robot, @TempDir Path folder)
            throws Exception {
        plates.show(robot, new ShownFigure(globules(6), Optional.empty()));
        Path gif = folder.resolve("globule.gif");
        plates.file = Optional.of(gif);
        pressWord(robot, "Film…");
        pressWord(robot, "Save film…");
        waitFor(() -> word(robot, "Saved as " + gif + ".").orElse(null), "the film");
        assertEquals(
                "GIF89a", new String(Files.readAllBytes(gif), 0, 6, StandardCharsets.US_ASCII));
        Files.delete(gif);
        plates.file = Optional.of(folder.resolve("globule.frames"));
        ChoiceBox<?> kind = robot.lookup(".choice-box").queryAs(ChoiceBox.class);
        Spinner<?> seconds = robot.lookup(".spinner").queryAs(Spinner.class);
        robot.interact(() -> kind.getSelectionModel().select(1));
        robot.interact(() -> seconds.increment(55));
        pressWord(robot, "Save film…");
        pressWord(robot, "Stop");
        waitFor(() -> word(robot, "Stopped. Nothing was saved.").orElse(null), "the end");
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(), left.toList());
        }
    }

    @Test
    void theKeyboardGoesThroughTime(FxRobot robot) throws Exception {
        FigureView plate = plates.show(robot, new ShownFigure(globules(60), Optional.empty()));
        Slider slider = robot.lookup(".play-bar .slider").queryAs(Slider.class);
        robot.interact(slider::requestFocus);
        robot.push(KeyCode.RIGHT).push(KeyCode.RIGHT).push(KeyCode.LEFT);
        assertEquals(1, plate.model().play().moment().get());
        assertEquals("Time: 1 min: moved by 1", slider.getAccessibleText());
        robot.push(KeyCode.SPACE);
        assertTrue(plate.model().play().playing().get());
        robot.push(KeyCode.SPACE);
        assertEquals(false, plate.model().play().playing().get());
    }

    private CurveSketchPad pad(FxRobot robot, PredictionModel model) throws Exception {
        CurveSketchPad pad =
                new CurveSketchPad(
                        model, (ExpectedAnswer.Curve) model.prediction().answer(), plates.room);
        robot.interact(() -> plates.column.getChildren().setAll(pad));
        waitFor(
                () -> {
                    ImagePane paper = (ImagePane) pad.lookup(".sketch-pad");
                    return paper.plot().isPresent() ? true : null;
                },
                "the axes");
        return pad;
    }

    @Test
    void aCurveIsDrawnWithTheMouse(FxRobot robot) throws Exception {
        PredictionModel model = PredictionModels.ofACurve();
        CurveSketchPad pad = pad(robot, model);
        robot.moveTo(at(pad, 0, 0)).press(MouseButton.PRIMARY);
        robot.moveTo(at(pad, 20, -2)).moveTo(at(pad, 40, -4)).release(MouseButton.PRIMARY);
        String said = model.answerText().orElseThrow();
        assertTrue(said.matches("falls from .* to −4 °C as sucrose rises from 0 to 40 %"), said);
        pressWord(robot, "Clear");
        assertEquals(Optional.empty(), model.answerText());
    }

    @Test
    void aCurveIsDrawnWithTheKeyboard(FxRobot robot) throws Exception {
        PredictionModel model = PredictionModels.ofACurve();
        CurveSketchPad pad = pad(robot, model);
        ImagePane paper = (ImagePane) pad.lookup(".sketch-pad");
        robot.interact(paper::requestFocus);
        robot.push(KeyCode.HOME).push(KeyCode.UP).push(KeyCode.END);
        robot.push(KeyCode.DOWN).push(KeyCode.DOWN);
        CurveSketch sketch = model.sketch().orElseThrow();
        assertEquals(2, sketch.points().size());
        assertEquals(0, sketch.points().get(0).x());
        assertEquals(40, sketch.points().get(1).x());
        assertTrue(sketch.points().get(1).y() < sketch.points().get(0).y());
        String spoken = paper.getAccessibleText();
        assertTrue(spoken.startsWith("sucrose 40 %, freezing point −3.15 °C. falls"), spoken);
    }

    private static Point2D at(CurveSketchPad pad, double x, double y) {
        ImagePane paper = (ImagePane) pad.lookup(".sketch-pad");
        PlotArea plot = paper.plot().orElseThrow();
        return paper.localToScreen(
                paper.snappedLeftInset() + plot.xPx(x), paper.snappedTopInset() + plot.yPx(y));
    }
}
