package coldwright.science.balance;

import coldwright.science.Require;
import coldwright.science.mix.Mix;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A change to a batch that grants a wish.
 *
 * @param wish what was wished
 * @param changes what to add and take out; empty if the batch has it already
 * @param before the batch as it was
 * @param after the batch with the changes
 */
public record BatchFix(Wish wish, List<AmountChange> changes, Mix before, Mix after) {
    /** Copies what is given. */
    public BatchFix {
        changes = List.copyOf(changes);
    }

    /**
     * How much is moved in all.
     *
     * @return grams added and taken out together
     */
    public double movedG() {
        return changes.stream().mapToDouble(amountChange -> Math.abs(amountChange.massG())).sum();
    }

    /**
     * The trait as it was.
     *
     * @return in the trait's unit
     */
    public double valueBefore() {
        return wish.trait().of(before);
    }

    /**
     * The trait with the changes.
     *
     * @return in the trait's unit
     */
    public double valueAfter() {
        return wish.trait().of(after);
    }

    @Override
    public String toString() {
        if (changes.isEmpty()) {
            return "nothing to change: it is " + wish.words() + " as it is";
        }
        return "%s: %s from %s to %s %s"
                .formatted(
                        changes.stream()
                                .map(AmountChange::toString)
                                .collect(Collectors.joining(", ")),
                        wish.trait().words(),
                        Require.format(Math.round(valueBefore() * 10) / 10.0),
                        Require.format(Math.round(valueAfter() * 10) / 10.0),
                        wish.trait().unit());
    }
}
