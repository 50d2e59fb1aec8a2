package coldwright.desk.figure;

import coldwright.figure.Exhibit;
import coldwright.paint.style.PixelImage;
import coldwright.paint.style.PlotArea;

import java.util.Optional;

/** A painted figure or drawing: its pixels, and the area of its data, empty for a drawing. */
public record FigureImage(PixelImage picture, Optional<PlotArea> plot, Exhibit exhibit) {}
