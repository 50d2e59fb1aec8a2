package coldwright.science.freezing;

import coldwright.science.Require;
import coldwright.science.Temperature;

/**
 * Water activity of ice, relative to supercooled pure water at the same temperature.
 *
 * <p>A solution whose water activity equals this neither freezes nor melts ice: that temperature is
 * its freezing point.
 *
 * <p>Equation: a_w = p_ice(T) / p_liquid(T), each vapour pressure from its own closed form, the
 * quotient divided by its value at 0 °C (0.99990) so that it is exactly 1 there: 0 °C is the
 * melting point under air, the equations meet at the triple point 0.01 °C.
 *
 * <p>Source: D. M. Murphy and T. Koop, "Review of the vapour pressures of ice and supercooled water
 * for atmospheric applications", Q. J. R. Meteorol. Soc. 131 (2005) 1539–1565, equation 7 (ice) and
 * equation 10 (supercooled water), read in two transcriptions.
 *
 * <p>Range: 0 °C down to {@value #COLDEST_C} °C here; the source covers 123 K to 273 K. Agreement
 * with IAPWS-06 and IAPWS-95 down to −25 °C: within 0.0003.
 */
public final class IceActivity {
    /** Coldest temperature covered, °C; the source's own limit is near −150 °C. */
    public static final double COLDEST_C = -120;

    private static final double RATIO_AT_ZERO = rawLnRatio(Temperature.ZERO_C_IN_K);
    private static final Require.Range RANGE = new Require.Range(COLDEST_C, 0, "°C");

    private IceActivity() {}

    /**
     * {@return water activity of ice, 1 at 0 °C and falling below it}
     *
     * @param temperatureC temperature, °C, {@value #COLDEST_C} to 0
     */
    public static double waterActivity(double temperatureC) {
        return Math.exp(-minusLn(Require.within("temperatureC", temperatureC, RANGE)));
    }

    /**
     * {@return the temperature at which ice has a given water activity, the freezing point of any
     * solution with that activity, °C, 0 or below}
     *
     * @param waterActivity water activity, from that of ice at {@value #COLDEST_C} °C to 1
     * @throws IllegalArgumentException if no ice in the range has that activity
     */
    public static double temperatureC(double waterActivity) {
        double least = Math.exp(-minusLn(COLDEST_C));
        Require.within("waterActivity", waterActivity, new Require.Range(least, 1, ""));
        return temperatureOfMinusLnC(-Math.log(waterActivity));
    }

    /** −ln of ice's water activity at a temperature, by the closed form; 0 above 0 °C. */
    static double minusLn(double temperatureC) {
        return temperatureC >= 0 ? 0 : RATIO_AT_ZERO - rawLnRatio(Temperature.kelvin(temperatureC));
    }

    /**
     * The temperature, °C, at which −ln of ice's water activity has a value; the coldest at most.
     */
    static double temperatureOfMinusLnC(double minusLn) {
        if (minusLn <= 0) {
            return 0;
        }
        double warm = 0;
        double cold = COLDEST_C;
        for (int i = 0; i < 60; i++) {
            double middle = (warm + cold) / 2;
            if (minusLn(middle) < minusLn) {
                warm = middle;
            } else {
                cold = middle;
            }
        }
        return warm;
    }

    private static double rawLnRatio(double temperatureK) {
        double ln = Math.log(temperatureK);
        double ice = 9.550426 - 5723.265 / temperatureK + 3.53068 * ln - 0.00728332 * temperatureK;
        double liquid =
                54.842763
                        - 6763.22 / temperatureK
                        - 4.210 * ln
                        + 0.000367 * temperatureK
                        + Math.tanh(0.0415 * (temperatureK - 218.8))
                                * (53.878
                                        - 1331.22 / temperatureK
                                        - 9.44523 * ln
                                        + 0.014025 * temperatureK);
        return ice - liquid;
    }
}
