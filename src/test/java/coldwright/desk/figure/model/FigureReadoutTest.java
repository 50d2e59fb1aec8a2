package coldwright.desk.figure.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.figure.model.FigureReadout.ImagePoint;
import coldwright.figure.Figure;
import coldwright.paint.ChartPainter;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.PlotArea;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Optional;

class FigureReadoutTest {
    private static final double NEAR = 1e-9;
    private static final Figure LINES =
            Figure.of("two")
                    .x("sucrose", "%")
                    .y("freezing point", "°C")
                    .line("low", new double[] {0, 40}, new double[] {0, -4})
                    .line("high", new double[] {0, 40}, new double[] {0, -2});

    private static PlotArea plot(Figure figure) {
        return ChartPainter.paint(figure, FigureFormat.of(500, 400)).plot();
    }

    private static Optional<FigureReadout> read(Figure figure, double x, double y) {
        PlotArea plot = plot(figure);
        return FigureReadout.near(figure, plot, new ImagePoint(plot.xPx(x), plot.yPx(y)));
    }

    @Test
    void aValueIsReadBetweenPointsOnTheNearestLine() {
        FigureReadout low = read(LINES, 15, -1.4).orElseThrow();
        assertEquals(-1.5, low.y(), NEAR);
        assertEquals("low: 15.0 %, −1.50 °C", low.words());
        assertEquals("high: 15.0 %, −0.75 °C", read(LINES, 15, -0.2).orElseThrow().words());
    }

    @Test
    void nothingIsReadBesideThePlotOrBesideTheData() {
        PlotArea plot = plot(LINES);
        assertTrue(FigureReadout.near(LINES, plot, new ImagePoint(1, 1)).isEmpty());
        Figure far = LINES.xBetween(0, 100);
        assertTrue(read(far, 90, -2).isEmpty());
    }

    @Test
    void barsSayTheirWordAndValue() {
        Figure bars =
                Figure.of("bars")
                        .y("sweetness", "%")
                        .bars("batch", List.of("malt", "rum"), new double[] {12, 18});
        assertEquals("rum, 18.00 %", read(bars, 1.1, 4).orElseThrow().words());
        assertEquals("malt, 12.00 %", read(bars, 0, 15).orElseThrow().words());
    }

    @Test
    void pointsAreReadWhereTheyStand() {
        Figure dots =
                Figure.of("")
                        .x("t", "s")
                        .y("T", "°C")
                        .points("measured", new double[] {1, 2, 3}, new double[] {5, 6, 7});
        FigureReadout one = read(dots, 1.9, 6.4).orElseThrow();
        assertEquals(2, one.x(), NEAR);
        assertEquals(6, one.y(), NEAR);
    }

    @Test
    void theKeyboardWalksAndChangesTheLine() {
        FigureModel model = new FigureModel();
        Figure figure = Figure.of("").line("a", 0, 10, x -> x).line("b", 0, 10, x -> 2 * x);
        assertTrue(model.show(new ShownFigure(figure, Optional.empty())));
        PlotArea plot = plot(figure);
        FigureReadout middle = model.walk(plot, 1).orElseThrow();
        FigureReadout next = model.walk(plot, 1).orElseThrow();
        assertTrue(next.x() > middle.x());
        FigureReadout other = model.change(plot, 1).orElseThrow();
        assertEquals(1, other.series());
        assertEquals(next.x(), other.x(), 0.2);
        assertEquals(10, model.walk(plot, 1000).orElseThrow().x(), NEAR);
        assertEquals(0, model.walk(plot, -1000).orElseThrow().x(), NEAR);
    }

    @Test
    void aPartIsSeenUntilTheWholeIsAskedForOrOtherThingsAreCounted() {
        FigureModel model = new FigureModel();
        model.show(new ShownFigure(LINES, Optional.empty()));
        PlotArea plot = plot(LINES);
        model.zoom(
                plot,
                new ImagePoint(plot.xPx(10), plot.yPx(-1)),
                new ImagePoint(plot.xPx(20), plot.yPx(-3)));
        assertTrue(model.zoomed().get());
        PlotArea part = plot((Figure) model.seen());
        assertEquals(10, part.x().from(), NEAR);
        assertEquals(-3, part.y().from(), NEAR);
        model.show(new ShownFigure(LINES.source("s"), Optional.empty()));
        assertTrue(model.zoomed().get(), "the same axes");
        model.show(new ShownFigure(LINES.x("salt", "%"), Optional.empty()));
        assertFalse(model.zoomed().get(), "other axes");
        model.zoom(plot, Optional.empty(), true);
        assertTrue(plot((Figure) model.seen()).x().width() < plot.x().width());
        model.whole();
        assertEquals(LINES.x("salt", "%"), model.seen());
        model.zoom(plot, new ImagePoint(100, 100), new ImagePoint(102, 300));
        assertFalse(model.zoomed().get(), "a slip of the hand is no part");
    }
}
