package coldwright.science.freezer;

/** One march of a batch at the likely reading of the films, for measuring. */
public final class OneMarch {
    private OneMarch() {}

    /**
     * Marches to soft-serve.
     *
     * @param freeze how the batch is frozen
     * @return minutes to soft-serve
     */
    public static double minutesToSoftServe(Freeze freeze) {
        March march = new March(freeze, freeze.curve(), Reading.LIKELY);
        march.go(Stage.SOFT_SERVE);
        return march.minutes(Stage.SOFT_SERVE);
    }
}
