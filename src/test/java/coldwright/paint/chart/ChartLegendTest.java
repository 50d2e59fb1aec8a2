package coldwright.paint.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;
import coldwright.paint.style.FigureFont;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.FigureTheme;
import coldwright.paint.style.TextLine;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Optional;

class ChartLegendTest {
    private static final Figure TWO =
            Figure.of("t")
                    .y("freezing point", "°C")
                    .line("sucrose", 0, 1, x -> x)
                    .line("glucose", 0, 1, x -> 2 * x);

    @Test
    void theEarlierTraceIsNamedOnceAndLast() {
        assertEquals(
                List.of("sucrose", "glucose", "earlier"),
                names(TWO, Optional.of(TWO.line("third", 0, 1, x -> 3))));
    }

    @Test
    void aNameThatSaysNothingNewIsLeftOut() {
        Figure one = Figure.of("t").y("freezing point", "°C");
        assertEquals(List.of(), names(one.line("Freezing point", 0, 1, x -> x), Optional.empty()));
        assertEquals(List.of(), names(one.line("", 0, 1, x -> x), Optional.empty()));
        assertEquals(
                List.of("with rum"), names(one.line("with rum", 0, 1, x -> x), Optional.empty()));
    }

    @Test
    void barsOfOneSeriesNeedNoLegendBesideATitleOrACaption() {
        List<String> cups = List.of("milk", "cream");
        double[] values = {88, 57};
        Figure bars = Figure.of("Ice in a cup").bars("ice", cups, values);
        assertEquals(List.of(), names(bars, Optional.empty()));
        assertEquals(
                List.of(),
                names(Figure.of("").y("mass", "g").bars("ice", cups, values), Optional.empty()));
        assertEquals(
                List.of("ice"), names(Figure.of("").bars("ice", cups, values), Optional.empty()));
        assertEquals(
                List.of("ice", "water"), names(bars.bars("water", cups, values), Optional.empty()));
        assertEquals(
                List.of("ice", "earlier"),
                names(bars, Optional.of(Figure.of("was").bars("ice", cups, values))));
    }

    @Test
    void barsWithoutALegendHaveMoreRoom() {
        Figure one =
                Figure.of("Ice in a cup")
                        .y("mass", "g")
                        .bars(
                                "ice with a name so long that it needs a row of its own under a title of this plate",
                                List.of("milk"),
                                new double[] {88});
        Figure two = one.bars("water", List.of("milk"), new double[] {9});
        FigureFormat format = FigureFormat.of(400, 300);
        int alone =
                ChartLayout.of(one, Optional.empty(), format, Optional.empty())
                        .plot()
                        .area()
                        .height();
        int both =
                ChartLayout.of(two, Optional.empty(), format, Optional.empty())
                        .plot()
                        .area()
                        .height();
        assertTrue(alone > both, alone + " > " + both);
    }

    @Test
    void theLegendCoversNoData() {
        Figure many = Figure.of("many").x("x", "").y("y", "");
        for (int i = 0; i < 20; i++) {
            double at = i;
            many = many.line("series number " + i, 0, 1, x -> at);
        }
        for (int width = 100; width <= 1600; width += 300) {
            ChartLayout layout =
                    ChartLayout.of(
                            many, Optional.empty(), FigureFormat.of(width, 400), Optional.empty());
            for (ChartLegend.Placed sample : layout.samples()) {
                assertTrue(sample.y() < layout.plot().area().top(), "at width " + width);
            }
        }
    }

    @Test
    void linesOfTextDoNotOverlapNorLeaveTheSheet() {
        for (FigureFormat format :
                List.of(
                        FigureFormat.of(400, 300),
                        FigureFormat.of(800, 500),
                        FigureFormat.of(1600, 1000))) {
            ChartLayout layout =
                    ChartLayout.of(TWO.x("sugar", "%"), Optional.empty(), format, Optional.empty());
            for (TextLine line : layout.lines()) {
                double right = line.x() + line.type().width(line.text());
                assertTrue(line.x() >= 0 && right <= format.width(), line.text());
                assertTrue(line.y() > 0 && line.y() < format.height(), line.text());
                for (TextLine other : layout.lines()) {
                    boolean apart =
                            other.equals(line)
                                    || Math.abs(other.y() - line.y()) >= line.type().size() * 0.9
                                    || other.x() >= right
                                    || other.x() + other.type().width(other.text()) <= line.x();
                    assertTrue(apart, line.text() + " meets " + other.text());
                }
            }
        }
    }

    private static List<String> names(Figure figure, Optional<Figure> earlier) {
        return ChartLegend.of(figure, earlier, FigureFont.of(13), FigureTheme.LIGHT)
                .entries()
                .stream()
                .map(ChartLegend.Entry::name)
                .toList();
    }
}
