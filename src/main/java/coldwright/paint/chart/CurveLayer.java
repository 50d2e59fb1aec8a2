package coldwright.paint.chart;

import coldwright.figure.Series;
import coldwright.paint.style.SeriesStyle;

import java.awt.Graphics2D;
import java.awt.geom.Path2D;

/** A curve as one path. Only measured points have shapes. */
record CurveLayer(Series.Curve curve, ChartLayout layout, SeriesStyle ink) {
    /** The line width of an earlier curve, as a share of a curve's. */
    static final double EARLIER_WIDTH = 0.65;

    void paint(Graphics2D g) {
        double width = layout.lineWidth() * (ink.pale() ? EARLIER_WIDTH : 1);
        Path2D path = PathClipper.through(curve.x(), curve.y(), layout.plot());
        g.setColor(ink.color());
        g.setStroke(ink.stroke((float) width));
        g.draw(path);
    }
}
