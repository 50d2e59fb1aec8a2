package coldwright.paint.style;

import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The shapes of points, all of similar visual weight. */
public enum PointShape {
    ROUND,
    SQUARE,
    POINTED_UP,
    DIAMOND,
    POINTED_DOWN,
    CROSS;

    /** The shape around a position, in a size in pixels. */
    java.awt.Shape at(double x, double y, double size) {
        double r = size / 2;
        return switch (this) {
            case ROUND -> new Ellipse2D.Double(x - r, y - r, size, size);
            case SQUARE ->
                    new Rectangle2D.Double(x - r * 0.88, y - r * 0.88, size * 0.88, size * 0.88);
            case POINTED_UP ->
                    closed(x, y - r * 1.12, x + r * 1.08, y + r * 0.76, x - r * 1.08, y + r * 0.76);
            case POINTED_DOWN ->
                    closed(x, y + r * 1.12, x + r * 1.08, y - r * 0.76, x - r * 1.08, y - r * 0.76);
            case DIAMOND -> closed(x, y - r * 1.2, x + r * 1.2, y, x, y + r * 1.2, x - r * 1.2, y);
            case CROSS -> cross(x, y, r);
        };
    }

    /** Fills the shape in the current colour. */
    public void fill(Graphics2D g, double x, double y, double size) {
        g.fill(at(x, y, size));
    }

    private static Path2D closed(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        return path;
    }

    private static Path2D cross(double x, double y, double r) {
        double a = r * 1.05;
        double b = r * 0.34;
        return closed(
                x - a, y - b, x - b, y - b, x - b, y - a, x + b, y - a, x + b, y - b, x + a, y - b,
                x + a, y + b, x + b, y + b, x + b, y + a, x - b, y + a, x - b, y + b, x - a, y + b);
    }
}
