package coldwright.paint.chart;

import coldwright.figure.NumberColumn;
import coldwright.figure.Series;
import coldwright.paint.style.PlotArea;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** The area of the plot covered by curves and points, where no label should be. */
final class OccupiedArea {
    private final double clear;
    private final List<Line2D> lines = new ArrayList<>();

    /** The curves and points of a figure and of the earlier one behind it. */
    OccupiedArea(ChartLayout layout) {
        clear = layout.lineWidth();
        layout.figures()
                .flatMap(figure -> figure.series().stream())
                .forEach(
                        series -> {
                            if (series instanceof Series.Curve curve) {
                                along(PathClipper.through(curve.x(), curve.y(), layout.plot()));
                            } else if (series instanceof Series.Dots dots) {
                                at(dots.x(), dots.y(), layout.plot());
                            }
                        });
    }

    private void along(Path2D path) {
        double[] to = new double[6];
        double fromX = 0;
        double fromY = 0;
        for (PathIterator way = path.getPathIterator(null); !way.isDone(); way.next()) {
            if (way.currentSegment(to) == PathIterator.SEG_LINETO) {
                lines.add(new Line2D.Double(fromX, fromY, to[0], to[1]));
            }
            fromX = to[0];
            fromY = to[1];
        }
    }

    private void at(NumberColumn xs, NumberColumn ys, PlotArea plot) {
        for (int i = 0; i < xs.size(); i++) {
            double x = plot.xPx(xs.at(i));
            double y = plot.yPx(ys.at(i));
            if (plot.area().contains(x, y)) {
                lines.add(new Line2D.Double(x, y, x, y));
            }
        }
    }

    /** Whether any of them crosses a box or is within a line's width of it. */
    boolean cross(Rectangle2D box) {
        Rectangle2D kept =
                new Rectangle2D.Double(
                        box.getX() - clear,
                        box.getY() - clear,
                        box.getWidth() + 2 * clear,
                        box.getHeight() + 2 * clear);
        return lines.stream().anyMatch(line -> line.intersects(kept));
    }
}
