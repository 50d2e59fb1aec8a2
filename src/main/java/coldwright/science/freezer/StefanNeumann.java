package coldwright.science.freezer;

import coldwright.science.Require;
import coldwright.science.thermal.Phase;

import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.special.Erf;

/**
 * The exact solution for liquid at its freezing point that freezes from a wall of constant
 * temperature.
 *
 * <p>Equation: front x = 2λ·√(α·t), with λ·exp(λ²)·erf(λ) = St/√π, St = c·ΔT/L, α = k/(ρ·c) of the
 * solid.
 *
 * <p>Source: J. Stefan 1891 and F. Neumann (lectures about 1860), as in H. S. Carslaw and J. C.
 * Jaeger, Conduction of Heat in Solids, 2nd ed. 1959, chapter 11; the equation is from memory.
 * Exact for constant properties and equal densities: the reference for {@link LayeredBody}.
 */
public final class StefanNeumann {
    private static final double LARGEST_LAMBDA = 3;
    private static final double ACCURACY = 1e-15;
    private static final int MOST_EVALUATIONS = 100;

    private final Phase solid;
    private final double densityKgPerM3;
    private final double stefan;
    private final double lambda;

    /**
     * A liquid at its freezing point before a cold wall.
     *
     * @param solid the solid that forms
     * @param densityKgPerM3 its density, kg/m³
     * @param drive wall and latent heat
     */
    public StefanNeumann(Phase solid, double densityKgPerM3, Drive drive) {
        this.solid = solid;
        this.densityKgPerM3 = Require.positive("densityKgPerM3", densityKgPerM3, "kg/m³");
        stefan = solid.heatCapacityJPerGK() * drive.wallBelowMeltingK() / drive.latentJPerG();
        lambda =
                new BrentSolver(ACCURACY, ACCURACY)
                        .solve(
                                MOST_EVALUATIONS,
                                x -> stefanNumberAt(x) - stefan,
                                0,
                                LARGEST_LAMBDA);
    }

    private static double stefanNumberAt(double lambda) {
        return lambda * Math.exp(lambda * lambda) * Erf.erf(lambda) * Math.sqrt(Math.PI);
    }

    /**
     * The driving force of the freezing.
     *
     * @param wallBelowMeltingK how much colder the wall is than the freezing point, K
     * @param latentJPerG latent heat, J/g
     */
    public record Drive(double wallBelowMeltingK, double latentJPerG) {
        public Drive {
            Require.positive("wallBelowMeltingK", wallBelowMeltingK, "K");
            Require.positive("latentJPerG", latentJPerG, "J/g");
        }
    }

    /** {@return sensible against latent heat, St, without unit} */
    public double stefanNumber() {
        return stefan;
    }

    /** {@return the root λ, without unit} */
    public double lambda() {
        return lambda;
    }

    /**
     * {@return thickness of the ice, mm}
     *
     * @param seconds time, s
     */
    public double frontMm(double seconds) {
        double diffusivity =
                solid.conductivityWPerMK() / (densityKgPerM3 * 1000 * solid.heatCapacityJPerGK());
        return 2000
                * lambda
                * Math.sqrt(diffusivity * Require.notNegative("seconds", seconds, "s"));
    }
}
