package coldwright.desk.plate;

import coldwright.figure.Drawing;
import coldwright.figure.Figure;
import coldwright.paint.ChartPainter;
import coldwright.paint.DrawingPainter;
import coldwright.paint.Plate;
import coldwright.paint.Sheet;

import java.util.Optional;

/** Draws figures; never asked on the window's thread. */
@FunctionalInterface
public interface FigurePainter {
    /** Draws charts, and of a drawing one moment. */
    FigurePainter STILL = FigurePainter::still;

    /**
     * Draws one.
     *
     * @param sitting what to draw
     * @param sheet how large and how fine
     * @return its pixels
     */
    Painted paint(Sitting sitting, Sheet sheet);

    private static Painted still(Sitting sitting, Sheet sheet) {
        if (sitting.exhibit() instanceof Figure figure) {
            Plate plate = ChartPainter.paint(figure, sitting.earlier(), sheet, sitting.former());
            return new Painted(plate.picture(), Optional.of(plate.plot()), figure);
        }
        if (sitting.exhibit() instanceof Drawing drawing) {
            return new Painted(
                    DrawingPainter.paint(drawing, sitting.moment(), sheet),
                    Optional.empty(),
                    drawing);
        }
        throw new AssertionError(sitting.exhibit().getClass());
    }
}
