package coldwright.paint.chart;

import coldwright.figure.NumberColumn;
import coldwright.figure.Series;
import coldwright.paint.style.SeriesStyle;

import java.awt.Graphics2D;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;

/**
 * A box plot as a band, lines and points: the box from quartile to quartile, the median, whiskers
 * to the last values within 1.5 boxes, and every value beyond (J. W. Tukey, Exploratory Data
 * Analysis, 1977; from memory). XChart's own has fixed colours, which a dark page hides.
 */
record BoxLayer(Series.BoxPlot box, ChartLayout layout, SeriesStyle style, int place) {
    private static final double HALF_BOX = 0.2;
    private static final double HALF_CAP = 0.08;
    private static final double FENCE = 1.5;

    void paint(Graphics2D g) {
        double[] values = Arrays.stream(box.values().toArray()).filter(Double::isFinite).toArray();
        if (values.length == 0) {
            return;
        }
        double low = box.quantile(0.25);
        double high = box.quantile(0.75);
        double middle = box.quantile(0.5);
        double reach = FENCE * (high - low);
        DoubleSummaryStatistics within =
                Arrays.stream(values)
                        .filter(value -> value >= low - reach && value <= high + reach)
                        .summaryStatistics();
        double left = place - HALF_BOX;
        double right = place + HALF_BOX;
        NumberColumn sides = NumberColumn.of(left, right);
        Series.Band inside =
                new Series.Band("", sides, NumberColumn.of(low, low), NumberColumn.of(high, high));
        new BandLayer(inside, layout, style).paint(g);
        double gap = Double.NaN;
        double capLeft = place - HALF_CAP;
        double capRight = place + HALF_CAP;
        double least = within.getMin();
        double most = within.getMax();
        double[] xs = {
            left, right, right, left, left, gap, left, right, gap, place, place, gap, place, place,
            gap, capLeft, capRight, gap, capLeft, capRight
        };
        double[] ys = {
            low, low, high, high, low, gap, middle, middle, gap, least, low, gap, high, most, gap,
            least, least, gap, most, most
        };
        SeriesStyle solid = SeriesStyle.of(place, 0, layout.theme());
        Series.Curve lines = new Series.Curve("", NumberColumn.of(xs), NumberColumn.of(ys));
        new CurveLayer(lines, layout, solid).paint(g);
        double[] beyond =
                Arrays.stream(values).filter(value -> value < least || value > most).toArray();
        NumberColumn ups = NumberColumn.of(beyond);
        new DotLayer(new Series.Dots("", ups.map(value -> place), ups), layout, style).paint(g);
    }
}
