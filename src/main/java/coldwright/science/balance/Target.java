package coldwright.science.balance;

import coldwright.science.Require;

import java.util.Objects;

/**
 * Target value for a mix.
 *
 * @param trait the trait
 * @param value target value, in the trait's unit
 */
public record Target(Trait trait, double value) {
    public Target {
        Objects.requireNonNull(trait, "trait");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "the target for %s is %s; it must be a number of %s"
                            .formatted(trait.words(), Require.format(value), trait.unit()));
        }
    }
}
