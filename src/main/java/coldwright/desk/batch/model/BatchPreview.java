package coldwright.desk.batch.model;

import coldwright.batch.BatchFileException;
import coldwright.batch.Recipe;
import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Mix;
import coldwright.science.sensory.Sweetness;

/**
 * What can be said of a batch in a millisecond: everything but the minutes and the crystals.
 *
 * @param batch the recipe
 * @param mix what is in it
 * @param curve its freezing curve
 * @param sweetness how sweet
 */
public record BatchPreview(Recipe batch, Mix mix, FreezingCurve curve, Sweetness sweetness) {
    /** Colder starts are not reckoned; the whole reckoning says so. */
    private static final double COLDEST_START_C = -40;

    /**
     * Takes a glance.
     *
     * @param batch the recipe
     * @return the glance
     * @throws BatchFileException if it has no water or freezes nowhere; the whole reckoning says
     *     why
     */
    public static BatchPreview of(Recipe batch) throws BatchFileException {
        Mix mix = batch.mix();
        try {
            if (!(mix.waterPercent() > 0) || mix.initialFreezingPointC() < COLDEST_START_C) {
                coldwright.batch.BatchAnalysis.of(batch);
            }
            return new BatchPreview(batch, mix, mix.freezingCurve(), Sweetness.of(mix));
        } catch (IllegalArgumentException e) {
            throw new BatchFileException(e.getMessage());
        }
    }
}
