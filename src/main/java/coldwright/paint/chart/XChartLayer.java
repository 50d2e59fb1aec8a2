package coldwright.paint.chart;

import coldwright.figure.NumberColumn;
import coldwright.figure.Series;
import coldwright.paint.style.PlotArea;
import coldwright.paint.style.SeriesStyle;

import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.HeatMapChart;
import org.knowm.xchart.internal.chartpart.Chart;
import org.knowm.xchart.style.Styler;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The data that XChart draws itself: heat maps and histograms. */
public record XChartLayer(ChartLayout layout) {
    private static final Color CLEAR = new Color(0, 0, 0, 0);

    void paint(Graphics2D g) {
        List<Series> all = layout.figure().series();
        List<SeriesStyle> styles = SeriesStyle.of(all, layout.theme());
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i) instanceof Series.HeatMap map) {
                heatMap(map, g);
            } else if (all.get(i) instanceof Series.Histogram histogram) {
                histogram(histogram, styles.get(i), g);
            }
        }
    }

    private void heatMap(Series.HeatMap map, Graphics2D g) {
        NumberColumn xs = map.x().distinct();
        NumberColumn ys = map.y().distinct();
        HeatMapChart chart = new HeatMapChart(1, 1, Styler.ChartTheme.XChart);
        ChartFrame.style(chart.getStyler(), layout);
        List<Number[]> cells = new ArrayList<>();
        for (int i = 0; i < map.size(); i++) {
            if (Double.isFinite(map.values().at(i))) {
                cells.add(new Number[] {i % xs.size(), i / xs.size(), map.values().at(i)});
            }
        }
        List<Integer> columns = IntStream.range(0, xs.size()).boxed().toList();
        List<Integer> rows = IntStream.range(0, ys.size()).boxed().toList();
        chart.addSeries("map", columns, rows, cells);
        chart.getStyler()
                .setRangeColors(layout.theme().scale().toArray(Color[]::new))
                .setDrawBorder(false);
        NumberColumn across = Series.HeatMap.edges(map.x());
        NumberColumn up = Series.HeatMap.edges(map.y());
        paint(chart, across, up, g);
    }

    private void histogram(Series.Histogram bins, SeriesStyle style, Graphics2D g) {
        CategoryChart chart = new CategoryChart(1, 1, Styler.ChartTheme.XChart);
        ChartFrame.style(chart.getStyler(), layout);
        double most = layout.plot().y().to();
        chart.getStyler().setAvailableSpaceFill(0.97).setYAxisMin(0.0).setYAxisMax(most);
        chart.addSeries("bins", bins.x().toArray(), bins.counts().toArray())
                .setFillColor(style.color());
        paint(chart, NumberColumn.of(bins.from(), bins.to()), NumberColumn.of(0, most), g);
    }

    /** Paints a chart where its axes are in the plot, which may show only a part of it. */
    private void paint(Chart<?, ?> chart, NumberColumn x, NumberColumn y, Graphics2D g) {
        PlotArea plot = layout.plot();
        chart.getStyler().setChartBackgroundColor(CLEAR).setPlotBackgroundColor(CLEAR);
        double left = plot.xPx(x.at(0));
        double top = plot.yPx(y.at(1));
        double width = plot.xPx(x.at(1)) - left;
        double height = plot.yPx(y.at(0)) - top;
        int wide = (int) Math.max(1, Math.round(width));
        int high = (int) Math.max(1, Math.round(height));
        Graphics2D in = (Graphics2D) g.create();
        in.clip(
                new Rectangle(
                        plot.area().left(),
                        plot.area().top(),
                        plot.area().width(),
                        plot.area().height()));
        in.translate(left, top);
        in.scale(width / wide, height / high);
        chart.paint(in, wide, high);
        in.dispose();
    }
}
