package coldwright.paint;

/**
 * A figure as drawn.
 *
 * @param picture its pixels
 * @param plot where its data stand
 */
public record Plate(Picture picture, Plot plot) {}
