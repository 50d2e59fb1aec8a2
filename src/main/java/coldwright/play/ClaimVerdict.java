package coldwright.play;

import coldwright.bench.RunOutcome;
import coldwright.lesson.CheckExpectation;
import coldwright.lesson.LessonClaim;

import java.util.OptionalDouble;
import java.util.Set;

/**
 * What came of a claim.
 *
 * @param claim what the lesson says
 * @param state how the two compare
 * @param outcome how the run of its expression ended
 */
public record ClaimVerdict(LessonClaim claim, State state, RunOutcome outcome) {
    private static final Set<String> TRUTHS = Set.of("boolean", "Boolean");
    private static final Set<String> WORDS = Set.of("String", "char", "Character");

    /** How a claim compares with a run. */
    public enum State {
        /** It came out as the lesson says. */
        PASSED,
        /** It came out otherwise. */
        MISSED,
        /** Nothing came out that can be compared. */
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

    /** Whether it came out as the lesson says. */
    public boolean passed() {
        return state == State.PASSED;
    }

    /** The number that the run gave, if it gave one. */
    public OptionalDouble number() {
        return number(outcome);
    }

    /** Words that read like a number are none. */
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
