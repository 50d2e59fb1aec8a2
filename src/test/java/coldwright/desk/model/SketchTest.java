package coldwright.desk.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;
import coldwright.figure.Numbers;
import coldwright.figure.Series;
import coldwright.lesson.Answer;
import coldwright.workbook.work.Said;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Optional;

class SketchTest {
    private static final double NEAR = 1e-9;

    private final Sketch sketch =
            new Sketch(
                    new Answer.Curve(
                            new Answer.Scale("sucrose", 0, 40, "%"),
                            new Answer.Scale("freezing point", -6, 0, "°C")));

    private void draw(double x0, double y0, double x1, double y1) {
        sketch.draw(new Said.Point(x0, y0), new Said.Point(x1, y1));
    }

    @Test
    void aStrokeIsToldAsItRuns() {
        assertEquals(Optional.empty(), sketch.said());
        draw(0, 0, 40, -4);
        assertEquals(
                Optional.of("falls from 0 to −4 °C as sucrose rises from 0 to 40 %"),
                sketch.said());
        assertEquals(-2, sketch.valueAt(Sketch.PLACES / 2).orElseThrow(), NEAR);
    }

    @Test
    void whatIsDrawnAgainIsDrawnOver() {
        draw(0, 0, 40, -4);
        int points = sketch.points().size();
        draw(40, -5, 20, -5);
        assertEquals(points, sketch.points().size(), "one value for each place");
        assertEquals(-5, sketch.valueAt(Sketch.PLACES).orElseThrow(), NEAR);
        assertEquals(-1, sketch.valueAt(5).orElseThrow(), NEAR);
    }

    @Test
    void aStrokeBeyondTheAxesIsBroughtWithin() {
        draw(-10, 3, 90, -90);
        assertEquals(0, sketch.points().get(0).x(), NEAR);
        assertEquals(0, sketch.points().get(0).y(), NEAR);
        Said.Point last = sketch.points().get(sketch.points().size() - 1);
        assertEquals(new Said.Point(40, -6), last);
    }

    @Test
    void keysMoveOneValueAndItsNeighboursStay() {
        sketch.nudge(0, 0);
        assertEquals(-3, sketch.valueAt(0).orElseThrow(), NEAR);
        sketch.nudge(10, 4);
        assertEquals(-3 + 4 * 6 / 40.0, sketch.valueAt(10).orElseThrow(), NEAR);
        assertEquals(-3 + 2 * 6 / 40.0, sketch.valueAt(5).orElseThrow(), NEAR);
        sketch.clear();
        assertTrue(sketch.points().isEmpty());
    }

    @Test
    void theDistanceIsTheMeanOfWhatLiesBetween() {
        draw(0, 0, 40, -4);
        Series.Curve result = new Series.Curve("it", Numbers.of(0, 40), Numbers.of(-1, -5));
        assertEquals(
                Optional.of("On average your curve is 1 °C from the result."),
                sketch.distance(result));
        assertEquals(
                Optional.empty(),
                sketch.distance(new Series.Curve("far", Numbers.of(50, 60), Numbers.of(0, 0))));
    }

    @Test
    void theDrawnLineStandsInTheFigureOnce() {
        draw(0, 0, 40, -4);
        Figure figure = Figure.of("it").line("one", 0, 40, x -> -x / 10);
        Drawn drawn = new Drawn(figure, Optional.empty()).beside(sketch.curve());
        Figure shown = (Figure) drawn.shown();
        assertEquals(
                List.of("one", Sketch.name()), shown.series().stream().map(Series::name).toList());
        assertEquals(shown, Drawn.with(shown, sketch.curve().orElseThrow()));
    }

    @Test
    void whatWasKeptComesBack() {
        draw(0, 0, 40, -4);
        List<Said.Point> kept = List.copyOf(sketch.points());
        sketch.clear();
        sketch.restore(kept);
        assertEquals(kept, sketch.points());
    }
}
