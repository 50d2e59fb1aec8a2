package coldwright.figure;

import java.util.Objects;

/**
 * What a piece of a drawing is coloured for: what it is, or how warm it is. Which colour that gives
 * is the painter's business.
 *
 * @param role what it is
 * @param temperatureC how warm it is, °C; not a number unless the role is {@link Role#WARMTH}
 */
public record Tint(Role role, double temperatureC) {
    /** What a piece can be. */
    public enum Role {
        /** The watery part of milk or mix. */
        SERUM,
        /** Fat, each globule for itself. */
        FAT,
        /** Fat that has clumped. */
        CLUMPED_FAT,
        /** Ice. */
        ICE,
        /** The concentrated liquid between ice crystals. */
        SYRUP,
        /** A wall of a bag or a tub. */
        WALL,
        /** Whatever has the temperature that stands beside it. */
        WARMTH
    }

    /** Checks that a temperature is there just where it is needed. */
    public Tint {
        Objects.requireNonNull(role, "role");
        if (role == Role.WARMTH && !Double.isFinite(temperatureC)) {
            throw new IllegalArgumentException(
                    "temperatureC is %s; a piece that is coloured by its temperature needs one"
                            .formatted(temperatureC));
        }
        if (role != Role.WARMTH && !Double.isNaN(temperatureC)) {
            throw new IllegalArgumentException(
                    "temperatureC is %s; only a piece coloured by its temperature has one: use Tint.warmth"
                            .formatted(temperatureC));
        }
    }

    /**
     * The colour of what it is.
     *
     * @param role what it is
     * @return the tint
     */
    public static Tint of(Role role) {
        return new Tint(role, Double.NaN);
    }

    /**
     * The colour of a temperature.
     *
     * @param temperatureC °C
     * @return the tint
     */
    public static Tint warmth(double temperatureC) {
        return new Tint(Role.WARMTH, temperatureC);
    }
}
