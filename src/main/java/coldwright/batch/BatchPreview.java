package coldwright.batch;

import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Mix;

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
     * @throws IllegalArgumentException if it has no water or nothing here freezes it
     */
    public static BatchPreview of(Recipe batch) {
        Mix mix = batch.mix();
        if (!(mix.waterPercent() > 0)) {
            throw Fault.in("no-water");
        }
        FreezingCurve curve = mix.freezingCurve();
        double startC = curve.initialFreezingPointC();
        if (startC < COLDEST_START_C) {
            throw Fault.in("too-cold", Math.rint(startC), COLDEST_START_C);
        }
        return new BatchPreview(
                batch, mix, curve, new BatchReport(ReportFacts.quick(batch, mix, curve)));
    }

    /** Temperature at which it is served: the recipe's, else its style's, °C. */
    public double servingC() {
        return report.fact("serving_c").number();
    }
}
