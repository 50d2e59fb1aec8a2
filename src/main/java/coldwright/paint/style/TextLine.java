package coldwright.paint.style;

import java.awt.Color;
import java.awt.Graphics2D;
import java.util.List;

/** A line of text; x is its left end, y its base line. */
public record TextLine(String text, FigureFont type, Color color, double x, double y) {
    public void paint(Graphics2D g) {
        g.setColor(color);
        type.set(g, text, x, y);
    }

    /** Sets a figure's title and returns where the part below it begins, from the top. */
    public static double title(
            String title, FigureFormat format, int mostLines, List<TextLine> lines) {
        double em = format.em();
        double y = em * 0.6;
        FigureFont type = FigureFont.ofTitles(Math.rint(em * 1.5));
        for (String line : type.wrapped(title, format.width() - em * 1.8, mostLines)) {
            y += type.size() * 0.9;
            lines.add(new TextLine(line, type, format.theme().text(), em * 0.9, y));
            y += type.size() * 0.25;
        }
        return y;
    }
}
