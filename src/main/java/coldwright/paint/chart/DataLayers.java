package coldwright.paint.chart;

import coldwright.figure.Figure;
import coldwright.figure.Series;
import coldwright.paint.style.PlotArea;
import coldwright.paint.style.SeriesStyle;

import java.awt.Graphics2D;
import java.util.List;

/** Everything drawn over the background: the data, then the axes and the marks. */
public final class DataLayers {
    private DataLayers() {}

    public static void paint(ChartLayout layout, Graphics2D g) {
        paintData(layout, within(layout, g));
        if (layout.bars().drawn()) {
            AxesLayer.zero(g, layout, layout.theme().axis());
        }
        new AxesLayer(layout).paint(g);
        new ReferenceLineLayer(layout.figure().marks(), layout).paint(g);
    }

    /** Data may extend beyond the axes by at most a line's width. */
    private static Graphics2D within(ChartLayout layout, Graphics2D g) {
        PlotArea.PixelRect pixelRect = layout.plot().area();
        int more = (int) Math.ceil(layout.lineWidth());
        Graphics2D within = (Graphics2D) g.create();
        // the value over a bar may be above the plot
        int above = layout.bars().drawn() ? (int) Math.ceil(layout.em() * 1.3) : more;
        within.clipRect(
                pixelRect.left() - more,
                pixelRect.top() - above,
                pixelRect.width() + 2 * more,
                pixelRect.height() + above + above);
        return within;
    }

    /** Bands, then the earlier figure, then curves, then points and bars. */
    private static void paintData(ChartLayout layout, Graphics2D g) {
        List<Series> series = layout.figure().series();
        List<SeriesStyle> styles = SeriesStyle.of(series, layout.theme());
        for (int i = 0; i < series.size(); i++) {
            if (series.get(i) instanceof Series.Band band) {
                new BandLayer(band, layout, styles.get(i)).paint(g);
            }
        }
        new XChartLayer(layout).paint(g);
        layout.earlier().ifPresent(was -> paintEarlier(was, layout, g));
        for (int i = 0; i < series.size(); i++) {
            if (series.get(i) instanceof Series.Curve) {
                paint(series.get(i), layout, styles.get(i), i, g);
            }
        }
        for (int i = 0; i < series.size(); i++) {
            if (!(series.get(i) instanceof Series.Curve)) {
                paint(series.get(i), layout, styles.get(i), i, g);
            }
        }
    }

    private static void paintEarlier(Figure was, ChartLayout layout, Graphics2D g) {
        List<String> names = layout.figure().series().stream().map(Series::name).toList();
        List<SeriesStyle> styles = SeriesStyle.of(layout.figure().series(), layout.theme());
        List<SeriesStyle> own = SeriesStyle.of(was.series(), layout.theme());
        for (int i = 0; i < was.series().size(); i++) {
            int same = names.indexOf(was.series().get(i).name());
            SeriesStyle style = (same < 0 ? own.get(i) : styles.get(same)).earlier();
            paint(was.series().get(i), layout, style, same < 0 ? i : same, g);
        }
    }

    private static void paint(
            Series one, ChartLayout layout, SeriesStyle style, int number, Graphics2D g) {
        if (one instanceof Series.Curve curve) {
            new CurveLayer(curve, layout, style).paint(g);
        } else if (one instanceof Series.Dots dots) {
            new DotLayer(dots, layout, style).paint(g);
        } else if (one instanceof Series.Bars bars) {
            new BarLayer(bars, layout, style, number).paint(g);
        } else if (one instanceof Series.BoxPlot box) {
            new BoxLayer(box, layout, style, number).paint(g);
        }
    }
}
