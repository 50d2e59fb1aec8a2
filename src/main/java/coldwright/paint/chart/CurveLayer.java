package coldwright.paint.chart;

import coldwright.figure.Series;
import coldwright.paint.style.PlotArea;
import coldwright.paint.style.SeriesStyle;

import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

/** A curve as one path, with a few points of its shape on it. */
record CurveLayer(Series.Curve curve, ChartLayout layout, SeriesStyle ink, Points points) {
    /** The line width of an earlier curve, as a share of a curve's. */
    static final double EARLIER_WIDTH = 0.65;

    private static final double POINT_EMS = 0.52;
    private static final double BETWEEN_POINTS_EMS = 9;

    /** Index of a curve among so many that have points; negative for a curve without points. */
    record Points(int of, int mine) {
        static final Points NONE = new Points(0, -1);
    }

    void paint(Graphics2D g) {
        double width = layout.lineWidth() * (ink.pale() ? EARLIER_WIDTH : 1);
        Path2D path = PathClipper.through(curve.x(), curve.y(), layout.plot());
        g.setColor(ink.color());
        g.setStroke(ink.stroke((float) width));
        g.draw(path);
        if (points.mine() >= 0) {
            paintPoints(g, path);
        }
    }

    /** Places points at even distances along the x axis, each curve's between the others'. */
    private void paintPoints(Graphics2D g, Path2D path) {
        PlotArea.PixelRect pixelRect = layout.plot().area();
        double between = Math.max(pixelRect.width() / 9.0, layout.em() * BETWEEN_POINTS_EMS);
        double next = pixelRect.left() + between * (0.35 + (double) points.mine() / points.of());
        double[] to = new double[6];
        double fromX = Double.NaN;
        double fromY = Double.NaN;
        for (PathIterator way = path.getPathIterator(null); !way.isDone(); way.next()) {
            boolean drawn = way.currentSegment(to) == PathIterator.SEG_LINETO;
            while (drawn && to[0] >= next && next <= pixelRect.right()) {
                if (fromX <= next) {
                    double share = to[0] == fromX ? 0 : (next - fromX) / (to[0] - fromX);
                    double y = fromY + share * (to[1] - fromY);
                    if (pixelRect.contains(next, y)) {
                        paintPoint(g, ink, next, y, layout.em());
                    }
                }
                next += between;
            }
            fromX = to[0];
            fromY = to[1];
        }
    }

    static void paintPoint(Graphics2D g, SeriesStyle seriesStyle, double x, double y, double em) {
        g.setColor(seriesStyle.theme().paper());
        seriesStyle.shape().fill(g, x, y, em * (POINT_EMS + 0.2));
        g.setColor(seriesStyle.color());
        seriesStyle.shape().fill(g, x, y, em * POINT_EMS);
    }
}
