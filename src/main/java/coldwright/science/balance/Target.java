package coldwright.science.balance;

import coldwright.science.Require;

import java.util.Objects;

/**
 * Target value for a mix.
 *
 * @param trait the trait
 * @param value target value, in the trait's unit
 * @param must whether it comes before all targets that are only preferred
 */
public record Target(Trait trait, double value, boolean must) {
    /** How much more a target that must be met counts than one that is preferred. */
    private static final double MUST_WEIGHT = 100;

    public Target {
        Objects.requireNonNull(trait, "trait");
        Require.that(
                Double.isFinite(value),
                "the target for %s is %s; it must be a number of %s",
                trait.words(),
                value,
                trait.unit());
    }

    /** A target that is preferred. */
    public Target(Trait trait, double value) {
        this(trait, value, false);
    }

    /** Weight of one of its units against 1 % by mass of a preferred target. */
    double weight() {
        return trait.weight() * (must ? MUST_WEIGHT : 1);
    }
}
