package coldwright.terminal;

import coldwright.bench.Outcome;
import coldwright.lesson.Held;
import coldwright.science.Require;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/** What came of a number in the text. */
final class HeldVerdict {
    private static final int MOST_DECIMALS = 12;

    private HeldVerdict() {}

    static Verdict of(Held held, Outcome outcome) {
        if (!(outcome instanceof Outcome.Finished finished)) {
            return new Verdict(
                    false,
                    "the text says %s, but `%s` gives nothing: %s"
                            .formatted(
                                    held.written(),
                                    held.expression(),
                                    Ending.troubles(outcome).get(0).words()));
        }
        OptionalDouble number = Verdict.number(finished);
        return new Verdict(
                number.isPresent() && held.holds(number.getAsDouble()),
                "the text says %s, the calculator gives %s"
                        .formatted(
                                held.written(),
                                number.isPresent()
                                        ? rounded(number.getAsDouble(), held)
                                        : Verdict.unfit(finished)));
    }

    /** One digit more than the text has, or as many as show that it does not hold. */
    private static String rounded(double given, Held held) {
        if (!Double.isFinite(given)) {
            return Require.spoken(given);
        }
        int decimals = 0;
        while (decimals < MOST_DECIMALS && held.tolerance() * Math.pow(10, decimals) < 5) {
            decimals++;
        }
        BigDecimal shown = shown(given, decimals);
        while (decimals < MOST_DECIMALS && held.holds(shown.doubleValue()) && !held.holds(given)) {
            decimals++;
            shown = shown(given, decimals);
        }
        return shown.toPlainString().replace('-', '−');
    }

    private static BigDecimal shown(double given, int decimals) {
        return BigDecimal.valueOf(given).setScale(decimals, RoundingMode.HALF_EVEN);
    }
}
