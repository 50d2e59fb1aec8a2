package coldwright.desk.brew.model;

import coldwright.batch.Reckoning;
import coldwright.science.balance.Mend;
import coldwright.science.diagnosis.Finding;
import coldwright.science.diagnosis.Symptom;

import java.util.ArrayList;
import java.util.List;

/**
 * A finding with what can be taken against it.
 *
 * @param finding what to expect
 * @param offers changes to the batch, the smallest first; may be empty
 */
public record Foreseen(Finding finding, List<Offer> offers) {
    /** The page stays short; wishes and tasting offer more. */
    private static final int MOST_OFFERS = 1;

    public Foreseen {
        offers = List.copyOf(offers);
    }

    /**
     * What can be taken against each finding of a batch. Takes up to a second.
     *
     * @param recipe the recipe
     * @param all its reckoning
     * @return one for each finding, in its order
     */
    public static List<Foreseen> of(Recipe recipe, Reckoning all) {
        return all.findings().stream().map(one -> of(one, recipe, all)).toList();
    }

    private static Foreseen of(Finding finding, Recipe recipe, Reckoning all) {
        List<Offer> offers = new ArrayList<>();
        boolean ice = finding.symptom() == Symptom.ICY;
        if (finding.cause().ofKeeping()) {
            offers.add(Smoother.steady(recipe));
        } else if (ice) {
            offers.addAll(Smoother.offers(recipe, all));
        }
        for (Mend mend : finding.mends()) {
            if (!mend.changes().isEmpty() && offers.size() < MOST_OFFERS) {
                Offer offer = Wishes.offer(recipe, mend);
                offers.add(ice ? Smoother.sized(offer) : offer);
            }
        }
        return new Foreseen(finding, offers.subList(0, Math.min(MOST_OFFERS, offers.size())));
    }
}
