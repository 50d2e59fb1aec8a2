package coldwright.terminal;

import coldwright.bench.Outcome;
import coldwright.lesson.Expectation;
import coldwright.science.Require;

import java.util.Set;

/**
 * What came of one line of a check.
 *
 * @param expectation the line
 * @param held whether it came out as expected
 * @param got what came out, in words
 */
record Verdict(Expectation expectation, boolean held, String got) {
    private static final Set<String> TRUTHS = Set.of("boolean", "Boolean");
    private static final Set<String> WORDS = Set.of("String", "char", "Character");

    static Verdict of(Expectation expectation, Outcome outcome) {
        if (!(outcome instanceof Outcome.Finished finished)) {
            return new Verdict(expectation, false, Ending.troubles(outcome).get(0).words());
        }
        if (expectation instanceof Expectation.True) {
            boolean fit = TRUTHS.contains(finished.type());
            boolean held = fit && finished.exact().equals("true");
            return new Verdict(expectation, held, fit ? finished.exact() : unfit(finished));
        }
        if (expectation instanceof Expectation.Value value) {
            return compare(value, finished);
        }
        throw new AssertionError(expectation);
    }

    private static Verdict compare(Expectation.Value value, Outcome.Finished finished) {
        if (WORDS.contains(finished.type())) {
            return new Verdict(value, false, unfit(finished));
        }
        try {
            double got = Double.parseDouble(finished.exact());
            boolean held = Math.abs(got - value.value()) <= value.tolerance();
            return new Verdict(value, held, Require.spoken(got));
        } catch (NumberFormatException e) {
            return new Verdict(value, false, unfit(finished));
        }
    }

    private static String unfit(Outcome.Finished finished) {
        return finished.value().isEmpty()
                ? "nothing"
                : "%s, of type %s".formatted(finished.value(), finished.type());
    }

    /** What was expected, in words. */
    String wanted() {
        if (expectation instanceof Expectation.Value value) {
            return "%s within %s"
                    .formatted(Require.spoken(value.value()), Require.spoken(value.tolerance()));
        }
        return "true";
    }

    /** The line as a sentence on what, expected and got. */
    String sentence() {
        return "%s, expected %s, got %s".formatted(expectation.expression(), wanted(), got);
    }
}
