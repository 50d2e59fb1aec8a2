package coldwright.desk.batch.search;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.Recipe;
import coldwright.desk.messages.Messages;
import coldwright.science.balance.BatchFix;
import coldwright.science.diagnosis.Cause;
import coldwright.science.diagnosis.CauseKind;
import coldwright.science.diagnosis.Diagnosis;
import coldwright.science.diagnosis.Symptom;

import java.util.ArrayList;
import java.util.List;

/**
 * Possible causes of a fault found in tasting.
 *
 * @param symptom the fault
 * @param suspects the causes, the likeliest first; empty if all figures are as usual
 */
public record TastingDiagnosis(Symptom symptom, List<SuspectedCause> suspects) {
    private static final int MOST_OFFERS = 2;

    public TastingDiagnosis {
        suspects = List.copyOf(suspects);
    }

    /**
     * One cause with its fixes.
     *
     * @param cause the cause, its computed share and its reason
     * @param offers changes to the batch that fix it, the smallest first; may be empty
     */
    public record SuspectedCause(Cause cause, List<ProposedChange> offers) {
        public SuspectedCause {
            offers = List.copyOf(offers);
        }
    }

    /** Searches for the causes, under the same conditions as the batch's findings. */
    public static TastingDiagnosis of(Symptom symptom, Recipe recipe, BatchAnalysis all) {
        List<SuspectedCause> suspects = new ArrayList<>();
        for (Cause cause : Diagnosis.of(all.situation(), symptom)) {
            List<ProposedChange> offers = new ArrayList<>();
            if (cause.kind() == CauseKind.STORAGE) {
                offers.add(SmootherSearch.steady(recipe));
            }
            for (BatchFix batchFix : cause.fixes()) {
                if (!batchFix.changes().isEmpty() && offers.size() < MOST_OFFERS) {
                    offers.add(BatchGoal.offer(recipe, batchFix));
                }
            }
            suspects.add(new SuspectedCause(cause, offers));
        }
        return new TastingDiagnosis(symptom, suspects);
    }

    /** A symptom in a cook's words, such as {@code icy}. */
    public static String words(Symptom symptom) {
        return Messages.of("batch.symptom." + symptom.words().replace(' ', '-'));
    }
}
