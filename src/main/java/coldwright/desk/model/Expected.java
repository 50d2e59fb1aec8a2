package coldwright.desk.model;

import coldwright.bench.Together;
import coldwright.desk.say.Say;
import coldwright.lesson.Expectation;

/**
 * One line of a check and what came of it.
 *
 * @param expectation what was expected
 * @param state how it stands
 * @param got what came out, in words; empty before a run
 */
public record Expected(Expectation expectation, State state, String got) {
    /** How a line of a check stands. */
    public enum State {
        /** Not tried yet. */
        OPEN,
        /** It came out as expected. */
        HELD,
        /** It came out otherwise. */
        MISSED,
        /** It could not be worked out. */
        FAILED
    }

    static Expected open(Expectation expectation) {
        return new Expected(expectation, State.OPEN, "");
    }

    static Expected failed(Expectation expectation, String why) {
        return new Expected(expectation, State.FAILED, why);
    }

    /** Compares what a run gave for it. */
    static Expected of(Expectation expectation, Together.Given given) {
        return given.threw()
                ? failed(expectation, given.text())
                : judged(expectation, given.text());
    }

    private static Expected judged(Expectation expectation, String printed) {
        if (expectation instanceof Expectation.True) {
            boolean held = printed.equals("true");
            boolean usable = held || printed.equals("false");
            return new Expected(
                    expectation,
                    held ? State.HELD : usable ? State.MISSED : State.FAILED,
                    usable ? Say.of(held ? "check.true" : "check.not-true") : printed);
        }
        if (expectation instanceof Expectation.Value value) {
            try {
                double got = Double.parseDouble(printed);
                boolean held = Math.abs(got - value.value()) <= value.tolerance();
                return new Expected(
                        expectation,
                        held ? State.HELD : State.MISSED,
                        PageNumber.toTolerance(got, value.tolerance()));
            } catch (NumberFormatException e) {
                return new Expected(expectation, State.FAILED, printed);
            }
        }
        throw new AssertionError(expectation);
    }

    /**
     * What was expected.
     *
     * @return in words, such as {@code −1.47 within 0.03}
     */
    public String wanted() {
        if (expectation instanceof Expectation.Value value) {
            return Say.of(
                    "check.within", PageNumber.of(value.value()), PageNumber.of(value.tolerance()));
        }
        if (expectation instanceof Expectation.True) {
            return Say.of("check.true");
        }
        throw new AssertionError(expectation);
    }
}
