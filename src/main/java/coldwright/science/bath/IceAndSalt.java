package coldwright.science.bath;

import coldwright.science.Require;
import coldwright.science.Rounded;
import coldwright.science.Temperature;
import coldwright.science.freezing.Brine;
import coldwright.science.thermal.PureWater;
import coldwright.words.Phrase;

import java.util.List;

/**
 * A bath of ice and salt before the batch goes in. Immutable.
 *
 * <pre>{@code
 * var bath = IceAndSalt.of(2000, 500).in(Vessel.COOLER_BOX);
 * bath.startC();              // how cold it gets by itself
 * bath.temperatureAfterC(150_000); // after 150 kJ
 * }</pre>
 *
 * <p>Model: well stirred and in equilibrium at each moment ({@link BathCurve}'s diagram), so it
 * never goes below −21.1 °C. Large lumps, coarse salt and an unstirred bath lag behind: a kitchen
 * bath reads a few degrees warmer. Masses, never volumes: a cup of fine salt weighs about twice a
 * cup of crushed ice.
 *
 * <p>Caution: this bath freezes skin in seconds to minutes and burns like frost: gloves, no bare
 * hands, children only with help; rinse the outside of a bag before it is opened.
 */
public final class IceAndSalt {
    /** Bulk density of crushed ice, kg/L (judgement; cubes 0.55 to 0.6). */
    private static final double HEAP_KG_PER_L = 0.55;

    private final double iceG;
    private final double saltG;
    private final double iceC;
    private final double waterG;
    private final double roomC;
    private final Vessel vessel;
    private final BathCurve curve;

    private IceAndSalt(double[] masses, double iceC, double roomC, Vessel vessel, BathCurve curve) {
        iceG = masses[0];
        saltG = masses[1];
        waterG = masses[2];
        this.iceC = iceC;
        this.roomC = roomC;
        this.vessel = vessel;
        this.curve = curve == null ? new BathCurve(iceG + waterG, saltG) : curve;
    }

    /**
     * Ice straight from a home freezer and salt, in a bare bowl in a room of 20 °C.
     *
     * @param iceG ice, g, more than zero
     * @param saltG salt, g, zero or more
     */
    public static IceAndSalt of(double iceG, double saltG) {
        double[] masses = {
            Require.positive("iceG", iceG, "g"), Require.notNegative("saltG", saltG, "g"), 0
        };
        return new IceAndSalt(masses, Temperature.HOME_FREEZER_C, 20, Vessel.BARE_BOWL, null);
    }

    /**
     * The least ice and salt, from home freezer and room, that take up an amount of heat and reach
     * a given temperature just as the last ice melts.
     *
     * @param heatJ heat to take up, J, more than zero
     * @param endC temperature at the end, °C, −21.1 to −1
     * @return the bath; take a quarter more, because lumps against the wall are never used up
     */
    public static IceAndSalt leastFor(double heatJ, double endC) {
        Require.positive("heatJ", heatJ, "J");
        Require.within("endC", endC, new Require.Range(Brine.EUTECTIC_C, -1, "°C"));
        double strength = Brine.saltPercentAtIceLine(endC);
        double salt = strength / (100 - strength);
        double before =
                PureWater.iceEnthalpyJPerG(Temperature.HOME_FREEZER_C)
                        + salt * BrineHeat.SOLID_SALT_JPERGK * 20;
        double after = (1 + salt) * BrineHeat.enthalpyJPerG(strength, endC);
        double ice = heatJ / (after - before);
        return of(ice, ice * salt);
    }

    /**
     * The same with ice at another temperature.
     *
     * @param newIceC °C, −45 to 0; wet ice is at 0
     */
    public IceAndSalt iceAt(double newIceC) {
        Require.within("iceC", newIceC, new Require.Range(-45, 0, "°C"));
        return new IceAndSalt(masses(), newIceC, roomC, vessel, curve);
    }

    /**
     * The same with water poured on at room temperature, to wet the lumps.
     *
     * @param newWaterG g, zero or more
     */
    public IceAndSalt withWater(double newWaterG) {
        double[] masses = {iceG, saltG, Require.notNegative("waterG", newWaterG, "g")};
        return new IceAndSalt(masses, iceC, roomC, vessel, null);
    }

    /**
     * The same in another room.
     *
     * @param newRoomC °C, 0 to 40
     */
    public IceAndSalt roomAt(double newRoomC) {
        Require.within("roomC", newRoomC, new Require.Range(0, 40, "°C"));
        return new IceAndSalt(masses(), iceC, newRoomC, vessel, curve);
    }

    /** The same in another vessel. */
    public IceAndSalt in(Vessel newVessel) {
        return new IceAndSalt(masses(), iceC, roomC, newVessel, curve);
    }

    private double[] masses() {
        return new double[] {iceG, saltG, waterG};
    }

    /** {@return ice put in, g} */
    public double iceG() {
        return iceG;
    }

    /** {@return salt put in, g} */
    public double saltG() {
        return saltG;
    }

    /** {@return room temperature, °C} */
    public double roomC() {
        return roomC;
    }

    /** The vessel. */
    public Vessel vessel() {
        return vessel;
    }

    /** {@return strength of the brine once all has melted and dissolved, salt, % by mass} */
    public double saltPercentWhenMelted() {
        return 100 * saltG / (iceG + saltG + waterG);
    }

    /** {@return temperature it settles at by itself, °C, never below −21.1 unless the ice is} */
    public double startC() {
        return curve.temperatureC(startHeatJ());
    }

    /** {@return temperature at which the last ice melts, °C} */
    public double lastIceC() {
        return curve.temperatureC(curve.heatWhenMeltedJ());
    }

    /** {@return heat that it takes up until the last ice melts, J} */
    public double heatUntilMeltedJ() {
        return Math.max(0, curve.heatWhenMeltedJ() - startHeatJ());
    }

    /**
     * {@return temperature after some heat has gone in, °C}
     *
     * @param heatJ heat from batch and room together, J
     */
    public double temperatureAfterC(double heatJ) {
        return curve.temperatureC(startHeatJ() + checked(heatJ));
    }

    /**
     * {@return ice left after some heat has gone in, g}
     *
     * @param heatJ heat from batch and room together, J
     */
    public double iceLeftG(double heatJ) {
        return curve.iceG(startHeatJ() + checked(heatJ));
    }

    /**
     * {@return salt still undissolved after some heat has gone in, g}
     *
     * @param heatJ heat from batch and room together, J
     */
    public double looseSaltG(double heatJ) {
        return curve.looseSaltG(startHeatJ() + checked(heatJ));
    }

    private static double checked(double heatJ) {
        return Require.notNegative("heatJ", heatJ, "J");
    }

    private double startHeatJ() {
        return iceG * PureWater.iceEnthalpyJPerG(iceC)
                + saltG * BrineHeat.SOLID_SALT_JPERGK * roomC
                + waterG * BrineHeat.enthalpyJPerG(0, roomC);
    }

    /**
     * {@return heat from the room per degree of difference, for a vessel just large enough and as
     * wide as high, W/K}
     */
    public double roomWPerK() {
        double litres = (iceG / HEAP_KG_PER_L + waterG + saltG) / 1000;
        double areaM2 = 1.5 * Math.PI * Math.pow(4 * litres / 1000 / Math.PI, 2 / 3.);
        return vessel.coefficientWPerM2K() * areaM2;
    }

    /** Starts the clock. */
    public BathRun start() {
        return new BathRun(this, curve, startHeatJ());
    }

    /**
     * {@return how long it stays cold without a batch, minutes, at most two days}
     *
     * @param limitC temperature that counts as spent, °C, −21 to 10
     */
    public double minutesBelow(double limitC) {
        Require.within(
                "limitC", Temperature.require("limitC", limitC), new Require.Range(-21, 10, "°C"));
        return start().minutesBelow(limitC);
    }

    double waterG() {
        return waterG;
    }

    double iceC() {
        return iceC;
    }

    /** {@return advice in any language; empty if there is none} */
    public List<Phrase> comments() {
        return BathAdvice.of(this);
    }

    /** {@return advice in English; empty if there is none} */
    public List<String> remarks() {
        return Phrase.english(comments());
    }

    /** {@return ice, salt and vessel in any language} */
    public Phrase phrase() {
        return Phrase.of(
                "science.bath",
                "ice-and-salt",
                Rounded.tenth(iceG),
                Rounded.tenth(saltG),
                vessel.phrase());
    }

    @Override
    public String toString() {
        return phrase().english();
    }
}
