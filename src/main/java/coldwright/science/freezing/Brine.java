package coldwright.science.freezing;

import coldwright.science.Require;

/** Table salt and water, as in the bath that freezes a batch by hand. */
public final class Brine {
    /** Coldest brine that can rest with ice, °C (CRC Handbook). */
    public static final double EUTECTIC_C = -21.1;

    /** Its salt, % by mass (CRC Handbook). */
    public static final double EUTECTIC_SALT_PERCENT = 23.3;

    private Brine() {}

    /**
     * Freezing point of brine.
     *
     * @param saltPercent salt, % by mass of salt and water, 0 to 100
     * @return °C, never below {@value #EUTECTIC_C}
     * @throws IllegalArgumentException if the share is outside 0 to 100
     */
    public static double freezingPointC(double saltPercent) {
        Require.within("saltPercent", saltPercent, new Require.Range(0, 100, "% by mass"));
        if (saltPercent >= EUTECTIC_SALT_PERCENT) {
            return EUTECTIC_C;
        }
        double point =
                Solution.inWater(100 - saltPercent)
                        .with(saltPercent, Solute.SODIUM_CHLORIDE)
                        .freezingPointC();
        return Math.max(EUTECTIC_C, point);
    }

    /**
     * Salt in brine that rests with ice: the bath's own strength at a temperature.
     *
     * @param temperatureC temperature, °C, {@value #EUTECTIC_C} to 0
     * @return salt, % by mass of salt and water
     * @throws IllegalArgumentException if no brine and ice rest together there
     */
    public static double saltPercentAtIceLine(double temperatureC) {
        Require.within("temperatureC", temperatureC, new Require.Range(EUTECTIC_C, 0, "°C"));
        double low = 0;
        double high = EUTECTIC_SALT_PERCENT;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (freezingPointC(middle) > temperatureC) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
