package coldwright.science.crystal;

import coldwright.science.Require;

/**
 * The size distribution that any crystal population approaches as it coarsens with crystals far
 * apart: the theory of Lifshitz, Slyozov and Wagner.
 *
 * <p>Equation: with z = R/⟨R⟩, f(z) = 4/9 z² (3/(3+z))^(7/3) (1.5/(1.5−z))^(11/3) e^(−z/(1.5−z))
 * for z below 1.5 and 0 above; ⟨R⟩³ grows by 4A/9 a second where each crystal grows by dR/dt =
 * (A/R)(1/⟨R⟩ − 1/R).
 *
 * <p>Source: I. M. Lifshitz and V. V. Slyozov, J. Phys. Chem. Solids 19 (1961) 35; C. Wagner, Z.
 * Elektrochem. 65 (1961) 581 (from memory; checked by its moments, mean 1, ⟨z²⟩ 1.0463, ⟨z³⟩
 * 1.1296). Range: little ice in much liquid. Where ice is crowded the crystals coarsen faster and
 * the shape is broader.
 */
public final class Lsw {
    /** No crystal is larger than this many times the mean radius. */
    public static final double LARGEST = 1.5;

    /** Growth of ⟨R⟩³ in units of the growth constant A. */
    public static final double RATE_SHARE = 4.0 / 9;

    private Lsw() {}

    /**
     * {@return the stationary distribution: share of the crystals per unit of the ratio}
     *
     * @param timesMean radius over mean radius, zero or more
     */
    public static double share(double timesMean) {
        Require.notNegative("timesMean", timesMean, "");
        if (timesMean >= LARGEST) {
            return 0;
        }
        return 4.0
                / 9
                * timesMean
                * timesMean
                * Math.pow(3 / (3 + timesMean), 7.0 / 3)
                * Math.pow(LARGEST / (LARGEST - timesMean), 11.0 / 3)
                * Math.exp(-timesMean / (LARGEST - timesMean));
    }
}
