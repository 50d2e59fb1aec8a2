package coldwright.paint.style;

/**
 * The plot area of a figure, in logical pixels from its top left, and the values at its edges.
 * Converts between pixels and values, for values under the pointer and for zooming. With bars, the
 * x axis counts the words from 0.
 */
public record PlotArea(PixelRect area, ValueSpan x, ValueSpan y) {
    /** A rectangle in logical pixels from the figure's left and upper edge. */
    public record PixelRect(int left, int top, int width, int height) {
        /** The right edge, in logical pixels from the figure's left edge. */
        public int right() {
            return left + width;
        }

        /** The lower edge, in logical pixels from the figure's upper edge. */
        public int bottom() {
            return top + height;
        }

        /** Whether a point, logical pixels from the left and the top, is in it or on its edges. */
        public boolean contains(double xPx, double yPx) {
            return xPx >= left && xPx <= right() && yPx >= top && yPx <= bottom();
        }
    }

    /** The x value at a logical pixel from the left, in the axis' unit; also outside the area. */
    public double xAt(double xPx) {
        return x.at((xPx - area.left()) / area.width());
    }

    /** The y value at a logical pixel from the top, in the axis' unit; also outside the area. */
    public double yAt(double yPx) {
        return y.at((area.bottom() - yPx) / area.height());
    }

    /** The position of an x value in the axis' unit, logical pixels from the left. */
    public double xPx(double value) {
        return area.left() + area.width() * x.shareOf(value);
    }

    /** The position of a y value in the axis' unit, logical pixels from the top. */
    public double yPx(double value) {
        return area.bottom() - area.height() * y.shareOf(value);
    }
}
