package coldwright.play;

import coldwright.bench.RunOutcome;
import coldwright.lesson.LessonClaim;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoublePredicate;

/**
 * The result of a claim.
 *
 * @param claim the claim of the lesson
 * @param state how the two compare
 * @param outcome how the run of its expression ended
 * @param compared the values that a condition compares, by their expressions; may be empty
 */
public record ClaimVerdict(
        LessonClaim claim, State state, RunOutcome outcome, Map<String, Double> compared) {
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
        return new ClaimVerdict(claim, state(claim, outcome), outcome, Map.of());
    }

    /** The same with the values that its condition compares, in order. */
    ClaimVerdict comparing(Map<String, Double> values) {
        return new ClaimVerdict(claim, state, outcome, values);
    }

    private static State state(LessonClaim claim, RunOutcome outcome) {
        return claim.match(
                value -> state(outcome, value::passes),
                truth ->
                        outcome instanceof RunOutcome.Finished finished
                                        && TRUTHS.contains(finished.type())
                                ? state(finished.exact().equals("true"))
                                : State.FAILED,
                number -> state(outcome, number::passes));
    }

    private static State state(RunOutcome outcome, DoublePredicate passes) {
        OptionalDouble number = number(outcome);
        return number.isEmpty() ? State.FAILED : state(passes.test(number.getAsDouble()));
    }

    private static State state(boolean passed) {
        return passed ? State.PASSED : State.MISSED;
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
    static OptionalDouble number(RunOutcome outcome) {
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
