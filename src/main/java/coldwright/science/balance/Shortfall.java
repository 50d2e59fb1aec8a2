package coldwright.science.balance;

import coldwright.science.Require;

/**
 * A target that could not be met.
 *
 * @param target what was asked
 * @param reached what the nearest mix has, in the trait's unit
 */
public record Shortfall(Target target, double reached) {
    /**
     * How far off it is.
     *
     * @return reached less asked, in the trait's unit
     */
    public double missedBy() {
        return reached - target.value();
    }

    @Override
    public String toString() {
        return "%s reaches %s %s where %s was asked: %s by %s"
                .formatted(
                        target.trait().words(),
                        Require.format(rounded(reached)),
                        target.trait().unit(),
                        Require.format(target.value()),
                        missedBy() < 0 ? "short" : "over",
                        Require.format(rounded(Math.abs(missedBy()))));
    }

    private static double rounded(double value) {
        return Math.round(value * 100) / 100.0;
    }
}
