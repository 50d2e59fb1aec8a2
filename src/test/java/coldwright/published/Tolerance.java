package coldwright.published;

import java.util.Optional;

/**
 * How far a computed value may lie from a published one, and why so far.
 *
 * @param size the most, in the unit of the quantity or in % of the published value
 * @param isShare whether it is in %
 * @param reason why, as the report prints it
 * @param goal the goal that the error is also held against
 */
public record Tolerance(double size, boolean isShare, String reason, Optional<Goal> goal) {
    /** Rounding of binary fractions: for figures that are arithmetic. */
    public static final Tolerance ROUNDING = percent(1e-7, "arithmetic");

    /** A tolerance in the unit of the quantity. */
    public static Tolerance of(double size, String reason) {
        return new Tolerance(size, false, reason, Optional.empty());
    }

    /** A tolerance in % of the published value. */
    public static Tolerance percent(double percent, String reason) {
        return new Tolerance(percent, true, reason, Optional.empty());
    }

    /** No more than the goal allows. */
    public static Tolerance toMeet(Goal goal) {
        return new Tolerance(goal.size(), goal.isShare(), "the project's goal", Optional.of(goal));
    }

    /** The same, held against a goal in the report though it may be missed. */
    public Tolerance judgedBy(Goal judge) {
        return new Tolerance(size, isShare, reason, Optional.of(judge));
    }

    /** The error in this tolerance's own measure. */
    double measure(double error, double published) {
        return isShare ? 100 * Math.abs(error) / Math.abs(published) : Math.abs(error);
    }
}
