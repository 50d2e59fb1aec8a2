package coldwright.paint;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.FigureTheme;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.util.List;
import java.util.Optional;

/** Heat maps, histograms and box plots, in every theme. */
class ChartKindsTest {
    private static final Figure MAP =
            Figure.of("Map")
                    .x("sugar", "%")
                    .y("temperature", "°C")
                    .heatMap(
                            "ice, %",
                            new double[] {0, 10, 20, 30},
                            new double[] {-6, -4, -2},
                            (x, y) -> 30 - x);

    private static final Figure BINS =
            Figure.of("Bins")
                    .x("width", "µm")
                    .histogram("crystals", new double[] {20, 21, 22, 41, 50}, 3);

    private static final Figure BOXES =
            Figure.of("Boxes")
                    .y("reading", "°C")
                    .boxPlot("bag", new double[] {1, 2, 3, 4, 5, 20})
                    .boxPlot("churn", new double[] {2, 2.5, 3});

    static List<FigureTheme> themes() {
        return List.of(FigureTheme.LIGHT, FigureTheme.DARK, FigureTheme.CONTRAST);
    }

    @ParameterizedTest
    @MethodSource("themes")
    void cellsHaveTheColoursOfTheirValues(FigureTheme theme) {
        RenderedFigure drawn = paint(MAP, theme);
        assertEquals(rgb(theme, 3), at(drawn, 0, -4));
        assertEquals(rgb(theme, 2), at(drawn, 10, -6));
        assertEquals(rgb(theme, 1), at(drawn, 20, -2));
        assertEquals(rgb(theme, 0), at(drawn, 30, -4));
    }

    @ParameterizedTest
    @MethodSource("themes")
    void aBarOfAHistogramIsAsHighAsItsCount(FigureTheme theme) {
        RenderedFigure drawn = paint(BINS, theme);
        int data = theme.series().get(0).getRGB() & 0xFFFFFF;
        assertEquals(data, at(drawn, 25, 2.9));
        assertTrue(at(drawn, 25, 3.05) != data, "the first bar is too high");
        assertTrue(at(drawn, 35, 0.05) != data, "a bar where no value is");
        assertEquals(data, at(drawn, 45, 1.9));
    }

    @ParameterizedTest
    @MethodSource("themes")
    void aBoxReachesFromQuartileToQuartile(FigureTheme theme) {
        RenderedFigure drawn = paint(BOXES, theme);
        int paper = theme.paper().getRGB() & 0xFFFFFF;
        assertTrue(at(drawn, -0.1, 3) != paper, "no box");
        assertEquals(paper, at(drawn, -0.1, 1.6));
        assertTrue(at(drawn, 0, 20) != paper, "the far value is not shown");
        assertEquals(paper, at(drawn, 0, 12.7));
    }

    @Test
    void zoomedInAHeatMapKeepsItsCellsInPlace() {
        RenderedFigure drawn = paint(MAP.xBetween(8, 16).yBetween(-4.5, -3.5), FigureTheme.LIGHT);
        assertEquals(rgb(FigureTheme.LIGHT, 2), at(drawn, 14, -4));
        assertEquals(rgb(FigureTheme.LIGHT, 1), at(drawn, 15.5, -4));
    }

    @Test
    void noEarlierFigureIsSeenThroughThem() {
        FigureFormat format = FigureFormat.of(500, 400);
        for (Figure figure : List.of(MAP, BINS, BOXES)) {
            Figure other =
                    new Figure(
                            figure.title(),
                            figure.x(),
                            figure.y(),
                            List.of(),
                            List.of(),
                            "",
                            List.of());
            Figure line = other.line("l", 0, 3, x -> x);
            assertArrayEquals(
                    ChartPainter.paint(figure, format).picture().argbPremultiplied(),
                    ChartPainter.paint(figure, Optional.of(line), format, Optional.empty())
                            .picture()
                            .argbPremultiplied());
        }
    }

    @Test
    void aTerminalShowsThem() {
        List<String> map = TextPlot.of(MAP, 60, true);
        assertTrue(map.get(1).contains("#####") && map.get(1).contains("...."), map.toString());
        assertTrue(map.contains("      .:*#  ice, %: 0–30"), map.toString());
        assertEquals(
                List.of(
                        "",
                        "20–30 µm ################################ 3",
                        "30–40 µm  0",
                        "40–50 µm ##################### 2"),
                TextPlot.of(BINS, 60, true));
        List<String> boxes = TextPlot.of(BOXES, 60, true);
        assertEquals("reading, °C", boxes.get(0));
        assertTrue(boxes.get(1).matches("  bag -+=+\\|=+-+"), boxes.get(1));
    }

    private static RenderedFigure paint(Figure figure, FigureTheme theme) {
        return ChartPainter.paint(figure, FigureFormat.of(500, 400).withTheme(theme));
    }

    private static int at(RenderedFigure drawn, double x, double y) {
        return drawn.picture()
                .rgbAt(
                        (int) Math.round(drawn.plot().xPx(x)),
                        (int) Math.round(drawn.plot().yPx(y)));
    }

    private static int rgb(FigureTheme theme, int step) {
        return theme.scale().get(step).getRGB() & 0xFFFFFF;
    }
}
