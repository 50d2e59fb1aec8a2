package coldwright.science.diagnosis;

import coldwright.words.Phrase;

/**
 * A symptom to expect of a batch, with its cause.
 *
 * @param symptom the symptom
 * @param expected the cause, and what to expect
 * @param cause the cause
 */
public record Finding(Symptom symptom, Phrase expected, Cause cause) {
    /** The cause, and what to expect. */
    public String what() {
        return expected.english();
    }

    /** {@return the cause: its value against the usual one, and which ingredients bring it} */
    public String why() {
        return cause.why();
    }

    /** {@return what to do by hand} */
    public String mend() {
        return cause.advice();
    }

    @Override
    public String toString() {
        return "%s (%s); %s".formatted(what(), why(), mend());
    }
}
