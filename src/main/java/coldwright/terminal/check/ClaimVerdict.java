package coldwright.terminal.check;

import coldwright.bench.RunOutcome;
import coldwright.lesson.CheckExpectation;
import coldwright.science.Require;
import coldwright.terminal.console.RunFailureText;

import java.util.OptionalDouble;
import java.util.Set;

/**
 * What came of one thing that a lesson says.
 *
 * @param passed whether it came out as said
 * @param sentence on what, expected and got
 */
public record ClaimVerdict(boolean passed, String sentence) {
    private static final Set<String> TRUTHS = Set.of("boolean", "Boolean");
    private static final Set<String> WORDS = Set.of("String", "char", "Character");

    static ClaimVerdict of(CheckExpectation line, RunOutcome outcome) {
        if (!(outcome instanceof RunOutcome.Finished finished)) {
            return of(line, false, RunFailureText.troubles(outcome).get(0).words());
        }
        if (line instanceof CheckExpectation.True) {
            boolean fit = TRUTHS.contains(finished.type());
            boolean held = fit && finished.exact().equals("true");
            return of(line, held, fit ? finished.exact() : unfit(finished));
        }
        if (line instanceof CheckExpectation.Value value) {
            OptionalDouble got = number(finished);
            return got.isEmpty()
                    ? of(line, false, unfit(finished))
                    : of(
                            line,
                            Math.abs(got.getAsDouble() - value.value()) <= value.tolerance(),
                            Require.format(got.getAsDouble()));
        }
        throw new AssertionError(line);
    }

    private static ClaimVerdict of(CheckExpectation line, boolean held, String got) {
        return new ClaimVerdict(
                held, "%s, expected %s, got %s".formatted(line.expression(), wanted(line), got));
    }

    /** The number that a run gave, if it gave one; words that read like one are none. */
    static OptionalDouble number(RunOutcome.Finished finished) {
        if (WORDS.contains(finished.type())) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Double.parseDouble(finished.exact()));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    static String unfit(RunOutcome.Finished finished) {
        return finished.value().isEmpty()
                ? "nothing"
                : "%s, of type %s".formatted(finished.value(), finished.type());
    }

    private static String wanted(CheckExpectation line) {
        if (line instanceof CheckExpectation.Value value) {
            return "%s within %s"
                    .formatted(Require.format(value.value()), Require.format(value.tolerance()));
        }
        return "true";
    }
}
