package coldwright.desk.figure;

import coldwright.figure.Exhibit;
import coldwright.paint.style.PixelImage;
import coldwright.paint.style.PlotArea;

import java.util.Optional;

/**
 * A figure as painted.
 *
 * @param picture its pixels
 * @param plot where its data stand; none in a drawing
 * @param exhibit what was painted
 */
public record FigureImage(PixelImage picture, Optional<PlotArea> plot, Exhibit exhibit) {}
