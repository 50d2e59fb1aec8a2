package coldwright.science.crystal;

/**
 * Finds the undercooling S at which growth and melting of all crystals together make just the ice
 * that the freezing curve asks for.
 *
 * <p>Each edge moves by pull·(S R − 1); what falls below zero has melted away. The ice after the
 * step rises with S, so Newton's method from the linear guess ends in two or three turns.
 */
record IceBalance(double[] edges, double[] numbers, int size, double[] radius, double[] pull) {
    private static final int NEWTON_STEPS = 12;
    private static final double CONSERVED_SHARE = 1e-9;

    double solve(double wantedSumCubes) {
        double s = linearGuess(wantedSumCubes);
        for (int i = 0; i < NEWTON_STEPS; i++) {
            double sum = 0;
            double slope = 0;
            double low = moved(0, s);
            double lowSlope = pull[0] * radius[0];
            for (int j = 0; j < size; j++) {
                double high = moved(j + 1, s);
                double highSlope = pull[j + 1] * radius[j + 1];
                if (low >= 0) {
                    sum += numbers[j] * (low + high) / 2;
                    slope += numbers[j] * (lowSlope + highSlope) / 2;
                } else if (high > 0) {
                    double kept = high / (high - low);
                    sum += numbers[j] * kept * high / 2;
                    slope +=
                            numbers[j]
                                    * (kept * highSlope + kept * kept / 2 * (lowSlope - highSlope));
                }
                low = high;
                lowSlope = highSlope;
            }
            double miss = wantedSumCubes - sum;
            if (Math.abs(miss) <= CONSERVED_SHARE * wantedSumCubes || slope <= 0) {
                break;
            }
            s += miss / slope;
        }
        return s;
    }

    /** Where an edge comes to lie, µm³. */
    private double moved(int j, double s) {
        return edges[j] + pull[j] * (s * radius[j] - 1);
    }

    /** Exact as long as no crystal melts away. */
    private double linearGuess(double wantedSumCubes) {
        double now = 0;
        double first = 0;
        double zeroth = 0;
        for (int j = 0; j < size; j++) {
            now += numbers[j] * (edges[j] + edges[j + 1]) / 2;
            first += numbers[j] * (pull[j] * radius[j] + pull[j + 1] * radius[j + 1]) / 2;
            zeroth += numbers[j] * (pull[j] + pull[j + 1]) / 2;
        }
        return (wantedSumCubes - now + zeroth) / first;
    }
}
