package coldwright.science.emulsion;

import coldwright.science.Band;
import coldwright.science.Require;

import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/**
 * The solid share of milk fat.
 *
 * <p>Values: 10 °C 40–55 %, 20 °C 16–20, 30 °C 5, 35 °C 1 (from memory); 40 °C none; 0 °C 58–72 and
 * −20 °C 75–90 by judgement. Linear between these points. Range −20 to 40 °C, after hours of rest:
 * cooling fat lags behind. Summer fat is low in the band, winter fat high.
 */
public final class MilkFat {
    private static final double[] TEMPERATURE_C = {-20, 0, 10, 20, 30, 35, 40};
    private static final double[] LOW = {75, 58, 40, 16, 4, 0.5, 0};
    private static final double[] HIGH = {90, 72, 55, 20, 6, 1.5, 0};
    private static final PolynomialSplineFunction LOWEST =
            new LinearInterpolator().interpolate(TEMPERATURE_C, LOW);
    private static final PolynomialSplineFunction HIGHEST =
            new LinearInterpolator().interpolate(TEMPERATURE_C, HIGH);

    private MilkFat() {}

    /**
     * {@return solid share of milk fat, % of the fat}
     *
     * @param temperatureC temperature, °C, −20 to 40
     * @throws IllegalArgumentException if the temperature is outside the range
     */
    public static Band solidPercent(double temperatureC) {
        Require.within("temperatureC", temperatureC, new Require.Range(-20, 40, "°C"));
        double low = LOWEST.value(temperatureC);
        double high = HIGHEST.value(temperatureC);
        return new Band(low, (low + high) / 2, high);
    }
}
