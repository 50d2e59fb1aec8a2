package coldwright.desk.figure;

import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.paint.style.PlotArea;

import java.util.Optional;

/**
 * A request for an image of a figure, of its visible part or of a moment of a drawing, from 0. The
 * earlier figure is drawn pale behind it; the data area of the last image keeps the axes in place.
 */
public record RenderRequest(
        Exhibit exhibit, Optional<Figure> earlier, int moment, Optional<PlotArea> former) {}
