package coldwright.science.diagnosis;

import coldwright.science.balance.Mend;

import java.util.List;

/**
 * Something to expect of a batch.
 *
 * @param symptom what somebody would taste
 * @param what the causes, and what to expect
 * @param why the computed cause
 * @param mend what to change, with the new figure where an amount mends it
 * @param mends changes to the batch that mend its first cause, the smallest first; may be empty
 */
public record Finding(Symptom symptom, String what, String why, String mend, List<Mend> mends) {
    public Finding {
        mends = List.copyOf(mends);
    }

    @Override
    public String toString() {
        return "%s (%s); %s".formatted(what, why, mend);
    }
}
