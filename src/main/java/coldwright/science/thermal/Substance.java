package coldwright.science.thermal;

import coldwright.science.Require;

/**
 * A component of food with its thermal properties: conductivity, density and heat capacity.
 *
 * <p>Equation: each property is a₀ + a₁·t + a₂·t², t in °C.
 *
 * <p>Source: Y. Choi and M. R. Okos, "Effects of temperature and composition on the thermal
 * properties of foods", in Food Engineering and Process Applications vol. 1 (1986) 93–101, read in
 * transcriptions. Misprints circulate: fat's linear conductivity term is e-4 and ice's e-3; 4.1289
 * is also printed for the constant of water's heat capacity above 0 °C; water's heat capacity below
 * 0 °C is from memory. Ethanol and air are from other sources: see each.
 *
 * <p>Range: −40 to 150 °C for the food components (−40 to 0 °C for ice). Stated error: about 5 %
 * for the heat capacity and conductivity of a mix, 1 % for its density.
 */
public enum Substance {
    /** Water; below 0 °C the heat capacity is that of the supercooled liquid. */
    WATER(
            new Quadratic(0.57109, 1.7625e-3, -6.7036e-6),
            new Quadratic(997.18, 3.1439e-3, -3.7574e-3),
            new Quadratic(4.1762, -9.0864e-5, 5.4731e-6)),
    /** Ice, to 0 °C. */
    ICE(
            new Quadratic(2.2196, -6.2489e-3, 1.0154e-4),
            new Quadratic(916.89, -0.13071, 0),
            new Quadratic(2.0623, 6.0769e-3, 0)),
    PROTEIN(
            new Quadratic(0.17881, 1.1958e-3, -2.7178e-6),
            new Quadratic(1329.9, -0.5184, 0),
            new Quadratic(2.0082, 1.2089e-3, -1.3129e-6)),
    FAT(
            new Quadratic(0.18071, -2.7604e-4, -1.7749e-7),
            new Quadratic(925.59, -0.41757, 0),
            new Quadratic(1.9842, 1.4733e-3, -4.8008e-6)),
    CARBOHYDRATE(
            new Quadratic(0.20141, 1.3874e-3, -4.3312e-6),
            new Quadratic(1599.1, -0.31046, 0),
            new Quadratic(1.5488, 1.9625e-3, -5.9399e-6)),
    FIBRE(
            new Quadratic(0.18331, 1.2497e-3, -3.1683e-6),
            new Quadratic(1311.5, -0.36589, 0),
            new Quadratic(1.8459, 1.8306e-3, -4.6509e-6)),
    ASH(
            new Quadratic(0.32962, 1.4011e-3, -2.9069e-6),
            new Quadratic(2423.8, -0.28063, 0),
            new Quadratic(1.0926, 1.8896e-3, -3.6817e-6)),
    /** Ethanol; straight lines through handbook values at 0 and 25 °C, from memory, ±3 %. */
    ETHANOL(
            new Quadratic(0.174, -2.8e-4, 0),
            new Quadratic(806.3, -0.85, 0),
            new Quadratic(2.27, 6.8e-3, 0)),
    /** Air at one atmosphere, dry; handbook values from memory, ±2 % from −30 to 30 °C. */
    AIR(
            new Quadratic(0.0241, 7.2e-5, 0),
            new Quadratic(1.292, -4.6e-3, 0),
            new Quadratic(1.006, 0, 0));

    /** Water's heat capacity below 0 °C (Choi and Okos 1986, from memory). */
    private static final Quadratic WATER_BELOW_ZERO = new Quadratic(4.1289, -5.3062e-3, 9.9516e-4);

    private static final Require.Range RANGE = new Require.Range(-60, 150, "°C");

    private final Quadratic conductivity;
    private final Quadratic density;
    private final Quadratic heatCapacity;

    Substance(Quadratic conductivity, Quadratic density, Quadratic heatCapacity) {
        this.conductivity = conductivity;
        this.density = density;
        this.heatCapacity = heatCapacity;
    }

    /**
     * {@return conductivity, W/(m·K)}
     *
     * @param temperatureC temperature, °C, −60 to 150; the source ends at −40
     */
    public double conductivityWPerMK(double temperatureC) {
        return conductivity.at(Require.within("temperatureC", temperatureC, RANGE));
    }

    /**
     * {@return density, kg/m³}
     *
     * @param temperatureC temperature, °C, −60 to 150; the source ends at −40
     */
    public double densityKgPerM3(double temperatureC) {
        return density.at(Require.within("temperatureC", temperatureC, RANGE));
    }

    /**
     * {@return heat capacity at constant pressure, J/(g·K)}
     *
     * @param temperatureC temperature, °C, −60 to 150; the source ends at −40
     */
    public double heatCapacityJPerGK(double temperatureC) {
        return heatCapacity(temperatureC).at(Require.within("temperatureC", temperatureC, RANGE));
    }

    /**
     * {@return sensible heat above 0 °C: the heat capacity integrated from 0 °C, J/g, negative
     * below 0 °C}
     *
     * @param temperatureC temperature, °C, −60 to 150
     */
    public double enthalpyFromZeroJPerG(double temperatureC) {
        return heatCapacity(temperatureC)
                .sumFromZero(Require.within("temperatureC", temperatureC, RANGE));
    }

    private Quadratic heatCapacity(double temperatureC) {
        return this == WATER && temperatureC < 0 ? WATER_BELOW_ZERO : heatCapacity;
    }

    /** a₀ + a₁·t + a₂·t². */
    private record Quadratic(double a0, double a1, double a2) {
        double at(double t) {
            return a0 + t * (a1 + t * a2);
        }

        double sumFromZero(double t) {
            return t * (a0 + t * (a1 / 2 + t * a2 / 3));
        }
    }
}
