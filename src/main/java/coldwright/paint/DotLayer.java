package coldwright.paint;

import coldwright.figure.Series;

import java.awt.Graphics2D;

/**
 * Single points.
 *
 * @param dots the data
 * @param layout where they are drawn
 * @param ink what they are drawn in
 */
record DotLayer(Series.Dots dots, Layout layout, Ink ink) implements Layer {
    private static final double SIZE_EMS = 0.6;
    private static final double EARLIER_SIZE_EMS = 0.42;
    private static final int CROWDED = 400;
    private static final double CROWDED_SIZE_EMS = 0.3;

    @Override
    public void paint(Graphics2D g) {
        Plot plot = layout.plot();
        double ems = ink.pale() ? EARLIER_SIZE_EMS : SIZE_EMS;
        double size = layout.em() * (dots.size() > CROWDED ? CROWDED_SIZE_EMS : ems);
        g.setColor(ink.color());
        for (int i = 0; i < dots.size(); i++) {
            double x = plot.xPx(dots.x().at(i));
            double y = plot.yPx(dots.y().at(i));
            if (x >= plot.area().left() - 1 && x <= plot.area().right() + 1 && isNear(y)) {
                ink.shape().fill(g, x, y, size);
            }
        }
    }

    private boolean isNear(double y) {
        return y >= layout.plot().area().top() - 1 && y <= layout.plot().area().bottom() + 1;
    }
}
