package coldwright.terminal.check;

import coldwright.bench.RunOutcome;
import coldwright.lesson.CheckExpectation;
import coldwright.lesson.VerifiedNumber;
import coldwright.play.ClaimVerdict;
import coldwright.science.Require;
import coldwright.terminal.console.RunFailureText;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The result of a claim in a sentence: the claim, expected and actual value. */
public final class ClaimSentence {
    private static final int MOST_DECIMALS = 12;

    private ClaimSentence() {}

    public static String of(ClaimVerdict verdict) {
        if (verdict.claim() instanceof VerifiedNumber number) {
            return verdict.outcome().finished()
                    ? "the text says %s, the calculator gives %s"
                            .formatted(number.written(), got(verdict, number))
                    : "the text says %s, but `%s` gives nothing: %s"
                            .formatted(number.written(), number.expression(), unfit(verdict));
        }
        return "%s, expected %s, got %s"
                .formatted(verdict.claim().expression(), wanted(verdict), got(verdict));
    }

    private static String wanted(ClaimVerdict verdict) {
        return verdict.claim() instanceof CheckExpectation.Value value
                ? "%s within %s"
                        .formatted(Require.format(value.value()), Require.format(value.tolerance()))
                : "true";
    }

    private static String got(ClaimVerdict verdict) {
        if (verdict.state() == ClaimVerdict.State.FAILED) {
            return unfit(verdict);
        }
        return verdict.claim() instanceof CheckExpectation.Value
                ? Require.format(verdict.number().getAsDouble())
                : ((RunOutcome.Finished) verdict.outcome()).exact();
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
                ? "nothing"
                : "%s, of type %s".formatted(finished.value(), finished.type());
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
