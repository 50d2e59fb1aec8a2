package coldwright.terminal.check;

import coldwright.bench.RunOutcome;
import coldwright.lesson.VerifiedNumber;
import coldwright.science.Require;
import coldwright.terminal.console.RunFailureText;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/** What came of a number in the text. */
final class VerifiedNumberVerdict {
    private static final int MOST_DECIMALS = 12;

    private VerifiedNumberVerdict() {}

    static ClaimVerdict of(VerifiedNumber verifiedNumber, RunOutcome outcome) {
        if (!(outcome instanceof RunOutcome.Finished finished)) {
            return new ClaimVerdict(
                    false,
                    "the text says %s, but `%s` gives nothing: %s"
                            .formatted(
                                    verifiedNumber.written(),
                                    verifiedNumber.expression(),
                                    RunFailureText.troubles(outcome).get(0).words()));
        }
        OptionalDouble number = ClaimVerdict.number(finished);
        return new ClaimVerdict(
                number.isPresent() && verifiedNumber.passes(number.getAsDouble()),
                "the text says %s, the calculator gives %s"
                        .formatted(
                                verifiedNumber.written(),
                                number.isPresent()
                                        ? rounded(number.getAsDouble(), verifiedNumber)
                                        : ClaimVerdict.unfit(finished)));
    }

    /** One digit more than the text has, or as many as show that it does not hold. */
    private static String rounded(double given, VerifiedNumber verifiedNumber) {
        if (!Double.isFinite(given)) {
            return Require.format(given);
        }
        int decimals = 0;
        while (decimals < MOST_DECIMALS
                && verifiedNumber.tolerance() * Math.pow(10, decimals) < 5) {
            decimals++;
        }
        BigDecimal shown = shown(given, decimals);
        while (decimals < MOST_DECIMALS
                && verifiedNumber.passes(shown.doubleValue())
                && !verifiedNumber.passes(given)) {
            decimals++;
            shown = shown(given, decimals);
        }
        return shown.toPlainString().replace('-', '−');
    }

    private static BigDecimal shown(double given, int decimals) {
        return BigDecimal.valueOf(given).setScale(decimals, RoundingMode.HALF_EVEN);
    }
}
