package coldwright.science.plan;

import coldwright.science.style.StyleRange;

/**
 * A fault of a batch.
 *
 * @param fault its kind
 * @param value the value found, in the unit of its quantity
 * @param range the usual range of the style, with its source
 * @param steps how grave: steps beyond the range times the fault's weight
 */
public record FoundFault(BatchFault fault, double value, StyleRange range, double steps) {
    /** From here on a fault is worth a sentence, steps. */
    public static final double WORTH_TELLING_STEPS = 0.25;

    /** {@return steps, without the weight of its kind} */
    public double unweighted() {
        return steps / fault.weight();
    }

    boolean worthTelling() {
        return steps >= WORTH_TELLING_STEPS;
    }
}
