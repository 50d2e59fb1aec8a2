package coldwright.desk.lesson.model;

import coldwright.bench.RunOutcome;
import coldwright.desk.figure.model.DisplayNumber;
import coldwright.desk.messages.Messages;
import coldwright.desk.run.OutcomeSentences;
import coldwright.lesson.CheckExpectation;
import coldwright.play.ClaimVerdict;

import java.util.stream.Collectors;

/**
 * One line of a check and its result in words, empty before a run; for a condition that fails, the
 * values that it compares.
 */
public record CheckLine(CheckExpectation expectation, State state, String got) {
    public enum State {
        OPEN,
        PASSED,
        MISSED,
        /** The line could not be evaluated. */
        FAILED
    }

    static CheckLine open(CheckExpectation expectation) {
        return new CheckLine(expectation, State.OPEN, "");
    }

    /** The result of a line. */
    static CheckLine of(CheckExpectation expectation, ClaimVerdict verdict) {
        return switch (verdict.state()) {
            case PASSED -> new CheckLine(expectation, State.PASSED, got(expectation, verdict));
            case MISSED -> new CheckLine(expectation, State.MISSED, got(expectation, verdict));
            case FAILED -> new CheckLine(expectation, State.FAILED, why(verdict.outcome()));
        };
    }

    private static String why(RunOutcome outcome) {
        return outcome instanceof RunOutcome.Finished finished && !finished.exact().isEmpty()
                ? finished.exact()
                : OutcomeSentences.words(outcome);
    }

    private static String got(CheckExpectation expectation, ClaimVerdict verdict) {
        return expectation instanceof CheckExpectation.Value value
                ? DisplayNumber.toTolerance(verdict.number().getAsDouble(), value.tolerance())
                : verdict.compared().entrySet().stream()
                        .map(
                                one ->
                                        Messages.of(
                                                "check.is",
                                                one.getKey(),
                                                DisplayNumber.of(one.getValue())))
                        .collect(Collectors.joining(", "));
    }

    /** The expected value in words, such as {@code −1.47 within 0.03}. */
    public String wanted() {
        if (expectation instanceof CheckExpectation.Value value) {
            return Messages.of(
                    "check.within",
                    DisplayNumber.of(value.value()),
                    DisplayNumber.of(value.tolerance()));
        }
        if (expectation instanceof CheckExpectation.True) {
            return Messages.of("check.condition");
        }
        throw new AssertionError(expectation);
    }
}
