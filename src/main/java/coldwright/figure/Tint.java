package coldwright.figure;

import java.util.Objects;

/**
 * The meaning of a piece's colour: its material or its temperature. The painter chooses the colour
 * itself.
 *
 * @param role the material
 * @param temperatureC temperature, °C; NaN unless the role is {@link Role#WARMTH}
 */
public record Tint(Role role, double temperatureC) {
    /** The material of a piece. */
    public enum Role {
        /** The aqueous phase of milk or mix. */
        SERUM,
        /** Fat as separate globules. */
        FAT,
        /** Fat that has partially coalesced. */
        CLUMPED_FAT,
        /** Ice. */
        ICE,
        /** The concentrated liquid between ice crystals. */
        SYRUP,
        /** A wall of a bag or a tub. */
        WALL,
        /** Any material, coloured by its temperature. */
        WARMTH
    }

    /** Validates that a temperature is given exactly where it is needed. */
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

    /** {@return the tint of a material} */
    public static Tint of(Role role) {
        return new Tint(role, Double.NaN);
    }

    /**
     * {@return the tint of a temperature}
     *
     * @param temperatureC °C
     */
    public static Tint warmth(double temperatureC) {
        return new Tint(Role.WARMTH, temperatureC);
    }
}
