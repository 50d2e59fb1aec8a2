package coldwright.paint.chart;

import coldwright.figure.Figure;
import coldwright.figure.Series;
import coldwright.paint.style.ChartLayer;
import coldwright.paint.style.PlotArea;
import coldwright.paint.style.SeriesStyle;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

/** Everything drawn over the background: the data, then the axes and the marks. */
public final class DataLayers {
    private DataLayers() {}

    public static List<ChartLayer> of(ChartLayout layout) {
        List<ChartLayer> layers = new ArrayList<>();
        List<ChartLayer> data = new ArrayList<>();
        List<Series> series = layout.figure().series();
        List<SeriesStyle> inks = SeriesStyle.of(series, layout.theme());
        for (int i = 0; i < series.size(); i++) {
            if (series.get(i) instanceof Series.Band band) {
                data.add(new BandLayer(band, layout, inks.get(i)));
            }
        }
        layout.earlier().ifPresent(was -> addEarlier(data, was, layout));
        addSeries(data, layout);
        layers.add(g -> paintWithin(layout, data, g));
        if (layout.bars().drawn()) {
            layers.add(AxesLayer.zero(layout, layout.theme().axis()));
        }
        layers.add(new AxesLayer(layout));
        layers.add(new ReferenceLineLayer(layout.figure().marks(), layout));
        return layers;
    }

    /** Data may extend beyond the axes by at most a line's width. */
    private static void paintWithin(ChartLayout layout, List<ChartLayer> data, Graphics2D g) {
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
        data.forEach(layer -> layer.paint(within));
        within.dispose();
    }

    private static void addEarlier(List<ChartLayer> data, Figure was, ChartLayout layout) {
        List<String> names = layout.figure().series().stream().map(Series::name).toList();
        List<SeriesStyle> inks = SeriesStyle.of(layout.figure().series(), layout.theme());
        List<SeriesStyle> ownInks = SeriesStyle.of(was.series(), layout.theme());
        for (int i = 0; i < was.series().size(); i++) {
            Series one = was.series().get(i);
            int same = names.indexOf(one.name());
            SeriesStyle seriesStyle = (same < 0 ? ownInks.get(i) : inks.get(same)).earlier();
            if (one instanceof Series.Curve curve) {
                data.add(new CurveLayer(curve, layout, seriesStyle, CurveLayer.Points.NONE));
            } else if (one instanceof Series.Dots dots) {
                data.add(new DotLayer(dots, layout, seriesStyle));
            } else if (one instanceof Series.Bars bars) {
                data.add(new BarLayer(bars, layout, seriesStyle, same < 0 ? i : same));
            }
        }
    }

    private static void addSeries(List<ChartLayer> data, ChartLayout layout) {
        List<Series> series = layout.figure().series();
        int curves = (int) series.stream().filter(Series.Curve.class::isInstance).count();
        int curvesSoFar = 0;
        List<SeriesStyle> inks = SeriesStyle.of(series, layout.theme());
        for (int i = 0; i < series.size(); i++) {
            Series one = series.get(i);
            if (one instanceof Series.Curve curve) {
                CurveLayer.Points points = new CurveLayer.Points(curves, curvesSoFar++);
                data.add(
                        new CurveLayer(
                                curve,
                                layout,
                                inks.get(i),
                                curves > 1 ? points : CurveLayer.Points.NONE));
            }
        }
        for (int i = 0; i < series.size(); i++) {
            if (series.get(i) instanceof Series.Dots dots) {
                data.add(new DotLayer(dots, layout, inks.get(i)));
            } else if (series.get(i) instanceof Series.Bars bars) {
                data.add(new BarLayer(bars, layout, inks.get(i), i));
            }
        }
    }
}
