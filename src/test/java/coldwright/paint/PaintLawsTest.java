package coldwright.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;
import coldwright.figure.NumberColumn;
import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.paint.chart.ChartLayout;
import coldwright.paint.chart.PathClipper;
import coldwright.paint.chart.ReferenceLineLayer;
import coldwright.paint.style.AxisTicks;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.FigureTheme;
import coldwright.paint.style.PixelImage;
import coldwright.paint.style.PlotArea;
import coldwright.paint.style.SeriesStyle;
import coldwright.paint.style.ValueSpan;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;

class PaintLawsTest {
    /** A double carries some 16 digits; a few are lost between values and pixels. */
    private static final double LOST_DIGITS = 1e-9;

    private static final int BAR =
            SeriesStyle.of(0, 0, FigureTheme.LIGHT).color().getRGB() & 0xFFFFFF;

    @Cases(100)
    void everyPointIsDrawnAndAnythingCanBe(Draw draw) {
        List<Double> xs = draw.one(PaintLawsTest::values);
        List<Double> ys = draw.one(PaintLawsTest::values);
        int width = draw.intIn(40, 500);
        int height = draw.intIn(40, 400);
        double scale = draw.doubleIn(0.5, 2);
        double type = draw.doubleIn(6, 30);
        int size = Math.min(xs.size(), ys.size());
        double[] x = xs.stream().mapToDouble(v -> v).limit(size).toArray();
        double[] y = ys.stream().mapToDouble(v -> v).limit(size).toArray();
        Figure figure =
                Figure.of("Any figure, also one with a title that is longer than its format")
                        .x("x", "%")
                        .y("y", "°C")
                        .line("line", x, y)
                        .points("points", y, x)
                        .band("band", x, v -> v - 1, v -> v * 2)
                        .markX("mark", size > 0 ? x[0] : 0)
                        .markY("mark", size > 0 ? y[0] : 0);
        FigureFormat format = FigureFormat.of(width, height).withScale(scale).withType(type);
        Figure earlier = figure.line("earlier", y, x);
        RenderedFigure renderedFigure =
                ChartPainter.paint(figure, Optional.of(earlier), format, Optional.empty());
        assertEquals(format.widthPx(), renderedFigure.picture().widthPx());
        assertEquals(format.heightPx(), renderedFigure.picture().heightPx());
        PlotArea plot = renderedFigure.plot();
        ChartLayout layout = ChartLayout.of(figure, Optional.of(earlier), format, Optional.empty());
        var labels = new ReferenceLineLayer(figure.marks(), layout).places().values();
        double em = format.em() * scale;
        for (int i = 0; i < size && em > 10; i++) { // an axis covers smaller points
            double xPx = plot.xPx(y[i]);
            double yPx = plot.yPx(x[i]);
            // the label of a mark may cover a point where no place is free
            boolean covered =
                    labels.stream().anyMatch(box -> box.intersects(xPx - 1, yPx - 1, 2, 2));
            if (plot.area().contains(xPx, yPx) && !covered) {
                assertTrue(
                        dotted(renderedFigure.picture(), xPx * scale, yPx * scale, em),
                        "no point " + i);
            }
        }
    }

    /** Whether a pixel near a place has the colour of points; an axis may cover half of one. */
    private static boolean dotted(PixelImage picture, double x, double y, double em) {
        double near = 0.25 * em;
        for (int row = (int) (y - near); row <= y + near; row++) {
            for (int column = (int) (x - near); column <= x + near; column++) {
                boolean within = column < picture.widthPx() && row < picture.heightPx();
                if (within && Pixels.reddish(picture.rgbAt(column, row))) {
                    return true;
                }
            }
        }
        return false;
    }

    @Cases(40)
    void barsReachFromZeroToTheirValues(Draw draw) {
        List<Double> values = draw.one(PaintLawsTest::values);
        int width = draw.intIn(40, 500);
        List<String> words = values.stream().map(v -> "a word " + v).toList();
        double[] heights = values.stream().mapToDouble(v -> v).toArray();
        FigureFormat format = FigureFormat.of(width, 200);
        RenderedFigure renderedFigure =
                ChartPainter.paint(Figure.of("Bars").bars("b", words, heights), format);
        PlotArea plot = renderedFigure.plot();
        PlotArea.PixelRect pixelRect = plot.area();
        double barPx = Math.min(0.62 * pixelRect.width() / heights.length, 5 * format.em());
        double zeroPx = plot.yPx(Math.max(plot.y().from(), Math.min(plot.y().to(), 0)));
        for (int i = 0; i < heights.length && barPx > 3; i++) {
            int column = (int) plot.xPx(i);
            double end = Double.isFinite(heights[i]) ? plot.yPx(heights[i]) : zeroPx;
            end = Math.max(-1e4, Math.min(1e4, end));
            ValueSpan bar = new ValueSpan(Math.min(zeroPx, end) - 1, Math.max(zeroPx, end) + 1);
            for (int row = pixelRect.top(); row < pixelRect.bottom() && column < width; row++) {
                boolean inked = renderedFigure.picture().rgbAt(column, row) == BAR;
                assertTrue(bar.contains(row + 0.5) || !inked, "bar " + i + " beyond its value");
                boolean within = row > bar.from() + 2 && row + 1 < bar.to() - 2;
                assertTrue(inked || !within, "bar " + i + " has a hole in row " + row);
            }
        }
        for (int row = 0; row < format.heightPx(); row++) {
            for (int column = 0; column < format.widthPx(); column++) {
                boolean inked = renderedFigure.picture().rgbAt(column, row) == BAR;
                assertTrue(!inked || near(pixelRect, column, row), column + ", " + row);
            }
        }
    }

    private static boolean near(PlotArea.PixelRect pixelRect, int column, int row) {
        return column >= pixelRect.left() - 2
                && column <= pixelRect.right() + 2
                && row >= pixelRect.top() - 20
                && row <= pixelRect.bottom() + 20;
    }

    @Cases(1000)
    void pixelsLeadBackToValues(Draw draw) {
        double from = draw.doubleIn(-1e6, 1e6);
        double wide = draw.doubleIn(0.01, 1e6);
        double share = draw.doubleIn(0, 1);
        PlotArea plot =
                new PlotArea(
                        new PlotArea.PixelRect(31, 17, 500, 300),
                        new ValueSpan(from, from + wide),
                        new ValueSpan(-wide, from + 2e6));
        double x = from + share * wide;
        double y = -wide + share * plot.y().width();
        assertEquals(x, plot.xAt(plot.xPx(x)), LOST_DIGITS * (Math.abs(from) + wide));
        assertEquals(y, plot.yAt(plot.yPx(y)), LOST_DIGITS * 1e7);
        assertTrue(plot.yPx(y) <= plot.area().bottom() + 1e-6);
        assertTrue(plot.area().contains(plot.xPx(from + wide / 2), plot.yPx(0)));
    }

    @Cases(1000)
    void ticksAreRoundFewAndWithinTheAxis(Draw draw) {
        double from = draw.doubleIn(-1e9, 1e9);
        double power = draw.doubleIn(-9, 12);
        int most = draw.intIn(2, 12);
        ValueSpan span = ValueSpan.around(from, from + Math.pow(10, power));
        AxisTicks axisTicks = AxisTicks.on(span, most);
        assertTrue(axisTicks.count() <= most + 1, axisTicks.count() + " ticks");
        double leading =
                axisTicks.step() / Math.pow(10, Math.floor(Math.log10(axisTicks.step()) + 1e-9));
        assertTrue(
                Math.abs(leading - Math.rint(leading)) < 1e-6
                        && List.of(1L, 2L, 5L, 10L).contains(Math.round(leading)),
                "step " + axisTicks.step());
        for (int i = 0; i < axisTicks.count(); i++) {
            assertTrue(axisTicks.value(i) >= span.from() - axisTicks.step() * 1e-3);
            assertTrue(axisTicks.value(i) <= span.to() + axisTicks.step() * 1e-3);
        }
        AxisTicks out = AxisTicks.letOut(span, most);
        assertTrue(out.span().from() <= span.from() + out.step() * 1e-3);
        assertTrue(out.span().to() >= span.to() - out.step() * 1e-3);
    }

    @Cases(200)
    void noTwoTicksReadTheSame(Draw draw) {
        double from = draw.doubleIn(-1e4, 1e4);
        double power = draw.doubleIn(-3, 9);
        List<String> labels =
                AxisTicks.on(ValueSpan.around(from, from + Math.pow(10, power)), 8).labels();
        assertEquals(labels.size(), new HashSet<>(labels).size(), labels.toString());
    }

    @Cases(20)
    void aTrailKeepsOnlyWhatCanBeSeen(Draw draw) {
        Random random = draw.anyRandom();
        double[] xs = NumberColumn.spaced(0, 1, 100_000).toArray();
        double[] ys = random.doubles(xs.length, -5, 6).toArray();
        PlotArea plot =
                new PlotArea(
                        new PlotArea.PixelRect(0, 0, 300, 200),
                        new ValueSpan(0, 1),
                        new ValueSpan(0, 1));
        Path2D path = PathClipper.through(NumberColumn.of(xs), NumberColumn.of(ys), plot);
        int points = 0;
        double[] at = new double[6];
        for (PathIterator way = path.getPathIterator(null); !way.isDone(); way.next()) {
            way.currentSegment(at);
            points++;
            assertTrue(at[1] >= -41 && at[1] <= 241, "y " + at[1]);
        }
        assertTrue(points < 300 * 4 * 4 * 2 && points > 300 * 4, points + " points");
    }

    private static List<Double> values(Draw draw) {
        return draw.listOf(0, 30, PaintLawsTest::value);
    }

    private static double value(Draw draw) {
        int kind = draw.intIn(1, 9);
        if (kind <= 6) {
            return draw.doubleIn(-100, 100);
        }
        return kind <= 8
                ? draw.finiteDouble()
                : draw.oneOf(
                        Double.NaN,
                        Double.POSITIVE_INFINITY,
                        Double.NEGATIVE_INFINITY,
                        Double.MAX_VALUE,
                        -Double.MAX_VALUE,
                        Double.MIN_VALUE,
                        0.0);
    }
}
