import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;

import javax.imageio.ImageIO;

/**
 * Draws the icon, a scoop in a cone, half cream and half ice crystals. Arguments: the PNG to write
 * and, if it isn't 512, its width in pixels.
 */
public final class DrawIcon {
    private static final Color COLD = new Color(0x155a70);
    private static final Color CREAM = new Color(0xfbf3df);
    private static final Color ICE = new Color(0xa9d6e6);
    private static final Color FACET = new Color(0x155a70);
    private static final Color WAFER = new Color(0xe2a23b);
    private static final Color GROOVE = new Color(0xb87a1c);

    /** Below this width the grooves of the cone and the facets of the ice only blur. */
    private static final int FINE_PX = 40;

    private DrawIcon() {}

    public static void main(String[] words) throws IOException {
        int px = words.length > 1 ? Integer.parseInt(words[1]) : 512;
        BufferedImage image = new BufferedImage(px, px, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.scale(px / 512.0, px / 512.0);
        pen.setColor(COLD);
        pen.fill(new RoundRectangle2D.Double(8, 8, 496, 496, 112, 112));
        cone(pen, px >= FINE_PX);
        scoop(pen, px >= FINE_PX);
        pen.dispose();
        ImageIO.write(image, "png", Path.of(words[0]).toFile());
    }

    private static void cone(Graphics2D pen, boolean fine) {
        Path2D cone = new Path2D.Double();
        cone.moveTo(140, 262);
        cone.lineTo(372, 262);
        cone.lineTo(256, 474);
        cone.closePath();
        pen.setColor(WAFER);
        pen.setStroke(new BasicStroke(20, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.fill(cone);
        pen.draw(cone);
        if (fine) {
            Graphics2D in = (Graphics2D) pen.create();
            in.clip(cone);
            in.setColor(GROOVE);
            in.setStroke(new BasicStroke(11));
            for (int i = -3; i <= 3; i++) {
                in.draw(new Line2D.Double(256 + i * 62 - 120, 250, 256 + i * 62 + 120, 490));
                in.draw(new Line2D.Double(256 + i * 62 + 120, 250, 256 + i * 62 - 120, 490));
            }
            in.dispose();
        }
    }

    private static void scoop(Graphics2D pen, boolean fine) {
        Area scoop = new Area(new Ellipse2D.Double(118, 46, 276, 266));
        for (double x : new double[] {110, 184, 258, 332}) {
            scoop.add(new Area(new Ellipse2D.Double(x, 232, 70, 62)));
        }
        pen.setColor(CREAM);
        pen.fill(scoop);
        Area ice = new Area(scoop);
        ice.intersect(new Area(new Arc2D.Double(-200, -300, 912, 980, -90, 180, Arc2D.PIE)));
        pen.setColor(ICE);
        pen.fill(ice);
        if (fine) {
            Graphics2D in = (Graphics2D) pen.create();
            in.clip(ice);
            in.setColor(FACET);
            in.setStroke(new BasicStroke(9, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            double side = 46;
            for (int row = 0; row < 6; row++) {
                for (int column = 0; column < 3; column++) {
                    double x = 256 + side * 1.732 * (column + (row % 2) / 2.0);
                    in.draw(hexagon(x, 66 + row * side * 1.5, side));
                }
            }
            in.dispose();
        }
    }

    private static Shape hexagon(double x, double y, double side) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < 6; i++) {
            double turn = Math.toRadians(60 * i - 30);
            double atX = x + side * Math.cos(turn);
            double atY = y + side * Math.sin(turn);
            if (i == 0) {
                path.moveTo(atX, atY);
            } else {
                path.lineTo(atX, atY);
            }
        }
        path.closePath();
        return path;
    }
}
