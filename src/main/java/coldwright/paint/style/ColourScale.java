package coldwright.paint.style;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** A strip of colours, painted in gradients of two colours each, as SVG needs it. */
public final class ColourScale {
    private ColourScale() {}

    /** Paints a strip from its left or lower end to the other. */
    public static void paint(Graphics2D g, Rectangle2D strip, List<Color> colours, boolean level) {
        int parts = colours.size() - 1;
        double step = (level ? strip.getWidth() : strip.getHeight()) / parts;
        for (int i = 0; i < parts; i++) {
            double from = level ? strip.getX() + i * step : strip.getMaxY() - i * step;
            double to = level ? from + step : from - step;
            g.setPaint(
                    new GradientPaint(
                            (float) (level ? from : 0),
                            (float) (level ? 0 : from),
                            colours.get(i),
                            (float) (level ? to : 0),
                            (float) (level ? 0 : to),
                            colours.get(i + 1)));
            // a pixel more, so that no seam shows between the parts
            double more = i + 1 < parts ? 1 : 0;
            g.fill(
                    level
                            ? new Rectangle2D.Double(
                                    from, strip.getY(), step + more, strip.getHeight())
                            : new Rectangle2D.Double(
                                    strip.getX(), to - more, strip.getWidth(), step + more));
        }
    }
}
