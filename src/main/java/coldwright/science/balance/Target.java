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
        Require.that(
                Double.isFinite(value),
                "the target for %s is %s; it must be a number of %s",
                trait.words(),
                value,
                trait.unit());
    }
}
