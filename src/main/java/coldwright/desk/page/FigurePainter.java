package coldwright.desk.page;

import coldwright.desk.model.Drawn;
import coldwright.paint.Picture;
import coldwright.paint.Sheet;

/** Draws figures; never asked on the window's thread. */
@FunctionalInterface
public interface FigurePainter {
    /**
     * Draws one.
     *
     * @param drawn the figure, and the earlier one to set pale behind it
     * @param sheet how large and how fine
     * @return its pixels
     */
    Picture paint(Drawn drawn, Sheet sheet);
}
