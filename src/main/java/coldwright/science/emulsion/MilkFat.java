package coldwright.science.emulsion;

import coldwright.science.Band;
import coldwright.science.LinearTable;
import coldwright.science.Require;

/**
 * The solid share of milk fat.
 *
 * <p>Values: 10 °C 40–55 %, 20 °C 16–20, 30 °C 5, 35 °C 1 (from memory); 40 °C none; 0 °C 58–72 and
 * −20 °C 75–90 by judgement. Linear between these points. Range −20 to 40 °C, after hours of rest:
 * cooling fat lags behind. Summer fat is low in the band, winter fat high.
 */
public final class MilkFat {
    private static final LinearTable LOWEST =
            new LinearTable(
                    new double[][] {
                        {-20, 75}, {0, 58}, {10, 40}, {20, 16}, {30, 4}, {35, 0.5}, {40, 0}
                    });
    private static final LinearTable HIGHEST =
            new LinearTable(
                    new double[][] {
                        {-20, 90}, {0, 72}, {10, 55}, {20, 20}, {30, 6}, {35, 1.5}, {40, 0}
                    });

    private MilkFat() {}

    /**
     * {@return solid share of milk fat, % of the fat}
     *
     * @param temperatureC temperature, °C, −20 to 40
     */
    public static Band solidPercent(double temperatureC) {
        Require.within("temperatureC", temperatureC, new Require.Range(-20, 40, "°C"));
        double low = LOWEST.at(temperatureC);
        double high = HIGHEST.at(temperatureC);
        return new Band(low, (low + high) / 2, high);
    }
}
