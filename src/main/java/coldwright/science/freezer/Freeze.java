package coldwright.science.freezer;

import coldwright.science.Require;
import coldwright.science.bath.IceAndSalt;
import coldwright.science.mix.Mix;
import coldwright.science.thermal.ThermalCurve;

/**
 * The setup for freezing a batch: holder, cold and motion. Immutable; {@link #plan} calculates it.
 *
 * <pre>{@code
 * Freeze.of(mix).in(Holder.Bag.flat(20)).by(IceAndSalt.of(2000, 500)).plan();
 * Freeze.of(mix).in(Holder.Tub.round(120)).by(Cold.freezer(-18)).moved(Motion.every(45)).plan();
 * }</pre>
 */
public final class Freeze {
    private final double massG;
    private ThermalCurve curve;
    private double startC = 5;
    private Holder holder = Holder.Tub.round(120);
    private Cold cold = Cold.freezer(-18);
    private Motion motion = Motion.STILL;
    private Cold hardening = cold;

    private Freeze(ThermalCurve curve, double massG) {
        this.curve = curve;
        this.massG = massG;
    }

    /** A copy to be changed before it is returned. */
    private Freeze copy() {
        Freeze copy = new Freeze(curve, massG);
        copy.startC = startC;
        copy.holder = holder;
        copy.cold = cold;
        copy.motion = motion;
        copy.hardening = hardening;
        return copy;
    }

    /**
     * A mix from the refrigerator, at 5 °C, in a plastic tub 120 mm wide, left still in a home
     * freezer at −18 °C.
     *
     * @param mix the mix; its mass is the batch's
     * @throws IllegalArgumentException if it contains no water
     */
    public static Freeze of(Mix mix) {
        return of(ThermalCurve.of(mix), mix.massG());
    }

    /**
     * As {@link #of(Mix)}, from a thermal curve.
     *
     * @param curve thermal curve of the batch
     * @param massG mass of the batch, g
     */
    public static Freeze of(ThermalCurve curve, double massG) {
        return new Freeze(curve, Require.positive("massG", massG, "g"));
    }

    /**
     * The same from another temperature.
     *
     * @param newStartC temperature of the mix, °C, −2 to 90; a hot mix is better chilled first
     */
    public Freeze from(double newStartC) {
        Require.within("startC", newStartC, new Require.Range(-2, 90, "°C"));
        Freeze copy = copy();
        copy.startC = newStartC;
        return copy;
    }

    /**
     * The same with air beaten in from the start.
     *
     * @param overrunPercent overrun, % by volume of the mix, 0 to 200
     */
    public Freeze withOverrun(double overrunPercent) {
        Freeze copy = copy();
        copy.curve = curve.withOverrun(overrunPercent);
        return copy;
    }

    /**
     * The same in another bag, tub or churn. A bag is kneaded and a churn cranked until {@link
     * #moved} says otherwise.
     *
     * @param newHolder what the batch is in
     */
    public Freeze in(Holder newHolder) {
        Freeze copy = copy();
        copy.holder = newHolder;
        copy.motion = Motion.STILL;
        if (newHolder instanceof Holder.Bag) {
            copy.motion = Motion.KNEADED;
        } else if (newHolder instanceof Holder.Churn) {
            copy.motion = Motion.CRANKED;
        }
        return copy;
    }

    /**
     * The same by another cold; a freezer also hardens it, until {@link #hardenedBy} says
     * otherwise.
     *
     * @param newCold freezer, machine or bath
     */
    public Freeze by(Cold newCold) {
        Freeze copy = copy();
        copy.cold = newCold;
        if (newCold instanceof Cold.Steady) {
            copy.hardening = newCold;
        }
        return copy;
    }

    /**
     * The same in a bath of lumps that only the batch itself moves.
     *
     * @param bath ice and salt
     */
    public Freeze by(IceAndSalt bath) {
        return by(Cold.bath(bath));
    }

    /**
     * The same, moved in another way.
     *
     * @param newMotion how it is moved
     */
    public Freeze moved(Motion newMotion) {
        Freeze copy = copy();
        copy.motion = newMotion;
        return copy;
    }

    /**
     * The same, hardened in another freezer once it is soft-serve.
     *
     * @param newHardening the freezer; null to stop at soft-serve
     */
    public Freeze hardenedBy(Cold newHardening) {
        Freeze copy = copy();
        copy.hardening = newHardening;
        return copy;
    }

    /**
     * Calculates the freezing.
     *
     * @return times, course and comments
     */
    public FreezePlan plan() {
        return new FreezePlan(this);
    }

    /**
     * The thickest bag that is soft-serve in time.
     *
     * @param minutes time available, minutes, more than zero
     * @return thickness, mm, 3 to 100; not a number if even the thinnest takes longer
     * @throws IllegalStateException if the batch is not in a bag
     */
    public double thickestBagMm(double minutes) {
        Require.positive("minutes", minutes, "minutes");
        if (!(holder instanceof Holder.Bag bag)) {
            throw new IllegalStateException(
                    "the batch is in %s; it must be in a bag".formatted(holder.words()));
        }
        double low = 3;
        double high = 100;
        if (!(softServe(new Holder.Bag(low, bag.wall())) <= minutes)) {
            return Double.NaN;
        }
        for (int i = 0; i < 10; i++) {
            double middle = (low + high) / 2;
            if (softServe(new Holder.Bag(middle, bag.wall())) <= minutes) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private double softServe(Holder.Bag bag) {
        Freeze other = copy();
        other.holder = bag;
        FreezeSimulation freezeSimulation = new FreezeSimulation(other, curve, Reading.LIKELY);
        freezeSimulation.go(Stage.SOFT_SERVE);
        return freezeSimulation.minutes(Stage.SOFT_SERVE);
    }

    ThermalCurve curve() {
        return curve;
    }

    /** {@return mass of the batch, g} */
    public double massG() {
        return massG;
    }

    /** {@return temperature of the mix, °C} */
    public double startC() {
        return startC;
    }

    /** {@return the bag, tub, box or churn of the batch} */
    public Holder holder() {
        return holder;
    }

    /** The source of cold. */
    public Cold cold() {
        return cold;
    }

    /** How the batch is moved. */
    public Motion motion() {
        return motion;
    }

    /** The freezer where it hardens after soft-serve. */
    public Cold hardening() {
        return hardening;
    }
}
