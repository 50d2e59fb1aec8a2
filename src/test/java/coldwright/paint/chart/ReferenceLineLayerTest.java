package coldwright.paint.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.PlotArea;

import org.junit.jupiter.api.Test;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

class ReferenceLineLayerTest {
    private static final Figure BARE = Figure.of("Ice").x("time", "min").y("ice", "%");

    /** Holds the axes where they are, however the other curves run. */
    private static final Figure FRAMED =
            BARE.line("frame", new double[] {0, 0.001, 10}, new double[] {0, 10, 10});

    private static ChartLayout layout(Figure figure, Figure... earlier) {
        return ChartLayout.of(
                figure,
                Optional.of(earlier).filter(e -> e.length > 0).map(e -> e[0]),
                FigureFormat.of(800, 500),
                Optional.empty());
    }

    private static List<Rectangle2D> boxes(ChartLayout layout) {
        return List.copyOf(
                new ReferenceLineLayer(layout.figure().marks(), layout).places().values());
    }

    private static Rectangle2D only(Figure figure, Figure... earlier) {
        List<Rectangle2D> boxes = boxes(layout(figure, earlier));
        assertEquals(1, boxes.size());
        return boxes.get(0);
    }

    /** Draws a level line through a box and as far to its sides as is asked. */
    private static Figure covered(Figure figure, Rectangle2D box, double left, double right) {
        PlotArea plot = layout(figure).plot();
        return figure.line(
                "over it " + figure.series().size(),
                new double[] {plot.xAt(box.getX() - left), plot.xAt(box.getMaxX() + right)},
                new double[] {plot.yAt(box.getCenterY()), plot.yAt(box.getCenterY())});
    }

    @Test
    void aLabelWithNothingInItsWayStandsRightOfItsLineAtTheTop() {
        Figure figure =
                BARE.line("ice", 0, 10, x -> x / 10).y("ice", "%").yBetween(0, 2).markX("serve", 4);
        ChartLayout layout = layout(figure);
        Rectangle2D box = boxes(layout).get(0);
        assertEquals(layout.plot().area().top(), box.getY());
        assertTrue(box.getX() > layout.plot().xPx(4));
    }

    @Test
    void aCurveThroughTheFirstPlaceSendsTheLabelToTheOtherSide() {
        Figure figure = FRAMED.y("ice", "%").yBetween(0, 12).markX("serve", 5);
        Rectangle2D free = only(figure);
        Figure crossed = covered(figure, free, -5, 0);
        Rectangle2D box = only(crossed);
        assertEquals(free.getY(), box.getY());
        assertTrue(box.getMaxX() < layout(crossed).plot().xPx(5), box.toString());
    }

    @Test
    void aCurveThroughBothSidesSendsItDown() {
        Figure figure = FRAMED.y("ice", "%").yBetween(0, 12).markX("serve", 5);
        Rectangle2D free = only(figure);
        Rectangle2D box = only(covered(figure, free, 300, 100));
        assertEquals(free.getX(), box.getX());
        assertTrue(box.getY() > free.getY(), box.toString());
    }

    @Test
    void theEarlierCurveAndPointsAreInTheWayToo() {
        Figure figure = FRAMED.y("ice", "%").yBetween(0, 12).markX("serve", 5);
        Rectangle2D free = only(figure);
        assertFalse(free.equals(only(figure, covered(figure, free, -5, 0))), "earlier");
        PlotArea plot = layout(figure).plot();
        Figure dotted =
                figure.points(
                        "seen",
                        new double[] {plot.xAt(free.getCenterX())},
                        new double[] {plot.yAt(free.getCenterY())});
        assertFalse(free.equals(only(dotted)), "points");
    }

    @Test
    void aLabelOnALevelLineGoesBelowOrLeft() {
        Figure figure = FRAMED.y("ice", "%").yBetween(0, 12).markY("smooth below", 5);
        Rectangle2D free = only(figure);
        Rectangle2D below = only(covered(figure, free, 0, 0));
        assertEquals(free.getX(), below.getX());
        assertTrue(below.getY() > free.getMaxY(), below.toString());
        Rectangle2D left = only(covered(covered(figure, free, 0, 0), below, 0, 0));
        assertTrue(left.getX() < free.getX(), left.toString());
    }

    @Test
    void noLabelLiesOnACurveNorOnAnotherWhileThereIsRoom() {
        for (int i = 0; i < 40; i++) {
            double wave = 0.3 + i * 0.05;
            Figure figure =
                    BARE.y("ice", "%")
                            .yBetween(-1.5, 1.5)
                            .line("wave", 0, 10, x -> Math.sin(x * wave))
                            .markX("drawn from the machine", 5)
                            .markX("served", 5.2)
                            .markY("smooth below", Math.sin(9 * wave))
                            .markY("felt above", 0.1);
            ChartLayout layout = layout(figure);
            OccupiedArea occupiedArea = new OccupiedArea(layout);
            List<Rectangle2D> before = new ArrayList<>();
            for (Rectangle2D box : boxes(layout)) {
                assertFalse(occupiedArea.cross(box), "curve, wave " + wave);
                assertTrue(before.stream().noneMatch(box::intersects), "label, wave " + wave);
                before.add(box);
            }
            assertEquals(4, before.size());
        }
    }

    @Test
    void whereEveryPlaceIsCoveredTheFirstOneServes() {
        Figure figure = FRAMED.y("ice", "%").yBetween(0, 12).markX("serve", 5);
        Rectangle2D free = only(figure);
        double[] xs = new double[2000];
        double[] ys = new double[xs.length];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = 10.0 * i / xs.length;
            ys[i] = i % 2 * 12;
        }
        assertEquals(free, only(figure.line("everywhere", xs, ys)));
    }
}
