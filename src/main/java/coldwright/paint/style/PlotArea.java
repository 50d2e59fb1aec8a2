package coldwright.paint.style;

/**
 * The plot area of a figure. Converts between pixels and values, for values under the pointer and
 * for zooming. With bars, the x axis counts the words from 0.
 *
 * @param area the area filled by the data, in logical pixels from the figure's top left
 * @param x the values at the left and the right edge
 * @param y the values at the lower and the upper edge
 */
public record PlotArea(PixelRect area, ValueSpan x, ValueSpan y) {
    /**
     * A rectangle in logical pixels.
     *
     * @param left from the figure's left edge
     * @param top from the figure's upper edge
     */
    public record PixelRect(int left, int top, int width, int height) {
        /** The right edge, in logical pixels from the figure's left edge. */
        public int right() {
            return left + width;
        }

        /** The lower edge, in logical pixels from the figure's upper edge. */
        public int bottom() {
            return top + height;
        }

        /**
         * Whether a point is within it or on its edges.
         *
         * @param xPx logical pixels from the left
         * @param yPx logical pixels from the top
         */
        public boolean contains(double xPx, double yPx) {
            return xPx >= left && xPx <= right() && yPx >= top && yPx <= bottom();
        }
    }

    /**
     * The x value at a pixel.
     *
     * @param xPx logical pixels from the left
     * @return in the axis' unit; extrapolated outside the area
     */
    public double xAt(double xPx) {
        return x.at((xPx - area.left()) / area.width());
    }

    /**
     * The y value at a pixel.
     *
     * @param yPx logical pixels from the top
     * @return in the axis' unit; extrapolated outside the area
     */
    public double yAt(double yPx) {
        return y.at((area.bottom() - yPx) / area.height());
    }

    /**
     * The position of an x value.
     *
     * @param value in the axis' unit
     * @return logical pixels from the left
     */
    public double xPx(double value) {
        return area.left() + area.width() * x.shareOf(value);
    }

    /**
     * The position of a y value.
     *
     * @param value in the axis' unit
     * @return logical pixels from the top
     */
    public double yPx(double value) {
        return area.bottom() - area.height() * y.shareOf(value);
    }
}
