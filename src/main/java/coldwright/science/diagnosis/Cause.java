package coldwright.science.diagnosis;

import coldwright.science.balance.BatchFix;

import java.util.List;

/**
 * One cause of a symptom.
 *
 * @param what the cause in a few words
 * @param why the computed value against the usual one, and which ingredients bring it
 * @param steps how far beyond the usual it lies, in steps; the greater, the likelier
 * @param sharePercent its part of all steps found for this symptom, %
 * @param advice what to do, in words; holds the first mend's figures if there is one
 * @param fixes changes to the batch with their new figures, the smallest first; may be empty
 */
public record Cause(
        String what,
        String why,
        double steps,
        double sharePercent,
        String advice,
        List<BatchFix> fixes) {
    /** Copies what is given. */
    public Cause {
        fixes = List.copyOf(fixes);
    }

    /**
     * Whether it lies in how the batch was kept, not in what it is made of or how it was frozen.
     *
     * @return true for swings and warming
     */
    public boolean isStorage() {
        return what.equals(SuspectTable.KEPT_BADLY);
    }

    Cause shareOf(double allSteps) {
        return new Cause(what, why, steps, 100 * steps / allSteps, advice, fixes);
    }
}
