package coldwright.science.bath;

import coldwright.science.Commented;
import coldwright.science.Require;
import coldwright.science.Rounded;
import coldwright.science.Temperature;
import coldwright.science.freezing.Brine;
import coldwright.science.thermal.PureWater;
import coldwright.words.Phrase;
import coldwright.words.Worded;

import java.util.ArrayList;
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
 *
 * @param iceG ice put in, g, more than zero
 * @param saltG salt put in, g, zero or more
 * @param waterG water poured on at room temperature, g, zero or more
 * @param iceC temperature of the ice, °C, −45 to 0; wet ice is at 0
 * @param roomC room temperature, °C, 0 to 40
 * @param vessel the vessel
 */
public record IceAndSalt(
        double iceG, double saltG, double waterG, double iceC, double roomC, Vessel vessel)
        implements Commented, Worded {
    /** Bulk density of crushed ice, kg/L (judgement; cubes 0.55 to 0.6). */
    private static final double HEAP_KG_PER_L = 0.55;

    /** A bath that ends warmer than this freezes slowly, °C (judgement). */
    private static final double WEAK_C = -10;

    /** Ice colder than this comes dry from a freezer, °C (judgement). */
    private static final double DRY_C = -2;

    public IceAndSalt {
        Require.positive("iceG", iceG, "g");
        Require.notNegative("saltG", saltG, "g");
        Require.notNegative("waterG", waterG, "g");
        Require.within("iceC", iceC, new Require.Range(-45, 0, "°C"));
        Require.within("roomC", roomC, new Require.Range(0, 40, "°C"));
    }

    /**
     * Ice straight from a home freezer and salt, in a bare bowl in a room of 20 °C.
     *
     * @param iceG ice, g, more than zero
     * @param saltG salt, g, zero or more
     */
    public static IceAndSalt of(double iceG, double saltG) {
        return new IceAndSalt(iceG, saltG, 0, Temperature.HOME_FREEZER_C, 20, Vessel.BARE_BOWL);
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
        return new IceAndSalt(iceG, saltG, waterG, newIceC, roomC, vessel);
    }

    /**
     * The same with water poured on at room temperature, to wet the lumps.
     *
     * @param newWaterG g, zero or more
     */
    public IceAndSalt withWater(double newWaterG) {
        return new IceAndSalt(iceG, saltG, newWaterG, iceC, roomC, vessel);
    }

    /**
     * The same in another room.
     *
     * @param newRoomC °C, 0 to 40
     */
    public IceAndSalt roomAt(double newRoomC) {
        return new IceAndSalt(iceG, saltG, waterG, iceC, newRoomC, vessel);
    }

    /** The same in another vessel. */
    public IceAndSalt in(Vessel newVessel) {
        return new IceAndSalt(iceG, saltG, waterG, iceC, roomC, newVessel);
    }

    private BathCurve curve() {
        return new BathCurve(iceG + waterG, saltG);
    }

    /** {@return strength of the brine once all has melted and dissolved, salt, % by mass} */
    public double saltPercentWhenMelted() {
        return 100 * saltG / (iceG + saltG + waterG);
    }

    /** {@return temperature it settles at by itself, °C, never below −21.1 unless the ice is} */
    public double startC() {
        return curve().at(startHeatJ()).temperatureC();
    }

    /** {@return temperature at which the last ice melts, °C} */
    public double lastIceC() {
        BathCurve curve = curve();
        return curve.at(curve.heatWhenMeltedJ()).temperatureC();
    }

    /** {@return heat that it takes up until the last ice melts, J} */
    public double heatUntilMeltedJ() {
        return Math.max(0, curve().heatWhenMeltedJ() - startHeatJ());
    }

    /**
     * {@return temperature after some heat has gone in, °C}
     *
     * @param heatJ heat from batch and room together, J
     */
    public double temperatureAfterC(double heatJ) {
        return curve().at(startHeatJ() + checked(heatJ)).temperatureC();
    }

    /**
     * {@return ice left after some heat has gone in, g}
     *
     * @param heatJ heat from batch and room together, J
     */
    public double iceLeftG(double heatJ) {
        return curve().at(startHeatJ() + checked(heatJ)).iceG();
    }

    /**
     * {@return salt still undissolved after some heat has gone in, g}
     *
     * @param heatJ heat from batch and room together, J
     */
    public double looseSaltG(double heatJ) {
        return curve().at(startHeatJ() + checked(heatJ)).looseSaltG();
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
        return new BathRun(this, curve(), startHeatJ());
    }

    @Override
    public List<Phrase> comments() {
        List<Phrase> comments = new ArrayList<>();
        double spareG = saltG - Brine.mostDissolvedSaltG(iceG + waterG);
        if (saltG == 0) {
            comments.add(Phrase.of("science.bath", "no-salt"));
        } else if (spareG > 0) {
            comments.add(Phrase.of("science.bath", "much-salt", spareG));
        } else if (lastIceC() > WEAK_C) {
            double share = 100 * saltG / (iceG + saltG);
            comments.add(
                    Phrase.of(
                            "science.bath",
                            "little-salt",
                            Rounded.tenth(share),
                            Rounded.tenth(lastIceC())));
        }
        if (iceC < DRY_C && waterG == 0) {
            comments.add(Phrase.of("science.bath", "dry-ice-lumps"));
        }
        return List.copyOf(comments);
    }

    @Override
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
        return words();
    }
}
