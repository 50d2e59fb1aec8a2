package coldwright.desk.batch.model;

import coldwright.batch.BatchFileException;
import coldwright.batch.Recipe;
import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Mix;
import coldwright.science.sensory.Sweetness;

/**
 * The figures of a batch that take a millisecond: all but the minutes and the crystals.
 *
 * @param batch the recipe
 * @param mix its composition
 * @param curve its freezing curve
 * @param sweetness its sweetness
 */
public record BatchPreview(Recipe batch, Mix mix, FreezingCurve curve, Sweetness sweetness) {
    /** Colder starts aren't calculated here; the full analysis gives the reason. */
    private static final double COLDEST_START_C = -40;

    /**
     * Calculates a preview.
     *
     * @throws BatchFileException if it has no water or never freezes; the full analysis gives the
     *     reason
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
