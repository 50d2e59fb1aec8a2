package coldwright.desk.figure.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;
import coldwright.figure.NumberColumn;
import coldwright.figure.Series;
import coldwright.lesson.ExpectedAnswer;
import coldwright.workbook.work.LearnerAnswer;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Optional;

class CurveSketchTest {
    private static final double NEAR = 1e-9;

    private final CurveSketch sketch =
            new CurveSketch(
                    new ExpectedAnswer.Curve(
                            new ExpectedAnswer.Scale("sucrose", 0, 40, "%"),
                            new ExpectedAnswer.Scale("freezing point", -6, 0, "°C")));

    private void draw(double x0, double y0, double x1, double y1) {
        sketch.draw(new LearnerAnswer.Point(x0, y0), new LearnerAnswer.Point(x1, y1));
    }

    @Test
    void aStrokeIsToldAsItRuns() {
        assertEquals(Optional.empty(), sketch.description());
        draw(0, 0, 40, -4);
        assertEquals(
                Optional.of("falls from 0 to −4 °C as sucrose rises from 0 to 40 %"),
                sketch.description());
        assertEquals(-2, sketch.valueAt(CurveSketch.PLACES / 2).orElseThrow(), NEAR);
    }

    @Test
    void whatIsDrawnAgainIsDrawnOver() {
        draw(0, 0, 40, -4);
        int points = sketch.points().size();
        draw(40, -5, 20, -5);
        assertEquals(points, sketch.points().size(), "one value for each place");
        assertEquals(-5, sketch.valueAt(CurveSketch.PLACES).orElseThrow(), NEAR);
        assertEquals(-1, sketch.valueAt(5).orElseThrow(), NEAR);
    }

    @Test
    void aStrokeBeyondTheAxesIsBroughtWithin() {
        draw(-10, 3, 90, -90);
        assertEquals(0, sketch.points().get(0).x(), NEAR);
        assertEquals(0, sketch.points().get(0).y(), NEAR);
        LearnerAnswer.Point last = sketch.points().get(sketch.points().size() - 1);
        assertEquals(new LearnerAnswer.Point(40, -6), last);
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
        Series.Curve result =
                new Series.Curve("it", NumberColumn.of(0, 40), NumberColumn.of(-1, -5));
        assertEquals(
                Optional.of("On average your curve is 1 °C away from the result."),
                sketch.distance(result));
        assertEquals(
                Optional.empty(),
                sketch.distance(
                        new Series.Curve("far", NumberColumn.of(50, 60), NumberColumn.of(0, 0))));
    }

    @Test
    void theDrawnLineStandsInTheFigureOnce() {
        draw(0, 0, 40, -4);
        Figure figure = Figure.of("it").line("one", 0, 40, x -> -x / 10);
        ShownFigure shownFigure = new ShownFigure(figure, Optional.empty()).beside(sketch::into);
        Figure shown = (Figure) shownFigure.shown();
        assertEquals(
                List.of("one", CurveSketch.name()),
                shown.series().stream().map(Series::name).toList());
        assertEquals(shown, sketch.into(shown));
    }

    @Test
    void whatWasKeptComesBack() {
        draw(0, 0, 40, -4);
        List<LearnerAnswer.Point> kept = List.copyOf(sketch.points());
        sketch.clear();
        sketch.restore(kept);
        assertEquals(kept, sketch.points());
    }
}
