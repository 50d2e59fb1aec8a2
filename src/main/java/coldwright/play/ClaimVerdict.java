package coldwright.play;

import coldwright.bench.RunOutcome;
import coldwright.lesson.CheckExpectation;
import coldwright.lesson.LessonClaim;

import java.util.OptionalDouble;
import java.util.Set;

/**
 * The result of a claim.
 *
 * @param claim the claim of the lesson
 * @param state how the two compare
 * @param outcome how the run of its expression ended
 */
public record ClaimVerdict(LessonClaim claim, State state, RunOutcome outcome) {
    private static final Set<String> TRUTHS = Set.of("boolean", "Boolean");
    private static final Set<String> WORDS = Set.of("String", "char", "Character");

    /** How a claim compares with a run. */
    public enum State {
        /** The run agrees with the lesson. */
        PASSED,
        /** The run disagrees with the lesson. */
        MISSED,
        /** The run has no result that can be compared. */
        FAILED
    }

    /** Judges a claim by the run of its expression. */
    public static ClaimVerdict of(LessonClaim claim, RunOutcome outcome) {
        return new ClaimVerdict(claim, state(claim, outcome), outcome);
    }

    private static State state(LessonClaim claim, RunOutcome outcome) {
        boolean passes;
        if (claim instanceof CheckExpectation.True) {
            if (!(outcome instanceof RunOutcome.Finished finished)
                    || !TRUTHS.contains(finished.type())) {
                return State.FAILED;
            }
            passes = finished.exact().equals("true");
        } else {
            OptionalDouble number = number(outcome);
            if (number.isEmpty()) {
                return State.FAILED;
            }
            passes = claim.passes(number.getAsDouble());
        }
        return passes ? State.PASSED : State.MISSED;
    }

    /** Whether the run agrees with the lesson. */
    public boolean passed() {
        return state == State.PASSED;
    }

    /** The number that the run returned, if any. */
    public OptionalDouble number() {
        return number(outcome);
    }

    /** A text that looks like a number isn't one. */
    private static OptionalDouble number(RunOutcome outcome) {
        if (!(outcome instanceof RunOutcome.Finished finished) || WORDS.contains(finished.type())) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Double.parseDouble(finished.exact()));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }
}
