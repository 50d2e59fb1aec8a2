package coldwright.desk.plate;

import coldwright.figure.Exhibit;
import coldwright.paint.Picture;
import coldwright.paint.Plot;

import java.util.Optional;

/**
 * A figure as painted.
 *
 * @param picture its pixels
 * @param plot where its data stand; none in a drawing
 * @param exhibit what was painted
 */
public record Painted(Picture picture, Optional<Plot> plot, Exhibit exhibit) {}
