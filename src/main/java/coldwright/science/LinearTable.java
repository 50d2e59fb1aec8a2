package coldwright.science;

/**
 * A measured table, read along straight lines between its points and never beyond its ends.
 *
 * @param points a rising quantity with its value, two points or more
 */
public record LinearTable(double[]... points) {
    /** {@return the first value of the quantity} */
    public double first() {
        return points[0][0];
    }

    /** {@return the last value of the quantity} */
    public double last() {
        return points[points.length - 1][0];
    }

    /**
     * The value at a place.
     *
     * @param x the quantity; beyond an end it counts as the end
     */
    public double at(double x) {
        double within = Math.max(first(), Math.min(last(), x));
        int i = 1;
        while (i < points.length - 1 && points[i][0] < within) {
            i++;
        }
        double[] low = points[i - 1];
        double[] high = points[i];
        return low[1] + (high[1] - low[1]) * (within - low[0]) / (high[0] - low[0]);
    }
}
