package coldwright.desk.figure;

import coldwright.figure.Drawing;
import coldwright.figure.Figure;
import coldwright.paint.ChartPainter;
import coldwright.paint.DrawingPainter;
import coldwright.paint.RenderedFigure;
import coldwright.paint.style.FigureFormat;

import java.util.Optional;

/** Draws figures; never called on the window's thread. */
@FunctionalInterface
public interface FigurePainter {
    /** Draws a chart, or one moment of a drawing. */
    FigurePainter STILL = FigurePainter::still;

    FigureImage paint(RenderRequest renderRequest, FigureFormat format);

    private static FigureImage still(RenderRequest renderRequest, FigureFormat format) {
        if (renderRequest.exhibit() instanceof Figure figure) {
            RenderedFigure renderedFigure =
                    ChartPainter.paint(
                            figure, renderRequest.earlier(), format, renderRequest.former());
            return new FigureImage(
                    renderedFigure.picture(), Optional.of(renderedFigure.plot()), figure);
        }
        if (renderRequest.exhibit() instanceof Drawing drawing) {
            return new FigureImage(
                    DrawingPainter.paint(drawing, renderRequest.moment(), format),
                    Optional.empty(),
                    drawing);
        }
        throw new AssertionError(renderRequest.exhibit().getClass());
    }
}
