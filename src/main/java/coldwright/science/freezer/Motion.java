package coldwright.science.freezer;

import coldwright.science.Require;
import coldwright.words.Phrase;
import coldwright.words.Worded;

/**
 * How a batch is kept moving while it freezes.
 *
 * <p>Model: at intervals fresh content comes to the wall and the ice there is mixed in. Between two
 * turns heat leaves the layer at the wall by conduction alone, so the wall's film inside is h =
 * 2·√(k·ρ·c/(π·τ)), τ the time between turns, c with the heat of freezing. A blade that keeps a
 * distance leaves a layer of ice of that thickness on the wall.
 *
 * <p>Source: penetration (surface renewal) theory of R. Higbie 1935, applied to scraped walls by J.
 * Kool 1958 and P. Harriott 1959 (from memory); tested here against a {@link LayeredBody} stirred
 * as often. Measured films of scraped heat exchangers are lower when the product is thick: 695 to
 * 1415 W/(m²·K) for milk at 150 to 200 turns a minute (D. Juyal et al., J. Food Process Eng. 2016,
 * abstract). M. Ben Lakhdar et al., Appl. Therm. Eng. 25 (2005) saw a constant ice layer where the
 * blades stay 3 mm away (abstract). The times between turns are judgement, with a spread of four.
 *
 * @param secondsBetweenTurns likely time between turns, s; infinite for a still batch
 * @param blade the blade at the wall
 * @param phrase its name in any language
 */
public record Motion(double secondsBetweenTurns, Blade blade, Phrase phrase) implements Worded {
    /** Not moved at all. */
    public static final Motion STILL =
            new Motion(Double.POSITIVE_INFINITY, Blade.NONE, named("still"));

    /** A bag kneaded and turned in the bath: each place every 30 s (15 to 60, judgement). */
    public static final Motion KNEADED = new Motion(30, Blade.NONE, named("kneaded"));

    /** A bag or jar shaken hard: each place every 3 s (1.5 to 6, judgement). */
    public static final Motion SHAKEN = new Motion(3, Blade.NONE, named("shaken"));

    /** A hand-cranked churn, 60 strokes a minute, blade 0.5 mm off, 20 W of arm (judgement). */
    public static final Motion CRANKED = new Motion(1, new Blade(0.5, 20), named("cranked"));

    /** A machine's dasher, two blades at 60 turns a minute, 60 W for the batch (judgement). */
    public static final Motion MACHINE = new Motion(0.5, new Blade(0.3, 60), named("machine"));

    /** Turns slower than this are simulated as still content stirred at moments, s. */
    static final double LUMPED_BELOW_S = 61;

    public Motion {
        Require.that(
                secondsBetweenTurns >= 0.1,
                "secondsBetweenTurns is %s s; it must be 0.1 or more",
                secondsBetweenTurns);
    }

    /**
     * A blade at the wall.
     *
     * @param clearanceMm ice left on the wall by the blade, mm, 0 to 10
     * @param workW heat that the motion itself makes in the batch, W
     */
    public record Blade(double clearanceMm, double workW) {
        /** No blade. */
        public static final Blade NONE = new Blade(0, 0);

        public Blade {
            Require.within("clearanceMm", clearanceMm, new Require.Range(0, 10, "mm"));
            Require.notNegative("workW", workW, "W");
        }
    }

    /**
     * Shaken or stirred through now and then.
     *
     * @param minutes time between, minutes, 2 to 600
     */
    public static Motion every(double minutes) {
        Require.within("minutes", minutes, new Require.Range(2, 600, "minutes"));
        return new Motion(60 * minutes, Blade.NONE, named("every", minutes));
    }

    private static Phrase named(String key, Object... values) {
        return Phrase.of("science.freezer", "motion." + key, values);
    }

    /** Whether it moves all the time. */
    boolean isSteady() {
        return secondsBetweenTurns < LUMPED_BELOW_S;
    }

    /** Whether it never moves. */
    boolean isStill() {
        return Double.isInfinite(secondsBetweenTurns);
    }

    /** Time between turns in steady motion at a reading, s. */
    double seconds(Reading reading) {
        if (!isSteady() || reading == Reading.LIKELY) {
            return secondsBetweenTurns;
        }
        return reading == Reading.SLOW ? 2 * secondsBetweenTurns : secondsBetweenTurns / 2;
    }
}
