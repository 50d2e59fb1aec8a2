package coldwright.figure;

/**
 * A straight line across a figure that marks one value, such as the serving temperature.
 *
 * @param label what it marks
 * @param across which axis the value belongs to
 * @param at the value, in that axis' unit
 */
public record ReferenceLine(String label, Across across, double at) {
    /** Which axis a mark's value is read on. */
    public enum Across {
        /** An upright line at an x value. */
        X,
        /** A level line at a y value. */
        Y
    }
}
