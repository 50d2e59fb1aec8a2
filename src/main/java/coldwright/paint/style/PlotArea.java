package coldwright.paint.style;

/**
 * Where the data stand in a drawing: the way from pixels to values and back, for values under the
 * pointer and for zooming. Under bars the level axis counts the words, from 0.
 *
 * @param area the part of the drawing that the data fill, in logical pixels from its top left
 * @param x the values at the left and the right edge
 * @param y the values at the lower and the upper edge
 */
public record PlotArea(PixelRect area, ValueSpan x, ValueSpan y) {
    /**
     * A rectangle in logical pixels.
     *
     * @param left from the drawing's left edge
     * @param top from the drawing's upper edge
     * @param width how wide
     * @param height how high
     */
    public record PixelRect(int left, int top, int width, int height) {
        /**
         * The right edge.
         *
         * @return logical pixels from the drawing's left edge
         */
        public int right() {
            return left + width;
        }

        /**
         * The lower edge.
         *
         * @return logical pixels from the drawing's upper edge
         */
        public int bottom() {
            return top + height;
        }

        /**
         * Whether a point lies in it, its edges included.
         *
         * @param xPx logical pixels from the left
         * @param yPx logical pixels from the top
         * @return true if so
         */
        public boolean contains(double xPx, double yPx) {
            return xPx >= left && xPx <= right() && yPx >= top && yPx <= bottom();
        }
    }

    /**
     * The x value at a place.
     *
     * @param xPx logical pixels from the left
     * @return the value, in the axis' unit; outside the area, as if the axis went on
     */
    public double xAt(double xPx) {
        return x.at((xPx - area.left()) / area.width());
    }

    /**
     * The y value at a place.
     *
     * @param yPx logical pixels from the top
     * @return the value, in the axis' unit; outside the area, as if the axis went on
     */
    public double yAt(double yPx) {
        return y.at((area.bottom() - yPx) / area.height());
    }

    /**
     * Where an x value stands.
     *
     * @param value in the axis' unit
     * @return logical pixels from the left
     */
    public double xPx(double value) {
        return area.left() + area.width() * x.shareOf(value);
    }

    /**
     * Where a y value stands.
     *
     * @param value in the axis' unit
     * @return logical pixels from the top
     */
    public double yPx(double value) {
        return area.bottom() - area.height() * y.shareOf(value);
    }
}
