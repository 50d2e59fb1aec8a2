package coldwright.science.freezer;

import coldwright.science.Require;
import coldwright.science.Temperature;
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
 *
 * @param curve thermal curve of the batch
 * @param massG mass of the batch, g
 * @param startC temperature of the mix, °C
 * @param holder the bag, tub, box or churn
 * @param cold the source of cold
 * @param motion how it is moved
 * @param hardening the freezer where it hardens after soft-serve; null for none
 */
public record Freeze(
        ThermalCurve curve,
        double massG,
        double startC,
        Holder holder,
        Cold cold,
        Motion motion,
        Cold hardening) {
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
     * As {@link #of(Mix)}, from the batch's thermal curve.
     *
     * @param massG mass of the batch, g
     */
    public static Freeze of(ThermalCurve curve, double massG) {
        Cold freezer = Cold.freezer(Temperature.HOME_FREEZER_C);
        Require.positive("massG", massG, "g");
        return new Freeze(curve, massG, 5, Holder.Tub.round(120), freezer, Motion.STILL, freezer);
    }

    /**
     * The same from another temperature.
     *
     * @param newStartC temperature of the mix, °C, −2 to 90; a hot mix is better chilled first
     */
    public Freeze from(double newStartC) {
        Require.within("startC", newStartC, new Require.Range(-2, 90, "°C"));
        return new Freeze(curve, massG, newStartC, holder, cold, motion, hardening);
    }

    /**
     * The same with air beaten in from the start.
     *
     * @param overrunPercent overrun, % by volume of the mix, 0 to 200
     */
    public Freeze withOverrun(double overrunPercent) {
        ThermalCurve airy = curve.withOverrun(overrunPercent);
        return new Freeze(airy, massG, startC, holder, cold, motion, hardening);
    }

    /**
     * The same in another bag, tub or churn. A bag is kneaded and a churn cranked until {@link
     * #moved} says otherwise.
     */
    public Freeze in(Holder newHolder) {
        Motion usual =
                newHolder instanceof Holder.Bag
                        ? Motion.KNEADED
                        : newHolder instanceof Holder.Churn ? Motion.CRANKED : Motion.STILL;
        return new Freeze(curve, massG, startC, newHolder, cold, usual, hardening);
    }

    /**
     * The same by another freezer, machine or bath; a freezer also hardens it, until {@link
     * #hardenedBy} says otherwise.
     */
    public Freeze by(Cold newCold) {
        Cold then = newCold instanceof Cold.Steady ? newCold : hardening;
        return new Freeze(curve, massG, startC, holder, newCold, motion, then);
    }

    /** The same in a bath of ice and salt in lumps that only the batch itself moves. */
    public Freeze by(IceAndSalt bath) {
        return by(Cold.bath(bath));
    }

    /** The same, moved in another way. */
    public Freeze moved(Motion newMotion) {
        return new Freeze(curve, massG, startC, holder, cold, newMotion, hardening);
    }

    /**
     * The same, hardened in another freezer once it is soft-serve.
     *
     * @param newHardening the freezer; null to stop at soft-serve
     */
    public Freeze hardenedBy(Cold newHardening) {
        return new Freeze(curve, massG, startC, holder, cold, motion, newHardening);
    }

    /** Calculates times, course and comments. */
    public FreezePlan plan() {
        return new FreezePlan(this);
    }
}
