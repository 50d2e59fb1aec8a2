/**
 * What charts and drawings share: sizes, fonts, colours and dashes, the plot area in pixels, and
 * the layer as something drawn over the grid.
 */
package coldwright.paint.style;
