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
 */
public final class Storage {
    /** The coldest store that is calculated, °C; crystals hardly change there. */
    public static final double COLDEST_C = FrozenMixTable.COLDEST_C;

    private static final double USUAL_HARDENING_HOURS = 6;

    /** One night in the freezer, h (common practice, no source). */
    public static final double NIGHT_HOURS = 10;

    private static final double USUAL_PERIOD_HOURS = 8;
    private static final double ALREADY_THERE_C = 0.05;
    private static final double BEYOND_C = 1;

    private final CrystalStory story;
    private final double temperatureC;
    private final TemperatureSwing swing;
    private final double hardeningHours;

    Storage(CrystalStory story, double temperatureC) {
        this(
                story,
                Require.within(
                        "temperatureC", temperatureC, new Require.Range(COLDEST_C, -2, "°C")),
                new TemperatureSwing(0, USUAL_PERIOD_HOURS),
                0);
        story.state().requireIce(temperatureC);
    }

    private Storage(
            CrystalStory story,
            double temperatureC,
            TemperatureSwing swing,
            double hardeningHours) {
        this.story = story;
        this.temperatureC = temperatureC;
        this.swing = swing;
        this.hardeningHours = hardeningHours;
    }

    /**
     * Makes the temperature vary by ±, once in 8 h.
     *
     * @param byC how far each way, °C, 0 to 10
     */
    public Storage swinging(double byC) {
        return swinging(byC, swing.everyHours);
    }

    /**
     * Makes the temperature vary by ±.
     *
     * @param byC how far each way, °C, 0 to 10
     * @param everyHours period, h, 0.25 to 240
     * @throws IllegalArgumentException if nearly all ice would melt at the warmest point
     */
    public Storage swinging(double byC, double everyHours) {
        Require.within("byC", byC, new Require.Range(0, 10, "°C"));
        Require.within("everyHours", everyHours, new Require.Range(0.25, 240, "h"));
        story.state().requireIce(temperatureC + byC);
        return new Storage(
                story, temperatureC, new TemperatureSwing(byC, everyHours), hardeningHours);
    }

    /**
     * Sets how long it takes to become as cold as the store. By default a frozen batch takes 6 h at
     * −18 °C, a liquid one 10 h (common practice, no source), and longer in a warmer store.
     *
     * @param hours h, 0.1 to 100
     */
    public Storage hardenedIn(double hours) {
        Require.within("hours", hours, new Require.Range(0.1, 100, "h"));
        return new Storage(story, temperatureC, swing, hours);
    }

    /** {@return the story of the batch as it is put in} */
    public CrystalStory before() {
        return story;
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
        CrystalState now = story.state();
        double away = temperatureC - now.temperatureC();
        if (Math.abs(away) > ALREADY_THERE_C) {
            double around = temperatureC + Math.copySign(BEYOND_C, away);
            CoolingPath harden =
                    CoolingPath.against(
                            now.mixTable(),
                            new CoolingPath.Ends(now.temperatureC(), temperatureC),
                            around,
                            hardeningS(now, around));
            now = now.still(harden, away < 0 ? "hardening" : "softening");
        }
        if (hours > 0) {
            CoolingPath keep =
                    swing.byC > 0
                            ? CoolingPath.swing(
                                    temperatureC,
                                    swing.byC,
                                    new CoolingPath.Rhythm(hours * 3600, swing.everyHours * 3600))
                            : CoolingPath.hold(temperatureC, hours * 3600);
            now = now.still(keep, "storing");
        }
        return story.then(
                now,
                swing.byC > 0
                        ? CrystalStory.TrendEvidence.SWINGS
                        : CrystalStory.TrendEvidence.STORAGE);
    }

    /** The hours given, or the usual ones at −18 °C, longer in a warmer store. */
    private double hardeningS(CrystalState now, double aroundC) {
        if (hardeningHours > 0) {
            return hardeningHours * 3600;
        }
        double usual = 3600 * (now.frozen() ? USUAL_HARDENING_HOURS : NIGHT_HOURS);
        CoolingPath.Ends ends = new CoolingPath.Ends(now.temperatureC(), temperatureC);
        if (now.temperatureC() <= Temperature.HOME_FREEZER_C + ALREADY_THERE_C) {
            return usual;
        }
        CoolingPath.Ends usualEnds =
                new CoolingPath.Ends(now.temperatureC(), Temperature.HOME_FREEZER_C);
        return usual
                * CoolingPath.effort(now.mixTable(), ends, aroundC)
                / CoolingPath.effort(
                        now.mixTable(), usualEnds, Temperature.HOME_FREEZER_C - BEYOND_C);
    }

    private record TemperatureSwing(double byC, double everyHours) {}
}
