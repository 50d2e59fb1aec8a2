package coldwright.paint;

import java.awt.Color;
import java.awt.Graphics2D;

/**
 * A line of text in its place.
 *
 * @param text what it says
 * @param type the type it is set in
 * @param color its colour
 * @param x its left end
 * @param y its base line
 */
record Line(String text, Type type, Color color, double x, double y) {
    void paint(Graphics2D g) {
        g.setColor(color);
        type.set(g, text, x, y);
    }
}
