package coldwright.paint.chart;

import coldwright.figure.Series;
import coldwright.paint.style.PlotArea;
import coldwright.paint.style.SeriesStyle;

import java.awt.Graphics2D;
import java.util.BitSet;

/** Single points. */
record DotLayer(Series.Dots dots, ChartLayout layout, SeriesStyle ink) {
    private static final double SIZE_EMS = 0.6;
    private static final double EARLIER_SIZE_EMS = 0.42;
    private static final int CROWDED = 400;
    private static final double CROWDED_SIZE_EMS = 0.3;

    void paint(Graphics2D g) {
        PlotArea plot = layout.plot();
        double ems = ink.pale() ? EARLIER_SIZE_EMS : SIZE_EMS;
        double size = layout.em() * (dots.size() > CROWDED ? CROWDED_SIZE_EMS : ems);
        g.setColor(ink.color());
        boolean crowded = dots.size() > CROWDED;
        BitSet taken = new BitSet();
        for (int i = 0; i < dots.size(); i++) {
            double x = plot.xPx(dots.x().at(i));
            double y = plot.yPx(dots.y().at(i));
            if (!plot.area().contains(x, y)) {
                continue;
            }
            // draw at most one point per pixel
            int pixel = ((int) y - plot.area().top()) * (plot.area().width() + 1);
            pixel += (int) x - plot.area().left();
            if (!crowded || !taken.get(pixel)) {
                ink.shape().fill(g, x, y, size);
                taken.set(pixel);
            }
        }
    }
}
