package coldwright.paint.chart;

import coldwright.paint.style.AxisTicks;
import coldwright.paint.style.PlotArea;

import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.util.Locale;

/**
 * The chart itself: XChart's ground, grid and scales, with everything else drawn over them.
 *
 * <p>The positions of XChart's own grid lines can't be set, only their distance in pixels. So its
 * grid is off, and a series with gaps draws the lines at our ticks.
 */
final class ChartFrame {
    /** Wider than any plot, so that XChart draws no ticks of its own and spends no time on them. */
    private static final int NEVER = 1_000_000;

    private ChartFrame() {}

    static void paint(Graphics2D g, ChartLayout layout) {
        PlotArea.PixelRect pixelRect = layout.plot().area();
        XYChart chart = new XYChart(pixelRect.width(), pixelRect.height());
        style(chart.getStyler(), layout);
        chart.getStyler()
                .setXAxisMin(0.0)
                .setXAxisMax((double) pixelRect.width())
                .setYAxisMin(0.0)
                .setYAxisMax((double) pixelRect.height());
        addGrid(chart, layout);
        Graphics2D inPlot = (Graphics2D) g.create();
        inPlot.translate(pixelRect.left(), pixelRect.top());
        chart.paint(inPlot, pixelRect.width(), pixelRect.height());
        inPlot.dispose();
    }

    /** Nothing of a chart but its data, which fill the whole of it. */
    static void style(AxesChartStyler style, ChartLayout layout) {
        style.setAntiAlias(false) // the grid is on whole pixels; layers set their own hints
                .setChartTitleVisible(false)
                .setLegendVisible(false)
                .setChartPadding(0)
                .setChartBackgroundColor(layout.theme().paper())
                .setPlotBackgroundColor(layout.theme().paper())
                .setPlotBorderVisible(false)
                .setLocale(Locale.ROOT)
                .setPlotContentSize(1);
        style.setPlotMargin(0)
                .setAxisTitlesVisible(false)
                .setAxisTicksVisible(false)
                .setPlotTicksMarksVisible(false)
                .setPlotGridLinesVisible(false)
                .setXAxisTickMarkSpacingHint(NEVER)
                .setYAxisTickMarkSpacingHint(NEVER);
    }

    private static void addGrid(XYChart chart, ChartLayout layout) {
        PlotArea plot = layout.plot();
        PlotArea.PixelRect pixelRect = plot.area();
        AxisTicks x = layout.xTicks();
        AxisTicks y = layout.yTicks();
        int upright = layout.bars().drawn() ? 0 : x.count();
        double[] xs = new double[3 * (upright + y.count())];
        double[] ys = new double[xs.length];
        for (int i = 0; i < xs.length; i += 3) {
            int line = i / 3;
            boolean level = line >= upright;
            double at =
                    level
                            ? pixelRect.bottom() - layout.snap(plot.yPx(y.value(line - upright)))
                            : layout.snap(plot.xPx(x.value(line))) - pixelRect.left();
            xs[i] = level ? 0 : at;
            ys[i] = level ? at : 0;
            xs[i + 1] = level ? pixelRect.width() : at;
            ys[i + 1] = level ? at : pixelRect.height();
            ys[i + 2] = Double.NaN;
        }
        if (xs.length > 0) {
            XYSeries grid = chart.addSeries("grid", xs, ys);
            grid.setMarker(SeriesMarkers.NONE);
            grid.setLineColor(layout.theme().grid());
            grid.setLineStyle(new BasicStroke((float) (1 / layout.format().screenScale())));
        }
    }
}
