package coldwright.science.freezer;

import coldwright.science.sensory.Firmness;
import coldwright.words.Worded;

/** How far a batch has frozen. */
public enum Stage implements Worded {
    /** 5 % of the water is ice: it starts to freeze (judgement). */
    THICKENS(5),
    /** Half the water is ice, when churning stops (university dairy text, seen). */
    SOFT_SERVE(50),
    /** 65 % of the water is ice, the soft end of the 65 to 75 % at serving (memory). */
    SCOOP(Firmness.SCOOPABLE_LEAST_ICE_PERCENT),
    /** The middle is at −15 °C: hardened (industry asks −15 to −18 °C, memory). */
    HARD(101);

    /** Temperature in the middle of a hardened batch, °C. */
    public static final double HARD_C = -15;

    private final double icePercent;

    Stage(double icePercent) {
        this.icePercent = icePercent;
    }

    /**
     * {@return mean ice at which the stage is reached; above 100 where temperature decides, % of
     * the water}
     */
    public double icePercent() {
        return icePercent;
    }
}
