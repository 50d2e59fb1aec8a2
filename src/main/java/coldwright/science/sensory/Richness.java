package coldwright.science.sensory;

import coldwright.science.mix.Mix;
import coldwright.words.Worded;

/**
 * The richness of a mix, by its fat.
 *
 * <p>Limits: common practice, no source: gelato far below 10 % fat, ice cream 10 to 20 %, 14 %
 * often preferred. Below 30 % total solids a mix tastes thin whatever its fat (from memory).
 */
public enum Richness implements Worded {
    NO_FAT(0.5),
    LIGHT(4),
    MODERATE(9),
    RICH(14),
    VERY_RICH(20),
    HEAVY(100);

    /** Below this a mix tastes thin, % total solids; from memory. */
    public static final double THIN_SOLIDS_PERCENT = 30;

    /** Slack for binary fractions, so that a mix made to 14 % counts as 14 %. */
    private static final double ROUNDING = 1e-9;

    private final double upToFatPercent;

    Richness(double upToFatPercent) {
        this.upToFatPercent = upToFatPercent;
    }

    /** Richness of a mix. */
    public static Richness of(Mix mix) {
        for (Richness richness : values()) {
            if (mix.fatPercent() <= richness.upToFatPercent + ROUNDING) {
                return richness;
            }
        }
        return HEAVY;
    }

    /** {@return whether the body is thin: below {@value #THIN_SOLIDS_PERCENT} % total solids} */
    public static boolean isThin(Mix mix) {
        return mix.totalSolidsPercent() < THIN_SOLIDS_PERCENT;
    }

    /** {@return most fat of this class, % by mass} */
    public double upToFatPercent() {
        return upToFatPercent;
    }
}
