package coldwright.science.freezer;

import coldwright.science.Require;

import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * A slab that cools without freezing: the exact series.
 *
 * <p>Equation: at the middle (T − T_out)/(T₀ − T_out) = Σ 4·sin β/(2β + sin 2β)·exp(−β²·Fo), over
 * the roots of β·tan β = Bi; Bi = h·L/k and Fo = α·t/L² with L the half thickness.
 *
 * <p>Source: any text on conduction, such as Carslaw and Jaeger 1959 (from memory). Exact for
 * constant properties; here 60 terms, good for Fo of 0.005 and more.
 */
public final class SlabSeries {
    private static final int TERMS = 60;
    private static final double ACCURACY = 1e-15;
    private static final int MOST_EVALUATIONS = 100;

    private SlabSeries() {}

    /**
     * {@return the fraction of the temperature difference left in the middle, 1 at the start,
     * falling to 0}
     *
     * @param biot h·L/k, more than zero
     * @param fourier α·t/L², 0.005 or more
     */
    public static double middleLeft(double biot, double fourier) {
        Require.positive("biot", biot, "");
        Require.within("fourier", fourier, new Require.Range(0.005, 1e6, ""));
        double sum = 0;
        for (int n = 0; n < TERMS; n++) {
            double beta = root(biot, n);
            double share = 4 * Math.sin(beta) / (2 * beta + Math.sin(2 * beta));
            sum += share * Math.exp(-beta * beta * fourier);
        }
        return sum;
    }

    /** The nth root of β·tan β = Bi, n from 0. */
    static double root(double biot, int n) {
        double low = n * Math.PI;
        double high = low + Math.PI / 2;
        return new BrentSolver(ACCURACY, ACCURACY)
                .solve(
                        MOST_EVALUATIONS,
                        beta -> beta * Math.sin(beta) - biot * Math.cos(beta),
                        low,
                        high);
    }
}
