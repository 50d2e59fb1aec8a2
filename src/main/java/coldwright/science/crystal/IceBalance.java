package coldwright.science.crystal;

/**
 * Finds the undercooling S at which growth and melting of all crystals together give the ice of the
 * freezing curve.
 *
 * <p>Each edge moves to rest + S·rise; crystals that fall below zero have melted. The ice after the
 * step rises with S, so Newton's method, started from the guess that none melts away, converges in
 * two or three steps.
 */
final class IceBalance {
    private static final int NEWTON_STEPS = 12;
    private static final double CONSERVED_SHARE = 1e-9;

    private IceBalance() {}

    /**
     * S, 1/µm, for the crystals in each class and a sum of R³ after the step, µm³; the edges
     * without undercooling, µm³, and how far each moves up with S, µm⁴, are each one more than
     * classes.
     */
    static double undercooling(double[] numbers, double[][] restAndRise, double wantedSumCubes) {
        double[] rest = restAndRise[0];
        double[] rise = restAndRise[1];
        double s = (2 * wantedSumCubes - twice(numbers, rest)) / twice(numbers, rise);
        for (int i = 0; i < NEWTON_STEPS; i++) {
            double sum = 0;
            double slope = 0;
            double lowSlope = rise[0];
            double low = rest[0] + s * lowSlope;
            for (int j = 0; j < numbers.length; j++) {
                double highSlope = rise[j + 1];
                double high = rest[j + 1] + s * highSlope;
                if (low >= 0) {
                    sum += numbers[j] * (low + high);
                    slope += numbers[j] * (lowSlope + highSlope);
                } else if (high > 0) {
                    double kept = high / (high - low);
                    sum += numbers[j] * kept * high;
                    slope += numbers[j] * kept * (2 * highSlope + kept * (lowSlope - highSlope));
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

    /**
     * Twice the sum over all crystals of a value at the edges, the mean of both edges of a class.
     */
    static double twice(double[] numbers, double[] atEdges) {
        double sum = 0;
        for (int j = 0; j < numbers.length; j++) {
            sum += numbers[j] * (atEdges[j] + atEdges[j + 1]);
        }
        return sum;
    }
}
