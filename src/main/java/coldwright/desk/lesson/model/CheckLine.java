package coldwright.desk.lesson.model;

import coldwright.bench.ExpressionEvaluator;
import coldwright.desk.figure.model.DisplayNumber;
import coldwright.desk.messages.Messages;
import coldwright.lesson.CheckExpectation;

/**
 * One line of a check and what came of it.
 *
 * @param expectation what was expected
 * @param state how it stands
 * @param got what came out, in words; empty before a run
 */
public record CheckLine(CheckExpectation expectation, State state, String got) {
    /** How a line of a check stands. */
    public enum State {
        /** Not tried yet. */
        OPEN,
        /** It came out as expected. */
        PASSED,
        /** It came out otherwise. */
        MISSED,
        /** It could not be worked out. */
        FAILED
    }

    static CheckLine open(CheckExpectation expectation) {
        return new CheckLine(expectation, State.OPEN, "");
    }

    static CheckLine failed(CheckExpectation expectation, String why) {
        return new CheckLine(expectation, State.FAILED, why);
    }

    /** Compares what a run gave for it. */
    static CheckLine of(CheckExpectation expectation, ExpressionEvaluator.Evaluation evaluation) {
        return evaluation.threw()
                ? failed(expectation, evaluation.text())
                : judged(expectation, evaluation.text());
    }

    private static CheckLine judged(CheckExpectation expectation, String printed) {
        if (expectation instanceof CheckExpectation.True) {
            boolean held = printed.equals("true");
            boolean usable = held || printed.equals("false");
            return new CheckLine(
                    expectation,
                    held ? State.PASSED : usable ? State.MISSED : State.FAILED,
                    usable ? Messages.of(held ? "check.true" : "check.not-true") : printed);
        }
        if (expectation instanceof CheckExpectation.Value value) {
            try {
                double got = Double.parseDouble(printed);
                boolean held = Math.abs(got - value.value()) <= value.tolerance();
                return new CheckLine(
                        expectation,
                        held ? State.PASSED : State.MISSED,
                        DisplayNumber.toTolerance(got, value.tolerance()));
            } catch (NumberFormatException e) {
                return new CheckLine(expectation, State.FAILED, printed);
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
        if (expectation instanceof CheckExpectation.Value value) {
            return Messages.of(
                    "check.within",
                    DisplayNumber.of(value.value()),
                    DisplayNumber.of(value.tolerance()));
        }
        if (expectation instanceof CheckExpectation.True) {
            return Messages.of("check.true");
        }
        throw new AssertionError(expectation);
    }
}
