package coldwright.science.diagnosis;

import coldwright.science.balance.BatchFix;
import coldwright.words.Phrase;

import java.util.List;

/**
 * A symptom to expect of a batch, with its causes.
 *
 * @param symptom the symptom
 * @param expected the causes, and what to expect
 * @param cause the likeliest of the causes
 */
public record Finding(Symptom symptom, Phrase expected, Cause cause) {
    /** The causes, and what to expect. */
    public String what() {
        return expected.english();
    }

    /** {@return the cause: its value against the usual one, and which ingredients bring it} */
    public String why() {
        return cause.why();
    }

    /** {@return the fix in words, with the new figure where changing an amount fixes it} */
    public String mend() {
        return cause.advice();
    }

    /** {@return changes to the batch that fix its cause, the smallest first; may be empty} */
    public List<BatchFix> fixes() {
        return cause.fixes();
    }

    @Override
    public String toString() {
        return "%s (%s); %s".formatted(what(), why(), mend());
    }
}
