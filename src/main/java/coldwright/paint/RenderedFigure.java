package coldwright.paint;

import coldwright.paint.style.PixelImage;
import coldwright.paint.style.PlotArea;

/**
 * A figure as drawn.
 *
 * @param picture its pixels
 * @param plot where its data stand
 */
public record RenderedFigure(PixelImage picture, PlotArea plot) {}
