package coldwright.batch;

/** Freezing conditions if the recipe gives none (common practice, no source). */
public final class FreezingDefaults {
    /** A smaller mass takes as long as an egg cup full, g. */
    public static final double LEAST_TIMED_G = 50;

    /** Ice for each gram of batch, g. */
    public static final double ICE_PER_BATCH = 3;

    /** Salt for each gram of ice, g. */
    public static final double SALT_PER_ICE = 0.25;

    private FreezingDefaults() {}
}
