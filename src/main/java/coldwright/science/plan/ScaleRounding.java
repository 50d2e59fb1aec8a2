package coldwright.science.plan;

/** Weights as kitchen scales show them: 0.1 g below 100 g, 1 g above, 10 g from 10 kg. */
public final class ScaleRounding {
    private static final double FINE_BELOW_G = 100;
    private static final double COARSE_FROM_G = 10_000;

    private ScaleRounding() {}

    /**
     * Rounds a weight.
     *
     * @param massG g, zero or more
     * @return the nearest weight that the scales show, g
     */
    public static double roundedG(double massG) {
        return massG < FINE_BELOW_G
                ? Math.round(massG * 10) / 10.0
                : massG < COARSE_FROM_G ? Math.rint(massG) : 10 * Math.rint(massG / 10);
    }
}
