package coldwright.science.crystal;

/**
 * Finds the undercooling S at which growth and melting of all crystals together give the ice of the
 * freezing curve.
 *
 * <p>Each edge moves to rest + S·rise; crystals that fall below zero have melted. The ice after the
 * step rises with S, so Newton's method, started from the guess that none melts away, converges in
 * two or three steps.
 *
 * @param numbers crystals in each class
 * @param rest the edges without undercooling, µm³; one more than classes
 * @param rise how far each edge moves up with S, µm⁴
 */
record IceBalance(double[] numbers, double[] rest, double[] rise) {
    private static final int NEWTON_STEPS = 12;
    private static final double CONSERVED_SHARE = 1e-9;

    /** Solves for S, 1/µm, with so many classes and a sum of R³ after the step, µm³. */
    double solve(int size, double wantedSumCubes) {
        double[] crystals = numbers;
        double[] atRest = rest;
        double[] perUndercooling = rise;
        double s = (2 * wantedSumCubes - twice(rest, size)) / twice(rise, size);
        for (int i = 0; i < NEWTON_STEPS; i++) {
            double sum = 0;
            double slope = 0;
            double lowSlope = perUndercooling[0];
            double low = atRest[0] + s * lowSlope;
            for (int j = 0; j < size; j++) {
                double highSlope = perUndercooling[j + 1];
                double high = atRest[j + 1] + s * highSlope;
                if (low >= 0) {
                    sum += crystals[j] * (low + high);
                    slope += crystals[j] * (lowSlope + highSlope);
                } else if (high > 0) {
                    double kept = high / (high - low);
                    sum += crystals[j] * kept * high;
                    slope += crystals[j] * kept * (2 * highSlope + kept * (lowSlope - highSlope));
                }
                low = high;
                lowSlope = highSlope;
            }
            double miss = wantedSumCubes - sum / 2;
            if (Math.abs(miss) <= CONSERVED_SHARE * wantedSumCubes || slope <= 0) {
                break;
            }
            s += 2 * miss / slope;
        }
        return s;
    }

    private double twice(double[] atEdges, int size) {
        double[] crystals = numbers;
        double sum = 0;
        for (int j = 0; j < size; j++) {
            sum += crystals[j] * (atEdges[j] + atEdges[j + 1]);
        }
        return sum;
    }
}
