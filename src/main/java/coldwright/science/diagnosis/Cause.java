package coldwright.science.diagnosis;

import coldwright.science.plan.BatchFault;
import coldwright.words.Phrase;

/**
 * One cause of a symptom.
 *
 * @param kind which cause
 * @param reason the computed value against the usual one, and which ingredients bring it
 * @param steps how far it is beyond the usual, in steps; the greater, the likelier
 * @param sharePercent its part of all steps found for this symptom, %
 * @param remedy what to do by hand; a plan gives the amounts
 */
public record Cause(
        BatchFault kind, Phrase reason, double steps, double sharePercent, Phrase remedy) {
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
}
