package coldwright.science.emulsion;

import coldwright.science.Require;

import org.hipparchus.special.Erf;

/**
 * Sizes of fat globules, log-normal.
 *
 * <p>Equations (Hatch and Choate 1929, from memory): with s the spread (standard deviation of ln d)
 * and the number median m, the Sauter diameter d32 = m e^(2.5 s²), the number mean = m e^(s²/2),
 * the volume median = m e^(3 s²).
 *
 * <p>Left out: the many globules under 1 µm of raw milk, which contain hardly any fat; a log-normal
 * of the fat misses their number.
 *
 * @param sauterDiameterUm Sauter (volume to surface) diameter, µm, 0.05 to 100
 * @param logSpread standard deviation of the natural log of the diameter, 0.05 to 1.2
 */
public record GlobuleSizes(double sauterDiameterUm, double logSpread) {
    private static final double RAW_SAUTER_UM = 3.4;
    private static final double RAW_SPREAD = 0.5;
    private static final double HOMOGENISED_SAUTER_UM = 0.8;
    private static final double HOMOGENISED_SPREAD = 0.35;

    public GlobuleSizes {
        Require.within("sauterDiameterUm", sauterDiameterUm, new Require.Range(0.05, 100, "µm"));
        Require.within("logSpread", logSpread, new Require.Range(0.05, 1.2, ""));
    }

    /**
     * Raw milk: mean 3 to 4 µm, 0.1 to 15 µm (P. F. Fox and P. L. H. McSweeney, Dairy Chemistry and
     * Biochemistry, seen); the spread is set so that 99 % of the fat is below 13 µm.
     */
    public static GlobuleSizes rawMilk() {
        return new GlobuleSizes(RAW_SAUTER_UM, RAW_SPREAD);
    }

    /** Homogenised: 0.3 to 2 µm (Fox and McSweeney, seen), Sauter 0.8 µm. */
    public static GlobuleSizes homogenised() {
        return new GlobuleSizes(HOMOGENISED_SAUTER_UM, HOMOGENISED_SPREAD);
    }

    /** {@return median diameter by number: half of the globules are smaller, µm} */
    public double numberMedianUm() {
        return sauterDiameterUm * Math.exp(-2.5 * logSpread * logSpread);
    }

    /** {@return mean of all globules, µm} */
    public double numberMeanUm() {
        return numberMedianUm() * Math.exp(0.5 * logSpread * logSpread);
    }

    /** {@return median diameter by volume: half of the fat is in smaller globules, µm} */
    public double volumeMedianUm() {
        return sauterDiameterUm * Math.exp(0.5 * logSpread * logSpread);
    }

    /**
     * {@return fat in globules below a size, % of the fat}
     *
     * @param diameterUm diameter, µm, more than zero
     */
    public double fatPercentBelow(double diameterUm) {
        Require.positive("diameterUm", diameterUm, "µm");
        return 50
                * (1 + Erf.erf(Math.log(diameterUm / volumeMedianUm()) / logSpread / Math.sqrt(2)));
    }
}
