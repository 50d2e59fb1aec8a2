package coldwright.science.freezer;

/** One march of a batch at the likely reading of the films, for measuring. */
public final class OneSimulation {
    private OneSimulation() {}

    /**
     * Marches to soft-serve.
     *
     * @param freeze how the batch is frozen
     * @return minutes to soft-serve
     */
    public static double minutesToSoftServe(Freeze freeze) {
        FreezeSimulation freezeSimulation =
                new FreezeSimulation(freeze, freeze.curve(), Reading.LIKELY);
        freezeSimulation.go(Stage.SOFT_SERVE);
        return freezeSimulation.minutes(Stage.SOFT_SERVE);
    }
}
