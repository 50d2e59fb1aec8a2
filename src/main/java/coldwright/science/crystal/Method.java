package coldwright.science.crystal;

import coldwright.science.Band;

/**
 * A method of freezing a batch. Times are common practice, no source; how often the cold wall is
 * cleared of ice is by judgement (it hardly changes the result for a moved batch, because
 * coarsening soon removes the effect of the first size).
 */
public enum Method {
    /** A flat bag in ice and salt, kneaded and turned all the time. */
    BAG(new Band(30, 35, 45), -12, 3, 1.0 / 1000, true),
    /** A machine with a scraped wall. */
    MACHINE(new Band(15, 20, 25), -20, 1, 1.0 / 300, true),
    /** A tub in a home freezer, shaken or stirred each 45 minutes. */
    SHAKEN_TUB(new Band(180, 240, 360), -18, 2700, 1.0 / 3000, true),
    /** A tub in a home freezer, left alone overnight. */
    STILL_TUB(new Band(360, 600, 720), -18, 60, 0, false);

    private static final double NEAR_COLD_C = 1;
    private static final double TUB_NEAR_COLD_C = 3;

    private final Band minutes;
    private final double coldC;
    private final double clearedEveryS;
    private final double breakagePerS;
    private final boolean moved;

    Method(Band minutes, double coldC, double clearedEveryS, double breakagePerS, boolean moved) {
        this.minutes = minutes;
        this.coldC = coldC;
        this.clearedEveryS = clearedEveryS;
        this.breakagePerS = breakagePerS;
        this.moved = moved;
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
        return moved;
    }

    /** Share of crystals of 50 µm radius that break in a second; by judgement. */
    double breakagePerS() {
        return breakagePerS;
    }

    GrowthIntegrator.Motion motion(GrowthIntegrator.Variant variant) {
        return new GrowthIntegrator.Motion(
                clearedEveryS, moved ? variant.wallShare() : 0, moved ? breakagePerS : 0);
    }
}
