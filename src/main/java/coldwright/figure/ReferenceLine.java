package coldwright.figure;

/**
 * A straight line across a figure that marks one value, such as the serving temperature.
 *
 * @param label what it marks
 * @param across the axis that the value belongs to
 * @param at the value, in the axis' unit
 */
public record ReferenceLine(String label, Across across, double at) {
    /** The axis that a mark's value belongs to. */
    public enum Across {
        /** A vertical line at an x value. */
        X,
        /** A horizontal line at a y value. */
        Y
    }
}
