package coldwright.paint;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.FigureTheme;
import coldwright.paint.style.PixelImage;
import coldwright.paint.style.PlotArea;
import coldwright.paint.style.ValueSpan;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.awt.GraphicsEnvironment;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

class ChartPainterTest {
    private static final FigureFormat SHEET = FigureFormat.of(600, 400);

    private static final Figure PLAIN =
            Figure.of("Plain")
                    .x("sugar", "%")
                    .y("temperature", "°C")
                    .xBetween(0, 40)
                    .yBetween(0, 10);

    private static final Figure ONE = PLAIN.line("one", 0, 40, w -> 5);

    @Test
    void noDisplayIsNeeded() {
        assertTrue(GraphicsEnvironment.isHeadless());
        assertTrue(Pixels.count(paint(ONE).picture(), rgb -> rgb != 0xFFFFFF) > 1_000);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.5, 2})
    void theGroundIsWhiteAndOpaque(double scale) {
        PixelImage picture = ChartPainter.paint(ONE, SHEET.withScale(scale)).picture();
        assertEquals((int) (600 * scale), picture.widthPx());
        assertEquals((int) (400 * scale), picture.heightPx());
        int[] pixels = picture.argbPremultiplied();
        assertEquals(picture.widthPx() * picture.heightPx(), pixels.length);
        int white = 0;
        for (int pixel : pixels) {
            assertEquals(0xFF, pixel >>> 24);
            white += pixel == 0xFFFFFFFF ? 1 : 0;
        }
        assertTrue(white > 0.9 * pixels.length, white + " white pixels");
    }

    @Test
    void theLineStandsWhereThePlotSaysItDoes() {
        RenderedFigure renderedFigure = paint(PLAIN.line("slope", 0, 40, w -> w / 5));
        for (double x = 2; x < 40; x += 3) {
            int at =
                    renderedFigure
                            .picture()
                            .rgbAt(
                                    px(renderedFigure.plot().xPx(x)),
                                    px(renderedFigure.plot().yPx(x / 5)));
            assertTrue(Pixels.bluish(at), "no line at " + x);
            int above =
                    renderedFigure
                            .picture()
                            .rgbAt(
                                    px(renderedFigure.plot().xPx(x)),
                                    px(renderedFigure.plot().yPx(x / 5)) - 8);
            assertFalse(Pixels.bluish(above), "a line beside its place at " + x);
        }
    }

    @Test
    void theEarlierTraceIsPalerAndThinner() {
        Figure before = PLAIN.line("one", 0, 40, w -> 3);
        RenderedFigure renderedFigure =
                ChartPainter.paint(ONE, Optional.of(before), SHEET, Optional.empty());
        PlotArea plot = renderedFigure.plot();
        int x = px(plot.xPx(17));
        ValueSpan aroundNow = new ValueSpan(plot.yPx(5) - 5, plot.yPx(5) + 5);
        ValueSpan aroundThen = new ValueSpan(plot.yPx(3) - 5, plot.yPx(3) + 5);
        double now = darkest(renderedFigure.picture(), x, aroundNow);
        double then = darkest(renderedFigure.picture(), x, aroundThen);
        assertTrue(now + 0.15 < then, "now " + now + ", then " + then);
        assertTrue(then < 0.9, "the earlier trace can't be seen: " + then);
        assertTrue(
                ink(renderedFigure.picture(), x, aroundThen)
                        < 0.6 * ink(renderedFigure.picture(), x, aroundNow));
    }

    @Test
    void theEarlierTraceStaysBehind() {
        Figure across = PLAIN.line("one", 0, 40, w -> 10 - w / 4);
        RenderedFigure alone = paint(ONE);
        RenderedFigure both = ChartPainter.paint(ONE, Optional.of(across), SHEET, Optional.empty());
        int x = px(alone.plot().xPx(20));
        int y = px(alone.plot().yPx(5));
        assertEquals(alone.picture().rgbAt(x, y), both.picture().rgbAt(x, y));
    }

    @Test
    void anEarlierTraceThatCountsOtherThingsIsLeftOut() {
        int[] alone = paint(ONE).picture().argbPremultiplied();
        Figure other = ONE.y("temperature", "K").line("two", 0, 40, w -> 2);
        assertArrayEquals(alone, pixelsWithEarlier(other));
        assertArrayEquals(alone, pixelsWithEarlier(ONE));
        assertArrayEquals(alone, pixelsWithEarlier(PLAIN));
        assertArrayEquals(alone, pixelsWithEarlier(barsOf(3, 4)));
    }

    private static int[] pixelsWithEarlier(Figure earlier) {
        return ChartPainter.paint(ONE, Optional.of(earlier), SHEET, Optional.empty())
                .picture()
                .argbPremultiplied();
    }

    @Test
    void aDashedLineIsSeenAsDashedWithoutColour() {
        Figure figure = PLAIN.line("unbroken", 0, 40, w -> 8).line("dashed", 0, 40, w -> 2);
        RenderedFigure renderedFigure = paint(figure);
        PlotArea plot = renderedFigure.plot();
        ValueSpan columns = new ValueSpan(plot.area().left() + 4, plot.area().right() - 4);
        int unbroken = px(plot.yPx(8));
        int dashed = px(plot.yPx(2));
        assertTrue(changes(renderedFigure, unbroken, columns) < 30, "the first line is broken");
        assertTrue(changes(renderedFigure, dashed, columns) > 50, "the second line has no dashes");
    }

    private static int changes(RenderedFigure renderedFigure, int row, ValueSpan columns) {
        return Pixels.changesInRow(
                renderedFigure.picture(), row, columns, rgb -> Pixels.grey(rgb) < 190);
    }

    @Test
    void dashesRunOnOverManyPoints() {
        double[] xs = coldwright.figure.NumberColumn.spaced(0, 40, 5_000).toArray();
        double[] ys = new double[xs.length];
        java.util.Arrays.fill(ys, 2);
        RenderedFigure renderedFigure = paint(PLAIN.line("one", 0, 40, w -> 8).line("two", xs, ys));
        ValueSpan columns =
                new ValueSpan(
                        renderedFigure.plot().area().left() + 4,
                        renderedFigure.plot().area().right() - 4);
        assertTrue(changes(renderedFigure, px(renderedFigure.plot().yPx(2)), columns) > 50);
    }

    @Test
    void veryMuchIsStillDrawn() {
        double[] xs = coldwright.figure.NumberColumn.spaced(0, 40, 300_000).toArray();
        double[] ys = java.util.Arrays.stream(xs).map(x -> 5 + 4 * Math.sin(x * 1e4)).toArray();
        RenderedFigure renderedFigure =
                paint(PLAIN.line("much", xs, ys).points("many", xs, ys).text("t"));
        int grey =
                Pixels.grey(
                        renderedFigure
                                .picture()
                                .rgbAt(
                                        px(renderedFigure.plot().xPx(20)),
                                        px(renderedFigure.plot().yPx(4))));
        assertTrue(grey < 200, "grey " + grey);
        List<String> words =
                java.util.stream.IntStream.range(0, 20_000).mapToObj(i -> "w" + i).toList();
        paint(Figure.of("x".repeat(16_000)).bars("b", words, new double[20_000]));
    }

    @Test
    void aGapIsAGap() {
        RenderedFigure renderedFigure =
                paint(PLAIN.line("gap", 0, 40, w -> w > 15 && w < 25 ? Double.NaN : 5));
        int row = px(renderedFigure.plot().yPx(5));
        ValueSpan inGap =
                new ValueSpan(renderedFigure.plot().xPx(16), renderedFigure.plot().xPx(24));
        ValueSpan before =
                new ValueSpan(renderedFigure.plot().xPx(2), renderedFigure.plot().xPx(14));
        assertEquals(0, Pixels.countInRow(renderedFigure.picture(), row, inGap, Pixels::bluish));
        assertTrue(Pixels.countInRow(renderedFigure.picture(), row, before, Pixels::bluish) > 100);
    }

    @Test
    void whatLiesOutsideTheAxesIsNotDrawn() {
        RenderedFigure renderedFigure =
                paint(
                        PLAIN.line("pole", -100, 140, w -> 1e12 / (w - 20))
                                .line("edge", 0, 40, w -> w < 20 ? 1 / 0.0 : -1 / 0.0)
                                .points("far", new double[] {-50, 20}, new double[] {5, 1e200}));
        PlotArea.PixelRect pixelRect = renderedFigure.plot().area();
        ValueSpan left = new ValueSpan(0, pixelRect.left() - 4);
        for (int y = pixelRect.top() + 8; y < renderedFigure.picture().heightPx(); y++) {
            assertEquals(
                    0,
                    Pixels.countInRow(renderedFigure.picture(), y, left, Pixels::bluish),
                    "row " + y);
        }
    }

    @Test
    void axesFitThemselvesToTheData() {
        PlotArea plot = paint(Figure.of("").line("a", -3, 38, w -> -w * 0.11)).plot();
        assertEquals(new ValueSpan(-3, 38), plot.x());
        assertTrue(plot.y().from() <= -4.18 && plot.y().from() > -6, plot.y().toString());
        assertTrue(plot.y().to() >= 0.33 && plot.y().to() < 2, plot.y().toString());
    }

    @Test
    void fixedAxesStayAsTheyAre() {
        PlotArea plot = paint(PLAIN.yBetween(-3.7, 11.3).line("a", 5, 90, w -> w)).plot();
        assertEquals(new ValueSpan(0, 40), plot.x());
        assertEquals(new ValueSpan(-3.7, 11.3), plot.y());
    }

    @Test
    void anEmptyFigureIsAPlateWithItsTitle() {
        RenderedFigure empty = paint(Figure.of("Nothing yet").x("time", "s").y("heat", "J"));
        RenderedFigure untitled = paint(Figure.of("").x("time", "s").y("heat", "J"));
        assertTrue(Pixels.count(empty.picture(), rgb -> Pixels.grey(rgb) < 80) > 100);
        assertTrue(empty.plot().area().top() > untitled.plot().area().top());
        int middle = empty.plot().area().top() + 30;
        assertTrue(Pixels.grey(empty.picture().rgbAt(empty.plot().area().left(), middle)) < 140);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 1.25, 1.5, 2, 3})
    void theAxesStandOnWholePixels(double scale) {
        RenderedFigure renderedFigure = ChartPainter.paint(ONE, SHEET.withScale(scale));
        int row = (int) ((renderedFigure.plot().area().top() + 25) * scale);
        int left = (int) Math.floor(renderedFigure.plot().area().left() * scale);
        int full = 0;
        int half = 0;
        for (int x = left - 3; x <= left + 3; x++) {
            int grey = Pixels.grey(renderedFigure.picture().rgbAt(x, row));
            full += grey == Pixels.grey(FigureTheme.LIGHT.axis().getRGB()) ? 1 : 0;
            half += grey > Pixels.grey(FigureTheme.LIGHT.axis().getRGB()) + 2 && grey < 220 ? 1 : 0;
        }
        assertTrue(full >= 1, "no crisp axis");
        assertEquals(0, half, "the axis is blurred");
    }

    @Test
    void barsStandOnZeroAndEndAtTheirValues() {
        RenderedFigure renderedFigure = paint(barsOf(30, -10));
        PlotArea plot = renderedFigure.plot();
        int first = px(plot.xPx(0));
        int second = px(plot.xPx(1));
        assertTrue(Pixels.bluish(renderedFigure.picture().rgbAt(first, px(plot.yPx(29)))));
        assertFalse(
                Pixels.bluish(renderedFigure.picture().rgbAt(first - 20, px(plot.yPx(30)) - 4)));
        assertTrue(Pixels.bluish(renderedFigure.picture().rgbAt(second, px(plot.yPx(-9)))));
        assertFalse(Pixels.bluish(renderedFigure.picture().rgbAt(second, px(plot.yPx(5)))));
    }

    @Test
    void theSecondSeriesOfBarsIsHatched() {
        List<String> words = List.of("a", "b");
        RenderedFigure renderedFigure =
                paint(
                        Figure.of("t")
                                .bars("one", words, new double[] {9, 9})
                                .bars("two", words, new double[] {9, 9}));
        int row = px(renderedFigure.plot().yPx(4));
        double middle = renderedFigure.plot().xPx(0);
        ValueSpan one = new ValueSpan(middle - 50, middle - 4);
        ValueSpan two = new ValueSpan(middle + 4, middle + 50);
        assertEquals(
                0,
                Pixels.changesInRow(
                        renderedFigure.picture(), row, one, rgb -> Pixels.grey(rgb) < 160));
        assertTrue(
                Pixels.changesInRow(
                                renderedFigure.picture(), row, two, rgb -> Pixels.grey(rgb) < 160)
                        > 4);
    }

    @Test
    void aBandIsPaleBetweenItsEdges() {
        RenderedFigure renderedFigure =
                paint(PLAIN.band("open", new double[] {0, 40}, w -> 4, w -> 6));
        int x = px(renderedFigure.plot().xPx(13));
        int inside = renderedFigure.picture().rgbAt(x, px(renderedFigure.plot().yPx(5)));
        assertTrue(Pixels.bluish(inside) && Pixels.grey(inside) > 200, Integer.toHexString(inside));
        assertEquals(0xFFFFFF, renderedFigure.picture().rgbAt(x, px(renderedFigure.plot().yPx(7))));
    }

    @Test
    void aMarkIsADashedLineAcross() {
        RenderedFigure renderedFigure = paint(ONE.markX("here", 23));
        int x = px(renderedFigure.plot().xPx(23) - 0.5);
        ValueSpan rows =
                new ValueSpan(
                        renderedFigure.plot().area().top() + 30,
                        renderedFigure.plot().area().bottom() - 5);
        int dark =
                Pixels.countInColumn(
                        renderedFigure.picture(), x, rows, rgb -> Pixels.grey(rgb) < 120);
        assertTrue(dark > 0.3 * rows.width() && dark < 0.7 * rows.width(), dark + " dark");
    }

    @Test
    void theSameFigureGivesTheSamePixels() {
        assertArrayEquals(
                paint(ONE).picture().argbPremultiplied(), paint(ONE).picture().argbPremultiplied());
    }

    private static Figure barsOf(double... values) {
        return Figure.of("Bars").bars("bars", List.of("first", "second"), values);
    }

    private static RenderedFigure paint(Figure figure) {
        return ChartPainter.paint(figure, SHEET);
    }

    private static int px(double place) {
        return (int) Math.floor(place);
    }

    private static double darkest(PixelImage picture, int x, ValueSpan rows) {
        double darkest = 1;
        for (int y = (int) rows.from(); y <= rows.to(); y++) {
            darkest = Math.min(darkest, Pixels.luminance(picture.rgbAt(x, y)));
        }
        return darkest;
    }

    /** How much of a column is inked, in pixels of full ink. */
    private static double ink(PixelImage picture, int x, ValueSpan rows) {
        double sum = 0;
        for (int y = (int) rows.from(); y <= rows.to(); y++) {
            sum += (255 - Pixels.grey(picture.rgbAt(x, y))) / 255.0;
        }
        return sum;
    }

    @Test
    void axesStayWhileDataFitThem() {
        Figure four = Figure.of("a").x("x", "").y("y", "").line("one", 0, 10, x -> 0.44 * x);
        Figure three = Figure.of("a").x("x", "").y("y", "").line("one", 0, 10, x -> 0.32 * x);
        Figure little = Figure.of("a").x("x", "").y("y", "").line("one", 0, 10, x -> 0.1 * x);
        Figure much = Figure.of("a").x("x", "").y("y", "").line("one", 0, 10, x -> 0.6 * x);
        FigureFormat format = FigureFormat.of(400, 300);
        PlotArea first = ChartPainter.paint(four, format).plot();
        assertEquals(first, again(three, first, format), "it fills more than 60 % of 0 to 5");
        assertTrue(again(little, first, format).y().to() < 2, "it fills too little");
        assertTrue(again(much, first, format).y().to() >= 6, "it does not fit");
    }

    private static PlotArea again(Figure figure, PlotArea former, FigureFormat format) {
        return ChartPainter.paint(figure, Optional.empty(), format, Optional.of(former)).plot();
    }

    @Test
    void aChartOverAKeptBackdropIsTheSameChart() {
        Figure figure = Figure.of("kept").x("x", "s").y("y", "°C").line("one", 0, 3, x -> x * x);
        FigureFormat format = FigureFormat.of(333, 247);
        int[] first = ChartPainter.paint(figure, format).picture().argbPremultiplied();
        int[] second = ChartPainter.paint(figure, format).picture().argbPremultiplied();
        assertArrayEquals(first, second);
        int[] other =
                ChartPainter.paint(
                                Figure.of("kept")
                                        .x("x", "s")
                                        .y("y", "°C")
                                        .line("one", 0, 3, x -> 9 - x * x),
                                format)
                        .picture()
                        .argbPremultiplied();
        assertFalse(Arrays.equals(first, other));
    }

    @Test
    void aDarkPlateIsDark() {
        FigureFormat dark = FigureFormat.of(300, 200).withTheme(FigureTheme.DARK);
        Figure figure = Figure.of("night").line("one", 0, 1, x -> x);
        assertEquals(0x202B32, ChartPainter.paint(figure, dark).picture().rgbAt(1, 1));
    }
}
