package coldwright.desk.figure;

import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.paint.style.PlotArea;

import java.util.Optional;

/**
 * A request for an image.
 *
 * @param exhibit the figure, or its visible part, or a drawing
 * @param earlier the earlier figure, drawn pale behind it
 * @param moment the moment of a drawing, from 0
 * @param former the data area of the last image, to keep the axes in place
 */
public record RenderRequest(
        Exhibit exhibit, Optional<Figure> earlier, int moment, Optional<PlotArea> former) {}
