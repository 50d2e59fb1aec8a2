package coldwright.figure;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * An axis: what it counts, in which unit, and, if fixed, from where to where.
 *
 * @param label what it counts, such as {@code temperature}
 * @param unit the unit, such as {@code °C}; empty for a bare number
 * @param from its lower end, if fixed
 * @param to its upper end, if fixed
 */
public record Axis(String label, String unit, OptionalDouble from, OptionalDouble to) {
    /** An axis that says nothing yet. */
    public static final Axis BLANK = of("", "");

    /** Checks what is given. */
    public Axis {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(unit, "unit");
        if (from.isPresent() && to.isPresent() && !(from.getAsDouble() < to.getAsDouble())) {
            throw new IllegalArgumentException(
                    "the axis \"%s\" runs from %s to %s; its first end must be the lower one"
                            .formatted(label, from.getAsDouble(), to.getAsDouble()));
        }
    }

    /**
     * An axis that fits itself to the data.
     *
     * @param label what it counts
     * @param unit the unit, may be empty
     * @return the axis
     */
    public static Axis of(String label, String unit) {
        return new Axis(label, unit, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * The same axis with fixed ends.
     *
     * @param newFrom lower end, in the axis' unit
     * @param newTo upper end, in the axis' unit
     * @return the fixed axis
     */
    public Axis between(double newFrom, double newTo) {
        return new Axis(label, unit, OptionalDouble.of(newFrom), OptionalDouble.of(newTo));
    }

    /**
     * Label and unit as they stand beside the axis.
     *
     * @return such as {@code temperature, °C}
     */
    public String caption() {
        return unit.isEmpty() ? label : label + ", " + unit;
    }
}
