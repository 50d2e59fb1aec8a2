package coldwright.desk.figure;

import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.paint.style.PlotArea;

import java.util.Optional;

/**
 * What is to be painted.
 *
 * @param exhibit the figure, or the part of it that is seen, or a drawing
 * @param earlier the figure to set pale behind it
 * @param moment which moment of a drawing, from 0
 * @param former where the data stood when the plate was last painted, to hold its axes still
 */
public record RenderRequest(
        Exhibit exhibit, Optional<Figure> earlier, int moment, Optional<PlotArea> former) {}
