package coldwright.science.balance;

import coldwright.science.Rounded;
import coldwright.science.mix.Mix;
import coldwright.words.Phrase;

import java.util.List;

/**
 * A change to a batch that grants a wish.
 *
 * @param wish the wish
 * @param changes amounts to add and take out; empty if the batch meets the wish already
 * @param before the batch as it was
 * @param after the batch with the changes
 */
public record BatchFix(Wish wish, List<AmountChange> changes, Mix before, Mix after) {
    public BatchFix {
        changes = List.copyOf(changes);
    }

    /** {@return grams added and taken out together} */
    public double movedG() {
        return changes.stream().mapToDouble(amountChange -> Math.abs(amountChange.massG())).sum();
    }

    /** {@return the trait before the change, in the trait's unit} */
    public double valueBefore() {
        return wish.trait().of(before);
    }

    /** {@return the trait after the change, in the trait's unit} */
    public double valueAfter() {
        return wish.trait().of(after);
    }

    /** {@return the change in any language, with the trait before and after} */
    public Phrase phrase() {
        return changes.isEmpty()
                ? Phrase.of("science.balance", "no-change", wish.phrase())
                : Phrase.of(
                        "science.balance",
                        "fix",
                        changes.stream().map(AmountChange::phrase).toList(),
                        wish.trait().name(),
                        Rounded.tenth(valueBefore()),
                        Rounded.tenth(valueAfter()),
                        wish.trait().unitName());
    }

    @Override
    public String toString() {
        return phrase().english();
    }
}
