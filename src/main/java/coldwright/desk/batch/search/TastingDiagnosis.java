package coldwright.desk.batch.search;

import coldwright.batch.BatchAnalysis;
import coldwright.desk.messages.Messages;
import coldwright.science.diagnosis.Diagnosis;
import coldwright.science.diagnosis.Symptom;
import coldwright.science.plan.Finding;
import coldwright.science.plan.Planner;

import java.util.List;

/**
 * Possible causes of a fault found in tasting, and plans against it.
 *
 * @param symptom the fault
 * @param suspects the causes, the likeliest first; empty if all figures are as usual
 * @param offers plans that move the likeliest cause, and leave no other fault
 */
public record TastingDiagnosis(
        Symptom symptom, List<Finding> suspects, List<ProposedChange> offers) {
    public TastingDiagnosis {
        suspects = List.copyOf(suspects);
        offers = List.copyOf(offers);
    }

    /**
     * Searches for the causes, under the same conditions as the batch's findings. What was tasted
     * counts more than what is usual: the likeliest cause is moved even inside its range.
     *
     * @param symptom the fault
     * @param all the batch's analysis
     */
    public static TastingDiagnosis of(Symptom symptom, BatchAnalysis all) {
        return new TastingDiagnosis(
                symptom,
                Diagnosis.of(all.state(), symptom),
                ProposedChange.of(
                        all.batch(),
                        Planner.plans(Diagnosis.eased(all.state(), symptom), all.kitchen())));
    }

    /** A symptom in a cook's words, such as {@code icy}. */
    public static String words(Symptom symptom) {
        return Messages.of("batch.symptom." + symptom.words().replace(' ', '-'));
    }
}
