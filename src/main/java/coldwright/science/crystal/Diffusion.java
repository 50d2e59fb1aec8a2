package coldwright.science.crystal;

import coldwright.science.Require;
import coldwright.science.Temperature;

/**
 * Diffusion of molecules in the syrup between the crystals.
 *
 * <p>Water: log₁₀ D = −(A + B/(T − T₀)), D in m²/s, T in K, with a the water activity, A = 7 +
 * 0.175(1 − 46.46(1 − a)), B = 262.867(1 + 10.53(1 − a) − 0.3(1 − a)²), T₀ = 127.9(1 + 0.4514(1 −
 * a) − 0.51(1 − a)^1.7). Source: B. Zobrist et al., "Ultra-slow water diffusion in aqueous sucrose
 * glasses", Phys. Chem. Chem. Phys. 13 (2011) 3514, read in two public transcriptions of program
 * text; range 160 to 313 K. In pure water at 25 °C it is 17 % below the accepted 2.30·10⁻⁹ m²/s
 * (from memory).
 *
 * <p>Solutes: Stokes and Einstein, D = kT/(6πηr). H. C. Price, J. Mattsson and B. J. Murray,
 * "Sucrose diffusion in aqueous solution", Phys. Chem. Chem. Phys. 18 (2016) 19207 (abstract read)
 * found that it is valid for sucrose but not for water. r is 0.47 nm for sucrose (from memory; it
 * gives the accepted 5.2·10⁻¹⁰ m²/s in water at 25 °C) and is proportional to the cube root of the
 * molar mass.
 */
final class Diffusion {
    private static final double BOLTZMANN = 1.380649e-23;
    private static final double SUCROSE_RADIUS_M = 0.47e-9;
    static final double SUCROSE_G_PER_MOL = 342.3;

    private Diffusion() {}

    /**
     * {@return diffusivity of water in a syrup, m²/s}
     *
     * @param waterActivity water activity of the syrup, 0 to 1
     * @param temperatureC temperature, °C, −60 to 40
     */
    static double waterM2PerS(double waterActivity, double temperatureC) {
        Require.within("waterActivity", waterActivity, new Require.Range(0, 1, ""));
        Require.within("temperatureC", temperatureC, new Require.Range(-60, 40, "°C"));
        double dry = 1 - waterActivity;
        double a = 7 + 0.175 * (1 - 46.46 * dry);
        double b = 262.867 * (1 + 10.53 * dry - 0.3 * dry * dry);
        double zero = 127.9 * (1 + 0.4514 * dry - 0.51 * Math.pow(dry, 1.7));
        return Math.pow(10, -(a + b / (Temperature.kelvin(temperatureC) - zero)));
    }

    /**
     * {@return diffusivity of a dissolved molecule, by its molar mass, m²/s}
     *
     * @param viscosityMPaS viscosity of the syrup, mPa·s
     * @param temperatureC temperature, °C
     */
    static double soluteM2PerS(double molarMassGPerMol, double viscosityMPaS, double temperatureC) {
        double radius = SUCROSE_RADIUS_M * Math.cbrt(molarMassGPerMol / SUCROSE_G_PER_MOL);
        return BOLTZMANN
                * Temperature.kelvin(temperatureC)
                / (6 * Math.PI * viscosityMPaS * 1e-3 * radius);
    }
}
