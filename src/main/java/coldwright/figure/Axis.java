package coldwright.figure;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * An axis: its quantity, its unit and, if fixed, its range.
 *
 * @param label its quantity, such as {@code temperature}
 * @param unit the unit, such as {@code °C}; empty for a bare number
 * @param from its lower end, if fixed
 * @param to its upper end, if fixed
 */
public record Axis(String label, String unit, OptionalDouble from, OptionalDouble to) {
    /** An axis without label and unit. */
    public static final Axis BLANK = of("", "");

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
     * An axis that adapts to the data.
     *
     * @param label its quantity
     * @param unit the unit, may be empty
     */
    public static Axis of(String label, String unit) {
        return new Axis(label, unit, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * The same axis with fixed ends.
     *
     * @param newFrom lower end, in the axis' unit
     * @param newTo upper end, in the axis' unit
     */
    public Axis between(double newFrom, double newTo) {
        return new Axis(label, unit, OptionalDouble.of(newFrom), OptionalDouble.of(newTo));
    }

    /** A number with the unit. */
    String with(String number) {
        return unit.isBlank() ? number : number + " " + unit;
    }

    /** {@return label and unit, as shown beside the axis, such as {@code temperature, °C}} */
    public String caption() {
        return unit.isEmpty() ? label : label + ", " + unit;
    }
}
