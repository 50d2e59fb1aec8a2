package coldwright.science.freezing;

import coldwright.science.Require;

/**
 * Table salt and water, as in the bath that freezes a batch by hand.
 *
 * <p>While ice and salt last, the bath is on the ice line of brine: its temperature is the freezing
 * point of brine of its strength, and no lower than {@value #EUTECTIC_C} °C. Salt beyond {@value
 * #EUTECTIC_SALT_PERCENT} % stays on the bottom.
 *
 * <pre>{@code
 * Brine.freezingPointC(20);         // −16.46
 * Brine.freezingPointC(30);         // −21.1: the rest of the salt stays undissolved
 * Brine.saltPercentAtIceLine(-10);  // 14.1 % salt in a bath at −10 °C
 * }</pre>
 *
 * <p>Model: {@link Solute#SODIUM_CHLORIDE}. Range 0 to the eutectic; within 0.02 °C of the CRC
 * table, within 0.15 °C of Melinder 2010. Cautions: cold brine burns skin, so keep it off hands and
 * eyes and out of the food.
 */
public final class Brine {
    /** Coldest brine beside ice, °C (Thermochim. Acta 647 (2017) 94, abstract read). */
    public static final double EUTECTIC_C = -21.1;

    /** Its salt, % by mass (the same source). */
    public static final double EUTECTIC_SALT_PERCENT = 23.3;

    private static final Require.Range SHARE = new Require.Range(0, 100, "% by mass");
    private static final Require.Range ICE_LINE = new Require.Range(EUTECTIC_C, 0, "°C");

    private Brine() {}

    /**
     * {@return freezing point of brine, and the temperature of a bath of that strength, °C, 0 to
     * {@value #EUTECTIC_C}}
     *
     * @param saltPercent salt, % by mass of salt and water, 0 to 100
     */
    public static double freezingPointC(double saltPercent) {
        Require.within("saltPercent", saltPercent, SHARE);
        if (saltPercent >= EUTECTIC_SALT_PERCENT) {
            return EUTECTIC_C;
        }
        Solution brine =
                Solution.inWater(100 - saltPercent).with(saltPercent, Solute.SODIUM_CHLORIDE);
        return Math.max(EUTECTIC_C, brine.freezingPointC());
    }

    /**
     * {@return salt in brine in equilibrium with ice: the inverse of {@link #freezingPointC}, salt,
     * % by mass of salt and water, 0 to {@value #EUTECTIC_SALT_PERCENT}}
     *
     * @param temperatureC temperature of ice and brine, °C, {@value #EUTECTIC_C} to 0
     * @throws IllegalArgumentException if no brine is in equilibrium with ice there
     */
    public static double saltPercentAtIceLine(double temperatureC) {
        Require.that(
                temperatureC >= EUTECTIC_C,
                "temperatureC is %s; it must be between %s and 0 °C. Table salt can't make a bath colder.",
                temperatureC,
                EUTECTIC_C);
        Require.within("temperatureC", temperatureC, ICE_LINE);
        double molality =
                Solute.SODIUM_CHLORIDE.binding().molality(IceActivity.minusLn(temperatureC));
        double saltPerWater = molality * Solute.SODIUM_CHLORIDE.molarMassGPerMol() / 1000;
        return Math.min(EUTECTIC_SALT_PERCENT, 100 * saltPerWater / (1 + saltPerWater));
    }

    /**
     * {@return the most salt that the water of a bath dissolves at the eutectic, g; anything above
     * it stays undissolved}
     *
     * @param waterG liquid water, melted ice included, g, more than zero
     */
    public static double mostDissolvedSaltG(double waterG) {
        Require.positive("waterG", waterG, "g");
        return waterG * EUTECTIC_SALT_PERCENT / (100 - EUTECTIC_SALT_PERCENT);
    }
}
