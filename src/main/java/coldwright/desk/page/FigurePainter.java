package coldwright.desk.page;

import coldwright.desk.model.Drawn;
import coldwright.figure.Drawing;
import coldwright.figure.Figure;
import coldwright.paint.ChartPainter;
import coldwright.paint.DrawingPainter;
import coldwright.paint.Picture;
import coldwright.paint.Sheet;

/** Draws figures; never asked on the window's thread. */
@FunctionalInterface
public interface FigurePainter {
    /** Draws charts, and of a drawing its first moment. */
    FigurePainter STILL = FigurePainter::still;

    /**
     * Draws one.
     *
     * @param drawn the figure, and the earlier one to set pale behind it
     * @param sheet how large and how fine
     * @return its pixels
     */
    Picture paint(Drawn drawn, Sheet sheet);

    private static Picture still(Drawn drawn, Sheet sheet) {
        if (drawn.exhibit() instanceof Figure figure) {
            return ChartPainter.paint(figure, drawn.earlier(), sheet).picture();
        }
        if (drawn.exhibit() instanceof Drawing drawing) {
            return DrawingPainter.paint(drawing, 0, sheet);
        }
        throw new AssertionError(drawn.exhibit().getClass());
    }
}
