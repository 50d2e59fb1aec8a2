package coldwright.desk.batch.search;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.Recipe;
import coldwright.science.balance.BatchFix;
import coldwright.science.diagnosis.CauseKind;
import coldwright.science.diagnosis.Finding;
import coldwright.science.diagnosis.Symptom;

import java.util.ArrayList;
import java.util.List;

/**
 * A finding with its fixes.
 *
 * @param finding what to expect
 * @param offers changes to the batch, the smallest first; may be empty
 */
public record FindingWithFixes(Finding finding, List<ProposedChange> offers) {
    /** The page stays short; goals and tasting offer more. */
    private static final int MOST_OFFERS = 1;

    public FindingWithFixes {
        offers = List.copyOf(offers);
    }

    /**
     * Searches for fixes for each finding of a batch. Takes up to a second.
     *
     * @return one for each finding, in the same order
     */
    public static List<FindingWithFixes> of(Recipe recipe, BatchAnalysis all) {
        return all.report().findings().stream().map(one -> of(one, recipe, all)).toList();
    }

    private static FindingWithFixes of(Finding finding, Recipe recipe, BatchAnalysis all) {
        List<ProposedChange> offers = new ArrayList<>();
        boolean ice = finding.symptom() == Symptom.ICY;
        if (finding.cause().kind() == CauseKind.STORAGE) {
            offers.add(SmootherSearch.steady(recipe));
        } else if (ice) {
            offers.addAll(SmootherSearch.offers(recipe, all));
        }
        for (BatchFix batchFix : finding.fixes()) {
            if (!batchFix.changes().isEmpty() && offers.size() < MOST_OFFERS) {
                ProposedChange proposedChange = BatchGoal.offer(recipe, batchFix);
                offers.add(ice ? SmootherSearch.sized(proposedChange) : proposedChange);
            }
        }
        return new FindingWithFixes(
                finding, offers.subList(0, Math.min(MOST_OFFERS, offers.size())));
    }
}
