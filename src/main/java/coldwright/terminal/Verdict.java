package coldwright.terminal;

import coldwright.bench.Outcome;
import coldwright.lesson.Expectation;
import coldwright.science.Require;

import java.util.OptionalDouble;
import java.util.Set;

/**
 * What came of one thing that a lesson says.
 *
 * @param held whether it came out as said
 * @param sentence on what, expected and got
 */
record Verdict(boolean held, String sentence) {
    private static final Set<String> TRUTHS = Set.of("boolean", "Boolean");
    private static final Set<String> WORDS = Set.of("String", "char", "Character");

    static Verdict of(Expectation line, Outcome outcome) {
        if (!(outcome instanceof Outcome.Finished finished)) {
            return of(line, false, Ending.troubles(outcome).get(0).words());
        }
        if (line instanceof Expectation.True) {
            boolean fit = TRUTHS.contains(finished.type());
            boolean held = fit && finished.exact().equals("true");
            return of(line, held, fit ? finished.exact() : unfit(finished));
        }
        if (line instanceof Expectation.Value value) {
            OptionalDouble got = number(finished);
            return got.isEmpty()
                    ? of(line, false, unfit(finished))
                    : of(
                            line,
                            Math.abs(got.getAsDouble() - value.value()) <= value.tolerance(),
                            Require.spoken(got.getAsDouble()));
        }
        throw new AssertionError(line);
    }

    private static Verdict of(Expectation line, boolean held, String got) {
        return new Verdict(
                held, "%s, expected %s, got %s".formatted(line.expression(), wanted(line), got));
    }

    /** The number that a run gave, if it gave one; words that read like one are none. */
    static OptionalDouble number(Outcome.Finished finished) {
        if (WORDS.contains(finished.type())) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Double.parseDouble(finished.exact()));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    static String unfit(Outcome.Finished finished) {
        return finished.value().isEmpty()
                ? "nothing"
                : "%s, of type %s".formatted(finished.value(), finished.type());
    }

    private static String wanted(Expectation line) {
        if (line instanceof Expectation.Value value) {
            return "%s within %s"
                    .formatted(Require.spoken(value.value()), Require.spoken(value.tolerance()));
        }
        return "true";
    }
}
