package coldwright.batch;

import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Mix;
import coldwright.science.sensory.Sweetness;

/**
 * The figures of a batch that take a millisecond: all but the minutes and the crystals.
 *
 * @param batch the recipe
 * @param mix its composition
 * @param curve its freezing curve
 * @param report composition, freezing and taste
 */
public record BatchPreview(Recipe batch, Mix mix, FreezingCurve curve, BatchReport report) {
    /** Thermal properties are tabulated down to −45 °C. */
    private static final double COLDEST_START_C = -40;

    /**
     * Calculates a preview.
     *
     * @throws BatchFileException if it has no water or nothing here freezes it
     */
    public static BatchPreview of(Recipe batch) throws BatchFileException {
        Mix mix = batch.mix();
        if (!(mix.waterPercent() > 0)) {
            throw new BatchFileException(Fault.of("no-water"));
        }
        try {
            FreezingCurve curve = mix.freezingCurve();
            if (curve.initialFreezingPointC() < COLDEST_START_C) {
                throw new BatchFileException(
                        Fault.of(
                                "too-cold",
                                Math.rint(curve.initialFreezingPointC()),
                                COLDEST_START_C));
            }
            return new BatchPreview(
                    batch,
                    mix,
                    curve,
                    new BatchReport(ReportFacts.quick(batch, mix, curve, Sweetness.of(mix))));
        } catch (IllegalArgumentException e) {
            throw new BatchFileException(e.getMessage());
        }
    }

    /** Temperature at which it is served: the recipe's, else its style's, °C. */
    public double servingC() {
        return report.fact("serving_c").number();
    }
}
