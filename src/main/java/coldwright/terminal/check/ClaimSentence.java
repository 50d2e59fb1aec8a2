package coldwright.terminal.check;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.bench.RunOutcome;
import coldwright.lesson.CheckExpectation;
import coldwright.lesson.VerifiedNumber;
import coldwright.play.ClaimVerdict;
import coldwright.science.Require;
import coldwright.terminal.console.RunFailureText;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** The result of a claim in a sentence: the claim, expected and actual value. */
public final class ClaimSentence {
    private static final int MOST_DECIMALS = 12;

    private ClaimSentence() {}

    public static String of(ClaimVerdict verdict) {
        boolean failed = verdict.state() == ClaimVerdict.State.FAILED;
        return verdict.claim()
                .match(
                        value ->
                                text(
                                        "claim",
                                        value.expression(),
                                        text(
                                                "claim.within",
                                                Require.format(value.value()),
                                                Require.format(value.tolerance())),
                                        failed
                                                ? unfit(verdict)
                                                : Require.format(verdict.number().getAsDouble())),
                        truth -> failed ? unfitTruth(verdict) : unmet(truth, verdict),
                        number ->
                                verdict.outcome().finished()
                                        ? text(
                                                "claim.number",
                                                number.written(),
                                                got(verdict, number))
                                        : text(
                                                "claim.number-failed",
                                                number.written(),
                                                number.expression(),
                                                unfit(verdict)));
    }

    private static String unfitTruth(ClaimVerdict verdict) {
        return text("claim.not-true", verdict.claim().expression(), unfit(verdict));
    }

    /** The author's reason, the rule, and the values that it compares. */
    private static String unmet(CheckExpectation.True truth, ClaimVerdict verdict) {
        String rule =
                truth.source().isEmpty()
                        ? truth.expression()
                        : text("claim.rule", truth.source(), truth.expression());
        List<String> values = new ArrayList<>();
        verdict.compared()
                .forEach((expression, value) -> values.add(text("claim.is", expression, value)));
        return values.isEmpty()
                ? text("claim.unmet", rule)
                : text("claim.unmet.seen", rule, String.join(", ", values));
    }

    private static String got(ClaimVerdict verdict, VerifiedNumber number) {
        return verdict.number().isPresent()
                ? rounded(verdict.number().getAsDouble(), number)
                : unfit(verdict);
    }

    private static String unfit(ClaimVerdict verdict) {
        if (!(verdict.outcome() instanceof RunOutcome.Finished finished)) {
            return RunFailureText.troubles(verdict.outcome()).get(0).words();
        }
        return finished.value().isEmpty()
                ? text("nothing")
                : text("claim.typed", finished.value(), finished.type());
    }

    /** One digit more than in the text, or as many as are needed to show the difference. */
    private static String rounded(double given, VerifiedNumber number) {
        if (!Double.isFinite(given)) {
            return Require.format(given);
        }
        int decimals = 0;
        while (decimals < MOST_DECIMALS && number.tolerance() * Math.pow(10, decimals) < 5) {
            decimals++;
        }
        BigDecimal shown = shown(given, decimals);
        while (decimals < MOST_DECIMALS
                && number.passes(shown.doubleValue())
                && !number.passes(given)) {
            decimals++;
            shown = shown(given, decimals);
        }
        return shown.toPlainString().replace('-', '−');
    }

    private static BigDecimal shown(double given, int decimals) {
        return BigDecimal.valueOf(given).setScale(decimals, RoundingMode.HALF_EVEN);
    }
}
