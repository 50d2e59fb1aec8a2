package coldwright.science.balance;

import coldwright.words.Phrase;

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

    /**
     * It in any language.
     *
     * @return what was reached and asked
     */
    public Phrase phrase() {
        return Phrase.of(
                "science.balance",
                missedBy() < 0 ? "short" : "over",
                target.trait().name(),
                rounded(reached),
                target.trait().unitName(),
                target.value(),
                rounded(Math.abs(missedBy())));
    }

    @Override
    public String toString() {
        return phrase().english();
    }

    private static double rounded(double value) {
        return Math.round(value * 100) / 100.0;
    }
}
