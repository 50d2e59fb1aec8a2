package coldwright.desk.brew.model;

import coldwright.batch.Reckoning;
import coldwright.desk.say.Say;
import coldwright.science.balance.Mend;
import coldwright.science.diagnosis.Cause;
import coldwright.science.diagnosis.Diagnosis;
import coldwright.science.diagnosis.Symptom;

import java.util.ArrayList;
import java.util.List;

/**
 * What may be behind a fault that was tasted.
 *
 * @param symptom what is wrong
 * @param suspects the causes, the likeliest first; empty if all figures are as usual
 */
public record Tasting(Symptom symptom, List<Suspected> suspects) {
    private static final int MOST_OFFERS = 2;

    public Tasting {
        suspects = List.copyOf(suspects);
    }

    /**
     * One cause with its mends.
     *
     * @param cause the cause, its computed share and its reason
     * @param offers changes to the batch that mend it, the smallest first; may be empty
     */
    public record Suspected(Cause cause, List<Offer> offers) {
        public Suspected {
            offers = List.copyOf(offers);
        }
    }

    /**
     * Looks for the causes, in the same situation that the batch's findings are foreseen for.
     *
     * @param symptom what is wrong
     * @param recipe the recipe
     * @param all its reckoning
     * @return the causes
     */
    public static Tasting of(Symptom symptom, Recipe recipe, Reckoning all) {
        List<Suspected> suspects = new ArrayList<>();
        for (Cause cause : Diagnosis.of(all.situation(), symptom)) {
            List<Offer> offers = new ArrayList<>();
            if (cause.ofKeeping()) {
                offers.add(Smoother.steady(recipe));
            }
            for (Mend mend : cause.mends()) {
                if (!mend.changes().isEmpty() && offers.size() < MOST_OFFERS) {
                    offers.add(Wishes.offer(recipe, mend));
                }
            }
            suspects.add(new Suspected(cause, offers));
        }
        return new Tasting(symptom, suspects);
    }

    /**
     * A symptom in the reader's words.
     *
     * @param symptom what is wrong
     * @return such as {@code icy}
     */
    public static String words(Symptom symptom) {
        return Say.of("batch.symptom." + symptom.words().replace(' ', '-'));
    }
}
