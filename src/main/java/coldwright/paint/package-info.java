/**
 * Renders figures: pixels for the page, and SVG, PNG and CSV files.
 *
 * <p>XChart draws the frame (ground, grid, scales) and paints the layers in order. The layers draw
 * the data, each curve as one path, so that dashes continue from point to point. Text is drawn
 * here, so that it stays text in an SVG. Nothing here needs a display.
 */
package coldwright.paint;
