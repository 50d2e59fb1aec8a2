package coldwright.paint;

import coldwright.figure.Drawing;
import coldwright.paint.drawing.DrawingLayout;
import coldwright.paint.drawing.DrawingLegend;
import coldwright.paint.drawing.PieceLayer;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.PixelImage;

import java.awt.Graphics2D;

/**
 * Draws one moment of a drawing in the style of a book: white ground, the field in quiet colours,
 * the scale bar, the time, and a legend in °C if pieces are coloured by temperature.
 *
 * <pre>{@code
 * PixelImage image = DrawingPainter.paint(drawing, 0, FigureFormat.of(800, 560));
 * }</pre>
 *
 * Needs no display and may be called on any thread.
 */
public final class DrawingPainter {
    private DrawingPainter() {}

    /**
     * Draws one moment, counted from 0. A drawing without moments gives an empty field.
     *
     * @throws IllegalArgumentException if there is no such moment
     */
    public static PixelImage paint(Drawing drawing, int moment, FigureFormat format) {
        return PixelImage.of(format, g -> draw(drawing, moment, format, g));
    }

    /** Draws on a ground that is already painted. */
    static void draw(Drawing drawing, int moment, FigureFormat format, Graphics2D g) {
        int count = drawing.moments().size();
        if (moment < 0 || moment >= Math.max(1, count)) {
            throw new IllegalArgumentException(
                    "moment is %d; the drawing \"%s\" has moments 0 to %d"
                            .formatted(moment, drawing.title(), count - 1));
        }
        PixelImage.smooth(g);
        DrawingLayout layout = DrawingLayout.of(drawing, moment, format);
        new PieceLayer(drawing, moment, layout).paint(g);
        new DrawingLegend(drawing, layout).paint(g);
        layout.lines().forEach(line -> line.paint(g));
    }
}
