package coldwright.paint.style;

import java.awt.Color;
import java.awt.Graphics2D;

/** A line of text; x is its left end, y its base line. */
public record TextLine(String text, FigureFont type, Color color, double x, double y) {
    public void paint(Graphics2D g) {
        g.setColor(color);
        type.set(g, text, x, y);
    }
}
