package coldwright.science.bath;

import coldwright.science.Require;
import coldwright.science.Temperature;
import coldwright.science.freezing.Solute;

/**
 * Density, heat capacity, conductivity and enthalpy of sodium chloride brine.
 *
 * <p>Equation: density, heat capacity and conductivity are polynomials in x = salt % − 13.3897 and
 * y = t − 12.6179 °C. Enthalpy: that of water and solid salt at 25 °C, plus the heat of solution
 * there, minus the brine's own heat capacity down to t (Kirchhoff's law).
 *
 * <p>Sources: Å. Melinder, Properties of Secondary Working Fluids for Indirect Systems (IIR 2010),
 * sodium chloride, coefficients read in the CoolProp project's transcription; heat of solution at
 * infinite dilution 3.88 kJ/mol (V. B. Parker, NSRDS-NBS 2, 1965, in the CRC Handbook, read) and
 * its change with strength by Pitzer's equations with the temperature derivatives of L. F.
 * Silvester and K. S. Pitzer 1978 (as in Pitzer 1991, chapter 3 table 12, read in transcription)
 * and Debye–Hückel slope A_H/RT 0.801 (from memory); heat capacity of solid salt 50.5 J/(mol·K),
 * CRC, from memory.
 *
 * <p>Range: 0 to 23 % salt, from the freezing point to 40 °C; up to 26.4 % the same polynomials are
 * carried on. Against Melinder's own tables: heat capacity 0.25 %, density 0.25 %. The heat of
 * solution is good to 0.3 kJ/mol, about 1 J per g of brine.
 */
public final class BrineHeat {
    /** Molar mass of sodium chloride, g/mol. */
    static final double SALT_G_PER_MOL = Solute.SODIUM_CHLORIDE.molarMassGPerMol();

    /** Heat capacity of solid salt, J/(g·K) (CRC Handbook 50.5 J/(mol·K), from memory). */
    static final double SOLID_SALT_JPERGK = 50.5 / SALT_G_PER_MOL;

    private static final double X0 = 13.3897;
    private static final double Y0 = 12.6179;

    /** Rows: power of x; columns: power of y. */
    private static final double[][] DENSITY = {
        {1099, -0.3758, -0.002023},
        {7.723, -0.01426, 0.0001535},
        {0.02567, 0.0003994, -7.281e-6},
        {0.0001108, 3.522e-7},
        {-1.686e-5}
    };

    /** As {@link #DENSITY}, J/(kg·K). */
    private static final double[][] HEAT_CAPACITY = {
        {3593, 1.669, -0.02019},
        {-32.48, -0.03331, -0.001164},
        {0.6453, -0.009314, 0.0002236},
        {-0.01629, 0.0007927},
        {0.0002331}
    };

    private static final double[][] CONDUCTIVITY = {
        {0.5736, 0.001595, -4.003e-7},
        {-0.0009383, -1.248e-5, 3.353e-7},
        {-1.057e-5, 4.158e-7, -2.032e-8},
        {-4.853e-7, -1.587e-8},
        {-4.654e-9}
    };

    private static final double REFERENCE_C = 25;
    private static final double REFERENCE_K = Temperature.kelvin(REFERENCE_C);
    private static final double DEBYE_HEAT = 0.801 * Temperature.GAS_J_PER_MOLK * REFERENCE_K;
    private static final double HEAT_AT_INFINITE_DILUTION = 3880;

    private static final Require.Range SALT = new Require.Range(0, 26.5, "% by mass");
    private static final Require.Range WARMTH = new Require.Range(-30, 40, "°C");

    private BrineHeat() {}

    /**
     * {@return density, kg/m³}
     *
     * @param saltPercent salt, % by mass, 0 to 26.5
     * @param temperatureC temperature, °C, −30 to 40
     */
    public static double densityKgPerM3(double saltPercent, double temperatureC) {
        return at(DENSITY, checkedSalt(saltPercent), checked(temperatureC));
    }

    /**
     * {@return heat capacity, J/(g·K)}
     *
     * @param saltPercent salt, % by mass, 0 to 26.5
     * @param temperatureC temperature, °C, −30 to 40
     */
    public static double heatCapacityJPerGK(double saltPercent, double temperatureC) {
        return at(HEAT_CAPACITY, checkedSalt(saltPercent), checked(temperatureC)) / 1000;
    }

    /**
     * {@return conductivity, W/(m·K)}
     *
     * @param saltPercent salt, % by mass, 0 to 26.5
     * @param temperatureC temperature, °C, −30 to 40
     */
    public static double conductivityWPerMK(double saltPercent, double temperatureC) {
        return at(CONDUCTIVITY, checkedSalt(saltPercent), checked(temperatureC));
    }

    /**
     * {@return heat taken up when salt dissolves at 25 °C to brine of a strength, J per g of salt,
     * more than zero: the brine cools as salt dissolves}
     *
     * @param saltPercent salt in the brine made, % by mass, 0 to 26.5
     */
    public static double heatOfSolutionJPerGSalt(double saltPercent) {
        double w = checkedSalt(saltPercent) / 100;
        double molality = 1000 * w / (1 - w) / SALT_G_PER_MOL;
        return (HEAT_AT_INFINITE_DILUTION + relativeHeat(molality)) / SALT_G_PER_MOL;
    }

    /** Pitzer's apparent relative molar enthalpy of NaCl at 25 °C, J/mol. */
    private static double relativeHeat(double molality) {
        if (molality <= 0) {
            return 0;
        }
        double root = Math.sqrt(molality);
        double twice = 2 * root;
        double g = 2 * (1 - (1 + twice) * Math.exp(-twice)) / (twice * twice);
        double second = 7.159e-4 + 7.005e-4 * g;
        double third = -10.54e-5 / 2;
        return DEBYE_HEAT / 1.2 * Math.log(1 + 1.2 * root)
                - 2
                        * Temperature.GAS_J_PER_MOLK
                        * REFERENCE_K
                        * REFERENCE_K
                        * (molality * second + molality * molality * third);
    }

    /**
     * {@return enthalpy; zero is liquid water and solid salt, apart, at 0 °C, J/g}
     *
     * @param saltPercent salt, % by mass, 0 to 26.5
     * @param temperatureC temperature, °C, −30 to 40
     */
    public static double enthalpyJPerG(double saltPercent, double temperatureC) {
        double w = checkedSalt(saltPercent) / 100;
        double water = held(0, REFERENCE_C) - held(0, 0);
        double salt = SOLID_SALT_JPERGK * REFERENCE_C + heatOfSolutionJPerGSalt(saltPercent);
        double down = held(saltPercent, REFERENCE_C) - held(saltPercent, checked(temperatureC));
        return (1 - w) * water + w * salt - down;
    }

    /** Heat capacity summed over temperature from the polynomial's middle, J/g. */
    private static double held(double saltPercent, double temperatureC) {
        double y = temperatureC - Y0;
        double sum = 0;
        double powerX = 1;
        for (double[] row : HEAT_CAPACITY) {
            double powerY = y;
            for (int j = 0; j < row.length; j++) {
                sum += row[j] * powerX * powerY / (j + 1);
                powerY *= y;
            }
            powerX *= saltPercent - X0;
        }
        return sum / 1000;
    }

    private static double at(double[][] coefficients, double saltPercent, double temperatureC) {
        double sum = 0;
        double powerX = 1;
        for (double[] row : coefficients) {
            double powerY = 1;
            for (double value : row) {
                sum += value * powerX * powerY;
                powerY *= temperatureC - Y0;
            }
            powerX *= saltPercent - X0;
        }
        return sum;
    }

    private static double checkedSalt(double saltPercent) {
        return Require.within("saltPercent", saltPercent, SALT);
    }

    private static double checked(double temperatureC) {
        return Require.within("temperatureC", temperatureC, WARMTH);
    }
}
