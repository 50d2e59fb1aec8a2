package coldwright.science.thermal;

import coldwright.science.Require;

/**
 * Properties of pure water and ice at one atmosphere, more exact than the food tables.
 *
 * <p>Equation: polynomials in t (°C), the logarithm of the viscosity likewise.
 *
 * <p>Source: fitted to the IAPWS-95 formulation (density, heat capacity), the IAPWS 2008 viscosity
 * and 2011 conductivity, and the IAPWS-06 equation of state of ice, each as computed by the public
 * library iapws 1.5.3 at 0.101325 MPa in steps of 1 °C.
 *
 * <p>Range: liquid 0 to 60 °C, ice −60 to 0 °C. Largest deviation from the formulation: density of
 * water 0.0016 kg/m³ and of ice 0.006, heat capacity 0.0001 J/(g·K), conductivity 0.0003 W/(m·K),
 * viscosity 0.001 %.
 */
public final class PureWater {
    /** Latent heat of melting at 0 °C, J/g (IAPWS-06, IAPWS-95); crystals take it to a tenth. */
    public static final double LATENT_HEAT_JPERG = 333.42;

    private static final double[] WATER_DENSITY = {
        999.845, 0.0663157, -0.00881901, 8.34821e-05, -7.06609e-07, 2.89005e-09
    };
    private static final double[] WATER_HEAT_CAPACITY = {
        4.21937, -0.00338439, 0.000115593, -2.15187e-06, 2.29268e-08, -1.02703e-10
    };
    private static final double[] WATER_CONDUCTIVITY = {
        0.555883, 0.00246617, -1.95739e-05, 8.2264e-08
    };
    private static final double[] WATER_LN_VISCOSITY = {
        0.583185, -0.0348317, 0.000360854, -4.53659e-06, 5.0884e-08, -3.84768e-10, 1.3674e-12
    };
    private static final double[] ICE_DENSITY = {916.717, -0.147598, -0.00025233};
    private static final double[] ICE_HEAT_CAPACITY = {2.0968, 0.00739498, 2.22329e-06};

    private static final Require.Range LIQUID = new Require.Range(0, 60, "°C for water");
    private static final Require.Range SOLID = new Require.Range(-60, 0, "°C for ice");

    private PureWater() {}

    /**
     * {@return density of water, kg/m³}
     *
     * @param temperatureC temperature, °C, 0 to 60
     */
    public static double densityKgPerM3(double temperatureC) {
        return at(liquid(temperatureC), WATER_DENSITY);
    }

    /**
     * {@return heat capacity of water, J/(g·K)}
     *
     * @param temperatureC temperature, °C, 0 to 60
     */
    public static double heatCapacityJPerGK(double temperatureC) {
        return at(liquid(temperatureC), WATER_HEAT_CAPACITY);
    }

    /**
     * {@return conductivity of water, W/(m·K)}
     *
     * @param temperatureC temperature, °C, 0 to 60
     */
    public static double conductivityWPerMK(double temperatureC) {
        return at(liquid(temperatureC), WATER_CONDUCTIVITY);
    }

    /**
     * {@return viscosity of water, mPa·s}
     *
     * @param temperatureC temperature, °C, 0 to 60
     */
    public static double viscosityMPaS(double temperatureC) {
        return Math.exp(at(liquid(temperatureC), WATER_LN_VISCOSITY));
    }

    /**
     * {@return density of ice, kg/m³}
     *
     * @param temperatureC temperature, °C, −60 to 0
     */
    public static double iceDensityKgPerM3(double temperatureC) {
        return at(solid(temperatureC), ICE_DENSITY);
    }

    /**
     * {@return heat capacity of ice, J/(g·K)}
     *
     * @param temperatureC temperature, °C, −60 to 0
     */
    public static double iceHeatCapacityJPerGK(double temperatureC) {
        return at(solid(temperatureC), ICE_HEAT_CAPACITY);
    }

    /**
     * {@return enthalpy of ice, with zero for liquid water at 0 °C, J/g, −{@value
     * #LATENT_HEAT_JPERG} at 0 °C and less below}
     *
     * @param temperatureC temperature, °C, −60 to 0
     */
    public static double iceEnthalpyJPerG(double temperatureC) {
        double t = solid(temperatureC);
        double sum = 0;
        for (int i = ICE_HEAT_CAPACITY.length - 1; i >= 0; i--) {
            sum = sum * t + ICE_HEAT_CAPACITY[i] / (i + 1);
        }
        return sum * t - LATENT_HEAT_JPERG;
    }

    private static double liquid(double temperatureC) {
        return Require.within("temperatureC", temperatureC, LIQUID);
    }

    private static double solid(double temperatureC) {
        return Require.within("temperatureC", temperatureC, SOLID);
    }

    private static double at(double t, double[] coefficients) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * t + coefficients[i];
        }
        return sum;
    }
}
