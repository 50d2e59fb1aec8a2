package coldwright.paint.chart;

import coldwright.figure.NumberColumn;
import coldwright.paint.style.PlotArea;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;

/**
 * Builds the visible path through points.
 *
 * <p>A point that isn't finite leaves a gap. Parts far outside the plot are left out, so that a
 * pole costs no more than any other curve. Of many points in one pixel column only the first,
 * lowest, highest and last are kept.
 */
public final class PathClipper {
    /** How far beyond the plot lines are kept, in logical pixels: more than any line's width. */
    private static final double MARGIN = 40;

    /** Columns per logical pixel: finer than any screen. */
    private static final double COLUMNS_PER_PX = 4;

    private final Path2D.Double path = new Path2D.Double();
    private final double left;
    private final double right;
    private final double top;
    private final double bottom;

    private Point2D last;

    private PathClipper(PlotArea.PixelRect pixelRect) {
        left = pixelRect.left() - MARGIN;
        right = pixelRect.right() + MARGIN;
        top = pixelRect.top() - MARGIN;
        bottom = pixelRect.bottom() + MARGIN;
    }

    public static Path2D through(NumberColumn xs, NumberColumn ys, PlotArea plot) {
        PathClipper pathClipper = new PathClipper(plot.area());
        boolean thin = xs.size() > COLUMNS_PER_PX * plot.area().width();
        Column column = pathClipper.new Column();
        for (int i = 0; i < xs.size(); i++) {
            double x = plot.xPx(xs.at(i));
            double y = plot.yPx(ys.at(i));
            if (!Double.isFinite(x) || !Double.isFinite(y)) {
                column.end();
                pathClipper.last = null;
            } else if (thin) {
                column.take(new Point2D.Double(x, y));
            } else {
                pathClipper.to(new Point2D.Double(x, y));
            }
        }
        column.end();
        return pathClipper.path;
    }

    private void to(Point2D next) {
        if (last != null) {
            draw(last.getX(), last.getY(), next.getX(), next.getY());
        }
        last = next;
    }

    /** Draws the part of a line within the margin (Liang–Barsky clipping). */
    private void draw(double x0, double y0, double x1, double y1) {
        double dx = x1 - x0;
        double dy = y1 - y0;
        double[] p = {-dx, dx, -dy, dy};
        double[] q = {x0 - left, right - x0, y0 - top, bottom - y0};
        double in = 0;
        double out = 1;
        for (int i = 0; i < 4; i++) {
            if (p[i] == 0) {
                if (q[i] < 0) {
                    return;
                }
            } else if (p[i] < 0) {
                in = Math.max(in, q[i] / p[i]);
            } else {
                out = Math.min(out, q[i] / p[i]);
            }
        }
        if (in > out) {
            return;
        }
        if (in > 0 || path.getCurrentPoint() == null || !isAt(x0, y0)) {
            path.moveTo(x0 + in * dx, y0 + in * dy);
        }
        path.lineTo(x0 + out * dx, y0 + out * dy);
    }

    private boolean isAt(double x, double y) {
        return path.getCurrentPoint().getX() == x && path.getCurrentPoint().getY() == y;
    }

    /** The points of one pixel column. */
    private final class Column {
        private long number;
        private Point2D first;
        private Point2D low;
        private Point2D high;
        private Point2D end;

        void take(Point2D point) {
            long mine = (long) Math.floor(point.getX() * COLUMNS_PER_PX);
            if (mine != number) {
                end();
            }
            if (first == null) {
                number = mine;
                first = low = high = point;
            }
            low = point.getY() < low.getY() ? point : low;
            high = point.getY() > high.getY() ? point : high;
            end = point;
        }

        void end() {
            if (first != null) {
                boolean lowFirst = low.getX() <= high.getX();
                to(first);
                to(lowFirst ? low : high);
                to(lowFirst ? high : low);
                to(end);
            }
            first = null;
        }
    }
}
