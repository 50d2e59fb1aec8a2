package coldwright.science.freezer;

import coldwright.science.sensory.Firmness;

/** How far a batch has frozen. */
public enum Stage {
    /** One twentieth of the water is ice: it begins to thicken (judgement). */
    THICKENS("begins to thicken", 5),
    /** Half the water is ice, when churning stops (university dairy text, seen). */
    SOFT_SERVE("soft-serve", 50),
    /** 65 % of the water is ice, the soft end of the 65 to 75 % at serving (memory). */
    SCOOP("to scoop", Firmness.SCOOPABLE_LEAST_ICE_PERCENT),
    /** The middle is at −15 °C: hardened (industry asks −15 to −18 °C, memory). */
    HARD("hard", 101);

    /** Temperature in the middle of a hardened batch, °C. */
    public static final double HARD_C = -15;

    private final String words;
    private final double icePercent;

    Stage(String words, double icePercent) {
        this.words = words;
        this.icePercent = icePercent;
    }

    /**
     * In plain words.
     *
     * @return such as {@code soft-serve}
     */
    public String words() {
        return words;
    }

    /**
     * Mean ice at which it is reached; above 100 where temperature decides.
     *
     * @return % of the water
     */
    public double icePercent() {
        return icePercent;
    }
}
