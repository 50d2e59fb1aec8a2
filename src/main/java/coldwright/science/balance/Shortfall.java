package coldwright.science.balance;

import coldwright.science.Rounded;
import coldwright.words.Phrase;

/**
 * A target that can't be met.
 *
 * @param target the target
 * @param reached value of the nearest mix, in the trait's unit
 */
public record Shortfall(Target target, double reached) {
    /** {@return the difference from the target: value reached minus target, in the trait's unit} */
    public double missedBy() {
        return reached - target.value();
    }

    /** {@return the shortfall in any language, with the value reached and the target} */
    public Phrase phrase() {
        return Phrase.of(
                "science.balance",
                missedBy() < 0 ? "short" : "over",
                target.trait().name(),
                Rounded.hundredth(reached),
                target.trait().unitName(),
                target.value(),
                Rounded.hundredth(Math.abs(missedBy())));
    }

    @Override
    public String toString() {
        return phrase().english();
    }
}
