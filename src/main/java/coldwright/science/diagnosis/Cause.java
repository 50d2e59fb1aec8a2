package coldwright.science.diagnosis;

import coldwright.science.balance.BatchFix;
import coldwright.words.Phrase;

import java.util.List;

/**
 * One cause of a symptom.
 *
 * @param kind which cause
 * @param reason the computed value against the usual one, and which ingredients bring it
 * @param steps how far it is beyond the usual, in steps; the greater, the likelier
 * @param sharePercent its part of all steps found for this symptom, %
 * @param remedy what to do; includes the figures of the first fix if there is one
 * @param fixes changes to the batch with their new figures, the smallest first; may be empty
 */
public record Cause(
        CauseKind kind,
        Phrase reason,
        double steps,
        double sharePercent,
        Phrase remedy,
        List<BatchFix> fixes) {
    public Cause {
        fixes = List.copyOf(fixes);
    }

    /** The cause in a few words. */
    public String what() {
        return kind.phrase().english();
    }

    /** The computed value against the usual one, and which ingredients bring it. */
    public String why() {
        return reason.english();
    }

    /** The remedy. */
    public String advice() {
        return remedy.english();
    }

    Cause shareOf(double allSteps) {
        return new Cause(kind, reason, steps, 100 * steps / allSteps, remedy, fixes);
    }
}
