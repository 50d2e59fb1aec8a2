package coldwright.paint.chart;

import coldwright.figure.Series;
import coldwright.paint.style.PlotArea;
import coldwright.paint.style.SeriesStyle;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;

/** A band: a pale area between thin lines. */
record BandLayer(Series.Band band, ChartLayout layout, SeriesStyle ink) {
    private static final double EDGE_WIDTH = 0.5;

    /** How far beyond the plot the area is drawn, in heights of the plot. */
    private static final double BEYOND = 20;

    void paint(Graphics2D g) {
        PlotArea plot = layout.plot();
        g.setColor(ink.band());
        int begin = 0;
        for (int i = 0; i <= band.size(); i++) {
            if (i == band.size() || !drawn(i)) {
                fill(g, begin, i);
                begin = i + 1;
            }
        }
        g.setColor(ink.color());
        g.setStroke(new BasicStroke((float) (layout.lineWidth() * EDGE_WIDTH)));
        g.draw(PathClipper.through(band.x(), band.low(), plot));
        g.draw(PathClipper.through(band.x(), band.high(), plot));
    }

    private void fill(Graphics2D g, int begin, int end) {
        if (end - begin < 2) {
            return;
        }
        Path2D outline = new Path2D.Double();
        outline.moveTo(xPx(begin), yPx(band.high().at(begin)));
        for (int i = begin + 1; i < end; i++) {
            outline.lineTo(xPx(i), yPx(band.high().at(i)));
        }
        for (int i = end - 1; i >= begin; i--) {
            outline.lineTo(xPx(i), yPx(band.low().at(i)));
        }
        outline.closePath();
        g.fill(outline);
    }

    private boolean drawn(int i) {
        return Double.isFinite(layout.plot().xPx(band.x().at(i)))
                && Double.isFinite(layout.plot().yPx(band.low().at(i)))
                && Double.isFinite(layout.plot().yPx(band.high().at(i)));
    }

    private double xPx(int i) {
        double far = layout.plot().area().width() * BEYOND;
        return Math.max(-far, Math.min(far, layout.plot().xPx(band.x().at(i))));
    }

    private double yPx(double value) {
        double far = layout.plot().area().height() * BEYOND;
        return Math.max(-far, Math.min(far, layout.plot().yPx(value)));
    }
}
