package coldwright.science.freezer;

import coldwright.words.Worded;

/**
 * The film of air or brine that cold must pass to reach a wall.
 *
 * <p>Spread and middle in W/(m²·K). The middle is the geometric mean of the ends.
 */
public enum Film implements Worded {
    /** Home freezer without a fan, radiation included: 5 to 10 (food engineering texts, memory). */
    STILL_AIR(5, 10),
    /** Freezer with a fan: 20 to 40 (food engineering texts, memory). */
    MOVING_AIR(20, 40),
    /** Brine and ice left alone: free convection, 50 to 100 (Y. A. Çengel, course notes). */
    STILL_BRINE(50, 100),
    /**
     * Lumps, salt and brine that only the bag or can moves: from the low end of free convection to
     * the low end of stirred brine (judgement between those two sources).
     */
    SLUSH(50, 200),
    /** Brine and ice kept moving: 200 to 600 (food engineering texts, memory). */
    STIRRED_BRINE(200, 600),
    /** A wall cooled by boiling refrigerant: 500 to 2000 (order of magnitude, from memory). */
    REFRIGERANT(500, 2000);

    private final double least;
    private final double most;

    Film(double least, double most) {
        this.least = least;
        this.most = most;
    }

    /** {@return the coefficient, W/(m²·K)} */
    public double coefficientWPerM2K(Reading reading) {
        if (reading == Reading.LIKELY) {
            return Math.sqrt(least * most);
        }
        return reading == Reading.SLOW ? least : most;
    }
}
