package coldwright.desk.figure;

import coldwright.figure.Exhibit;
import coldwright.paint.style.PixelImage;
import coldwright.paint.style.PlotArea;

import java.util.Optional;

/**
 * A painted figure.
 *
 * @param picture its pixels
 * @param plot the area of its data; empty for a drawing
 * @param exhibit the figure or drawing that was painted
 */
public record FigureImage(PixelImage picture, Optional<PlotArea> plot, Exhibit exhibit) {}
