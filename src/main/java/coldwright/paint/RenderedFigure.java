package coldwright.paint;

import coldwright.paint.style.PixelImage;
import coldwright.paint.style.PlotArea;

/** A drawn figure: its pixels, and its plot area for converting pixels to values. */
public record RenderedFigure(PixelImage picture, PlotArea plot) {}
