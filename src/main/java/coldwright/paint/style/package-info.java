/**
 * Shared by charts and drawings: sizes, fonts, colours and dashes, the plot area in pixels, and the
 * interface of layers.
 */
package coldwright.paint.style;
