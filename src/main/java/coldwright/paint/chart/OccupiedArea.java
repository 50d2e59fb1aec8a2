package coldwright.paint.chart;

import coldwright.figure.Figure;
import coldwright.figure.NumberColumn;
import coldwright.figure.Series;
import coldwright.paint.style.PlotArea;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The area of the plot covered by curves and points, where no label should be. */
final class OccupiedArea {
    private static final int NUMBERS_TO_A_LINE = 4;

    private final double clear;
    private double[] ends = new double[256];
    private int used;

    private OccupiedArea(double clear) {
        this.clear = clear;
    }

    /** The curves and points of a figure and of the earlier one behind it. */
    static OccupiedArea of(ChartLayout layout) {
        OccupiedArea occupiedArea = new OccupiedArea(layout.lineWidth());
        List<Figure> figures = new ArrayList<>(List.of(layout.figure()));
        layout.earlier().ifPresent(figures::add);
        for (Figure figure : figures) {
            for (Series one : figure.series()) {
                if (one instanceof Series.Curve curve) {
                    occupiedArea.along(PathClipper.through(curve.x(), curve.y(), layout.plot()));
                } else if (one instanceof Series.Dots dots) {
                    occupiedArea.at(dots.x(), dots.y(), layout.plot());
                }
            }
        }
        return occupiedArea;
    }

    private void along(Path2D path) {
        double[] to = new double[6];
        double fromX = 0;
        double fromY = 0;
        for (PathIterator way = path.getPathIterator(null); !way.isDone(); way.next()) {
            if (way.currentSegment(to) == PathIterator.SEG_LINETO) {
                add(fromX, fromY, to[0], to[1]);
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
                add(x, y, x, y);
            }
        }
    }

    private void add(double... line) {
        if (used + NUMBERS_TO_A_LINE > ends.length) {
            ends = Arrays.copyOf(ends, ends.length * 2);
        }
        System.arraycopy(line, 0, ends, used, NUMBERS_TO_A_LINE);
        used += NUMBERS_TO_A_LINE;
    }

    /** Whether any of them crosses a box or is within a line's width of it. */
    boolean cross(Rectangle2D box) {
        Rectangle2D kept =
                new Rectangle2D.Double(
                        box.getX() - clear,
                        box.getY() - clear,
                        box.getWidth() + 2 * clear,
                        box.getHeight() + 2 * clear);
        for (int i = 0; i < used; i += NUMBERS_TO_A_LINE) {
            if (kept.intersectsLine(ends[i], ends[i + 1], ends[i + 2], ends[i + 3])) {
                return true;
            }
        }
        return false;
    }
}
