package coldwright.paint;

import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.internal.chartpart.Annotation;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.SeriesMarkers;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.util.List;

/**
 * The chart itself: ground, grid and scales by XChart, which then paints the layers over them.
 *
 * <p>XChart takes its ticks from a series if the series' values are evenly spaced; so one unseen
 * series carries the ticks, counted in steps from the first, which keeps XChart's arithmetic far
 * from very large and very small numbers.
 */
final class Frame {
    /** Just less than all of the plot: XChart leaves out a tick that stands on the very edge. */
    private static final double ALL = 1 - 1e-9;

    private Frame() {}

    static void paint(Graphics2D g, Layout layout, List<Layer> layers) {
        Plot.Area area = layout.plot().area();
        XYChart chart = new XYChart(area.width(), area.height());
        style(chart.getStyler(), layout);
        addTicks(chart, layout);
        for (Layer layer : layers) {
            chart.addAnnotation(new Over(layer, area));
        }
        Graphics2D inPlot = (Graphics2D) g.create();
        inPlot.translate(area.left(), area.top());
        chart.paint(inPlot, area.width(), area.height());
        inPlot.dispose();
    }

    private static void style(XYStyler style, Layout layout) {
        style.setAntiAlias(false) // the grid stands on whole pixels; layers set their own hints
                .setChartTitleVisible(false)
                .setLegendVisible(false)
                .setChartPadding(0)
                .setChartBackgroundColor(Ink.GROUND)
                .setPlotBackgroundColor(Ink.GROUND)
                .setPlotBorderVisible(false)
                .setPlotContentSize(ALL);
        style.setPlotMargin(0)
                .setAxisTitlesVisible(false)
                .setAxisTicksVisible(false)
                .setPlotTicksMarksVisible(false)
                .setPlotGridVerticalLinesVisible(!layout.bars().drawn())
                .setPlotGridLinesColor(Ink.GRID)
                .setPlotGridLinesStroke(new BasicStroke((float) layout.hairline()))
                .setXAxisTickMarkSpacingHint(1)
                .setYAxisTickMarkSpacingHint(1);
    }

    private static void addTicks(XYChart chart, Layout layout) {
        Ticks x = layout.xTicks();
        Ticks y = layout.yTicks();
        XYStyler style = chart.getStyler();
        style.setXAxisMin(x.inSteps(x.span().from()));
        style.setXAxisMax(x.inSteps(x.span().to()));
        style.setYAxisMin(y.inSteps(y.span().from()));
        style.setYAxisMax(y.inSteps(y.span().to()));
        int count = Math.max(x.count(), y.count());
        if (count == 0) {
            return;
        }
        double[] xs = new double[count];
        double[] ys = new double[count];
        for (int i = 0; i < count; i++) {
            xs[i] = Math.min(i, x.count() - 1);
            ys[i] = Math.min(i, y.count() - 1);
        }
        XYSeries ticks = chart.addSeries("ticks", xs, ys);
        ticks.setMarker(SeriesMarkers.NONE);
        ticks.setLineStyle(SeriesLines.NONE);
    }

    /** A layer of ours where XChart paints its annotations: over the grid, in the order added. */
    private static final class Over extends Annotation {
        private final Layer layer;
        private final Plot.Area area;

        Over(Layer layer, Plot.Area area) {
            super(false);
            this.layer = layer;
            this.area = area;
        }

        @Override
        public void paint(Graphics2D g) {
            Graphics2D onSheet = (Graphics2D) g.create();
            onSheet.translate(-area.left(), -area.top());
            Drawing.prepare(onSheet);
            layer.paint(onSheet);
            onSheet.dispose();
        }
    }
}
