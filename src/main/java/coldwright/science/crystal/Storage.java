package coldwright.science.crystal;

import coldwright.science.Require;
import coldwright.science.Temperature;

/**
 * A cold store for a batch: its temperature, its variation, and the hardening time.
 *
 * <pre>{@code
 * story.storedAt(-18).forDays(7);
 * story.storedAt(-12).swinging(2).forDays(7);
 * }</pre>
 *
 * @param before the story of the batch as it is put in
 * @param temperatureC temperature, °C, −40 to −2
 * @param swingC how far it varies each way, °C, 0 to 10
 * @param everyHours period of that, h, 0.25 to 240
 * @param hardeningHours time to become as cold as the store, h, to 100; 0 for the usual time
 */
public record Storage(
        CrystalStory before,
        double temperatureC,
        double swingC,
        double everyHours,
        double hardeningHours) {
    /** The coldest store that is calculated, °C; crystals hardly change there. */
    public static final double COLDEST_C = FrozenMixTable.COLDEST_C;

    private static final double USUAL_HARDENING_HOURS = 6;

    /** One night in the freezer, h (common practice, no source). */
    public static final double NIGHT_HOURS = 10;

    private static final double USUAL_PERIOD_HOURS = 8;
    private static final double ALREADY_THERE_C = 0.05;
    private static final double BEYOND_C = 1;

    /** A store in which not nearly all the ice melts, even at its warmest. */
    public Storage {
        Require.within("temperatureC", temperatureC, new Require.Range(COLDEST_C, -2, "°C"));
        Require.within("byC", swingC, new Require.Range(0, 10, "°C"));
        Require.within("everyHours", everyHours, new Require.Range(0.25, 240, "h"));
        Require.within("hours", hardeningHours, new Require.Range(0, 100, "h"));
        before.state().requireIce(temperatureC + swingC);
    }

    Storage(CrystalStory before, double temperatureC) {
        this(before, temperatureC, 0, USUAL_PERIOD_HOURS, 0);
    }

    /**
     * Makes the temperature vary by ±, once in 8 h.
     *
     * @param byC how far each way, °C, 0 to 10
     */
    public Storage swinging(double byC) {
        return swinging(byC, everyHours);
    }

    /**
     * Makes the temperature vary by ±.
     *
     * @param byC how far each way, °C, 0 to 10
     * @param newEveryHours period, h, 0.25 to 240
     * @throws IllegalArgumentException if nearly all ice would melt at the warmest point
     */
    public Storage swinging(double byC, double newEveryHours) {
        return new Storage(before, temperatureC, byC, newEveryHours, hardeningHours);
    }

    /**
     * Sets how long it takes to become as cold as the store. By default a frozen batch takes 6 h at
     * −18 °C, a liquid one 10 h (common practice, no source), and longer in a warmer store.
     *
     * @param hours h, 0.1 to 100
     */
    public Storage hardenedIn(double hours) {
        Require.within("hours", hours, new Require.Range(0.1, 100, "h"));
        return new Storage(before, temperatureC, swingC, everyHours, hours);
    }

    /**
     * Keeps the batch for a time, once hardened.
     *
     * @param days d, 0 to 1000
     */
    public CrystalStory forDays(double days) {
        Require.within("days", days, new Require.Range(0, 1000, "d"));
        return forHours(days * 24);
    }

    /**
     * Keeps the batch for a time, once hardened.
     *
     * @param hours h, 0 to 24000
     */
    public CrystalStory forHours(double hours) {
        Require.within("hours", hours, new Require.Range(0, 24000, "h"));
        CrystalState now = before.state();
        double away = temperatureC - now.temperatureC();
        if (Math.abs(away) > ALREADY_THERE_C) {
            double around = temperatureC + Math.copySign(BEYOND_C, away);
            CoolingPath harden =
                    CoolingPath.against(
                            now.mixTable(),
                            now.temperatureC(),
                            temperatureC,
                            around,
                            hardeningS(now, around));
            now = now.still(harden, away < 0 ? "hardening" : "softening");
        }
        if (hours > 0) {
            CoolingPath keep =
                    swingC > 0
                            ? CoolingPath.swing(
                                    temperatureC, swingC, hours * 3600, everyHours * 3600)
                            : CoolingPath.hold(temperatureC, hours * 3600);
            now = now.still(keep, "storing");
        }
        return before.then(
                now,
                swingC > 0
                        ? CrystalStory.TrendEvidence.SWINGS
                        : CrystalStory.TrendEvidence.STORAGE);
    }

    /** The hours given, or the usual ones at −18 °C, longer in a warmer store. */
    private double hardeningS(CrystalState now, double aroundC) {
        if (hardeningHours > 0) {
            return hardeningHours * 3600;
        }
        double usual = 3600 * (now.frozen() ? USUAL_HARDENING_HOURS : NIGHT_HOURS);
        double fromC = now.temperatureC();
        double freezerC = Temperature.HOME_FREEZER_C;
        return fromC <= freezerC + ALREADY_THERE_C
                ? usual
                : usual
                        * CoolingPath.effort(now.mixTable(), fromC, temperatureC, aroundC)
                        / CoolingPath.effort(now.mixTable(), fromC, freezerC, freezerC - BEYOND_C);
    }
}
