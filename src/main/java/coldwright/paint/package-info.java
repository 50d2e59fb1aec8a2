/**
 * From a figure to something to look at: pixels for the page, and SVG, PNG and CSV files.
 *
 * <p>XChart gives the frame (ground, grid, scales) and paints the layers in order; the layers draw
 * the data, each curve as one path, so that dashes run on from point to point. Text is set here, so
 * that it stays text in an SVG. Nothing here needs a display.
 */
package coldwright.paint;
