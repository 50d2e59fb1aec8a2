package coldwright.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureKindsTest {
    /** The example of the spreadsheets' QUARTILE.INC, from memory. */
    private static final Series.BoxPlot SPREADSHEET =
            new Series.BoxPlot("b", NumberColumn.of(12, 1, 10, 2, 9, 4, 8, 7));

    @ParameterizedTest
    @CsvSource({"0, 1", "0.25, 3.5", "0.5, 7.5", "0.75, 9.25", "1, 12"})
    void quartilesAreThoseOfSpreadsheets(double share, double expected) {
        assertEquals(expected, SPREADSHEET.quantile(share), 1e-12);
    }

    @Test
    void aHistogramCountsEachValueOnce() {
        double[] values = {20, 29.9, 30, Double.NaN, 39, 40, 50};
        Series.Histogram bins =
                (Series.Histogram) Figure.of("").histogram("b", values, 3).series().get(0);
        assertEquals(NumberColumn.of(2, 2, 2), bins.counts());
        assertEquals(NumberColumn.of(25, 35, 45), bins.x());
        Series.Histogram same =
                (Series.Histogram)
                        Figure.of("").histogram("b", new double[] {7, 7}, 2).series().get(0);
        assertEquals(NumberColumn.of(0, 2), same.counts());
    }

    @Test
    void aHeatMapFitsItsAxesToItsCells() {
        Figure map =
                Figure.of("Map")
                        .x("sugar", "%")
                        .y("temperature", "°C")
                        .heatMap(
                                "ice, %",
                                new double[] {0, 10, 20},
                                new double[] {-4, -2},
                                (x, y) -> x - 10 * y);
        assertEquals(Axis.of("sugar", "%").between(-5, 25), map.x());
        assertEquals(Axis.of("temperature", "°C").between(-5, -1), map.y());
        assertEquals(
                "Map. Temperature (°C) against sugar (%). ice, %: a map of 3 by 2 cells, from 20 at 0 % and −2 °C to 60 at 20 % and −4 °C.",
                FigureDescription.describe(map));
        Series.HeatMap series = (Series.HeatMap) map.series().get(0);
        assertEquals("ice, %: 20–60", series.caption());
        assertEquals(50, series.valueAt(10, -4));
    }

    @Test
    void histogramsAndBoxesAreDescribed() {
        assertEquals(
                "Crystals (µm). 6 values in 3 bins from 20 to 50 µm; most, 2, between 20 and 30 µm.",
                FigureDescription.describe(
                        Figure.of("")
                                .x("crystals", "µm")
                                .histogram("", new double[] {20, 29.9, 30, 39, 40, 50}, 3)));
        assertEquals(
                "Reading (°C). bag: 8 values from 1 to 12 °C, median 7.5, half of them between 3.5 and 9.3.",
                FigureDescription.describe(
                        Figure.of("")
                                .y("reading", "°C")
                                .boxPlot("bag", SPREADSHEET.values().toArray())));
    }

    @Test
    void whatIsNoSuchFigureIsRefused() {
        assertEquals(
                "the heat map \"h\" has 3 cells, which aren't a grid of two columns and rows or more",
                refusal(
                        () ->
                                Figure.of("")
                                        .heatMap(
                                                "h",
                                                new double[] {1, 2, 3},
                                                new double[] {1},
                                                (x, y) -> x)));
        assertEquals(
                "the histogram \"b\" has 0 bins from 1.0 to 2.0; it needs one or more, and its first end must be the lower one",
                refusal(() -> Figure.of("").histogram("b", new double[] {1, 2}, 0)));
        assertEquals(
                "the figure \"t\" mixes box plots with other data; give each a figure of its own",
                refusal(
                        () ->
                                Figure.of("t")
                                        .boxPlot("b", new double[] {1})
                                        .line("l", 0, 1, x -> x)));
    }

    private static String refusal(Runnable making) {
        return assertThrows(IllegalArgumentException.class, making::run).getMessage();
    }
}
