package coldwright.paint.chart;

import coldwright.paint.style.PlotArea;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;

/** The two axes with their ticks, on whole pixels. */
record AxesLayer(ChartLayout layout) {
    void paint(Graphics2D g) {
        PlotArea plot = layout.plot();
        PlotArea.PixelRect pixelRect = plot.area();
        double left = layout.snap(pixelRect.left());
        double bottom = layout.snap(pixelRect.bottom());
        double tick = layout.tickLength();
        g.setStroke(
                new BasicStroke(
                        (float) layout.axisWidth(),
                        BasicStroke.CAP_SQUARE,
                        BasicStroke.JOIN_MITER));
        g.setColor(layout.theme().axis());
        line(g, left, pixelRect.top(), left, bottom);
        line(g, left, bottom, pixelRect.right(), bottom);
        for (int i = 0; i < layout.yTicks().count() && layout.yLabelled(); i++) {
            double y = layout.snap(plot.yPx(layout.yTicks().value(i)));
            line(g, left - tick, y, left, y);
        }
        for (int i = 0; i < layout.xTicks().count() && layout.xLabelled(); i++) {
            double x = layout.snap(plot.xPx(layout.xTicks().value(i)));
            line(g, x, bottom, x, bottom + tick);
        }
    }

    /** The zero line, if it is within the plot and isn't an axis. */
    static void zero(Graphics2D g, ChartLayout layout, Color color) {
        PlotArea plot = layout.plot();
        if (plot.y().from() < 0 && plot.y().to() >= 0) {
            double y = layout.snap(plot.yPx(0));
            g.setStroke(new BasicStroke((float) layout.axisWidth()));
            g.setColor(color);
            line(g, plot.area().left(), y, plot.area().right(), y);
        }
    }

    private static void line(Graphics2D g, double x0, double y0, double x1, double y1) {
        g.draw(new Line2D.Double(x0, y0, x1, y1));
    }
}
