package coldwright.science.crystal;

import coldwright.science.Band;
import coldwright.science.crystal.GrowthIntegrator.Motion;

/**
 * A method of freezing a batch. Times are common practice, no source; how often the cold wall is
 * cleared of ice is by judgement (it hardly changes the result for a moved batch, because
 * coarsening soon removes the effect of the first size).
 */
public enum Method {
    /** A flat bag in ice and salt, kneaded and turned all the time. */
    BAG(new Band(30, 35, 45), -12, Motion.swept(3, 1.0 / 1000)),
    /** A machine with a scraped wall. */
    MACHINE(new Band(15, 20, 25), -20, Motion.swept(1, 1.0 / 300)),
    /** A tub in a home freezer, shaken or stirred each 45 minutes. */
    SHAKEN_TUB(new Band(180, 240, 360), -18, Motion.swept(2700, 1.0 / 3000)),
    /** A tub in a home freezer, left alone overnight. */
    STILL_TUB(new Band(360, 600, 720), -18, Motion.STILL);

    private static final double NEAR_COLD_C = 1;
    private static final double TUB_NEAR_COLD_C = 3;

    private final Band minutes;
    private final double coldC;
    private final Motion motion;

    Method(Band minutes, double coldC, Motion motion) {
        this.minutes = minutes;
        this.coldC = coldC;
        this.motion = motion;
    }

    /** {@return usual time from the fridge to the end of freezing, minutes} */
    public Band usualMinutes() {
        return minutes;
    }

    /** {@return temperature of the bath, wall or freezer, °C} */
    public double coldC() {
        return coldC;
    }

    /**
     * Temperature at which freezing ends: a tub's when it is nearly as cold as the freezer,
     * another's when half the water is ice, unless that is colder than its wall can reach.
     */
    double endC(double halfFrozenC) {
        boolean tub = this == SHAKEN_TUB || this == STILL_TUB;
        return tub ? coldC + TUB_NEAR_COLD_C : Math.max(halfFrozenC, coldC + NEAR_COLD_C);
    }

    /** {@return whether the batch moves while it freezes: false only for the still tub} */
    public boolean moved() {
        return motion.moved();
    }

    /** Its clearing of the wall and breakage, by judgement. */
    Motion motion() {
        return motion;
    }
}
