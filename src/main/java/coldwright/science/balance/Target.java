package coldwright.science.balance;

import coldwright.science.Require;

import java.util.Objects;

/**
 * What a mix shall have.
 *
 * @param trait what is measured
 * @param value what it shall be, in the trait's unit
 */
public record Target(Trait trait, double value) {
    /** Checks what is given. */
    public Target {
        Objects.requireNonNull(trait, "trait");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "the target for %s is %s; it must be a number of %s"
                            .formatted(trait.words(), Require.format(value), trait.unit()));
        }
    }
}
