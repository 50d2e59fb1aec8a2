package coldwright.science.freezer;

import coldwright.science.bath.IceAndSalt;
import coldwright.science.freezing.Brine;
import coldwright.science.mix.Mix;
import coldwright.science.thermal.EnthalpyTable;
import coldwright.science.thermal.ThermalCurve;
import coldwright.words.Phrase;
import coldwright.words.Worded;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Prediction of how a batch freezes: minutes to each stage with their spread, the course, and
 * advice.
 *
 * <pre>{@code
 * var plan = FreezePlan.bag(mix, IceAndSalt.of(2000, 500));
 * plan.minutesToSoftServe();
 * plan.rangeMinutes(Stage.SOFT_SERVE);
 * plan.remarks();
 * }</pre>
 *
 * <p>Model: {@link LayeredBody} for still content, {@link Motion}'s film for moved content, the
 * bath on its phase diagram. The spread is that of the film coefficients and of the motion ({@link
 * Reading}), not of the thermal properties (about 10 % more). Left out: streaming in the still
 * liquid, swelling of the ice, supercooling, the freezer warming up as the batch goes in.
 */
public final class FreezePlan implements Worded {
    /**
     * Thickness of a bag of half a litre to a litre in a bowl of ice, mm (judgement, chosen to
     * match the reported half hour: time is roughly proportional to thickness, and a third with
     * {@link Film#STIRRED_BRINE} instead of {@link Film#SLUSH}).
     */
    public static final double USUAL_BAG_MM = 30;

    /** How much colder than the batch the bath should still be at the end, °C (judgement). */
    private static final double DRIVE_C = 8;

    private static final double HALF_AN_HOUR = 30;

    private final Freeze freeze;
    private final Map<Reading, FreezeSimulation> simulations = new EnumMap<>(Reading.class);

    FreezePlan(Freeze freeze) {
        this.freeze = freeze;
        simulation(Reading.LIKELY);
    }

    /** The simulation at a reading; the fast and the slow one are calculated at first use. */
    private synchronized FreezeSimulation simulation(Reading reading) {
        return simulations.computeIfAbsent(
                reading,
                one -> {
                    FreezeSimulation freezeSimulation =
                            new FreezeSimulation(freeze, freeze.curve(), one);
                    freezeSimulation.go(Stage.HARD);
                    return freezeSimulation;
                });
    }

    /**
     * A bag 30 mm thick in a bowl, kneaded in ice and salt until soft-serve, then hardened at −18
     * °C.
     *
     * @param mix the mix; its mass is the batch's
     */
    public static FreezePlan bag(Mix mix, IceAndSalt bath) {
        return Freeze.of(mix).in(Holder.Bag.flat(USUAL_BAG_MM)).by(bath).plan();
    }

    /**
     * A plastic tub 120 mm wide left still in a home freezer without a fan.
     *
     * @param mix the mix; its mass is the batch's
     * @param freezerC temperature of the freezer, °C
     */
    public static FreezePlan tub(Mix mix, double freezerC) {
        return Freeze.of(mix).by(Cold.freezer(freezerC)).plan();
    }

    /**
     * A can 120 mm wide, cranked by hand in ice and salt until soft-serve, then hardened at −18 °C.
     *
     * @param mix the mix; its mass is the batch's
     */
    public static FreezePlan churn(Mix mix, IceAndSalt bath) {
        return Freeze.of(mix).in(Holder.Churn.of(120)).by(Cold.stirredBath(bath)).plan();
    }

    private FreezeSimulation likely() {
        return simulation(Reading.LIKELY);
    }

    /** {@return time to a stage, minutes; not a number if it is never reached} */
    public double minutesTo(Stage stage) {
        return likely().minutes(stage);
    }

    /** Whether a stage is reached at all. */
    public boolean reaches(Stage stage) {
        return minutesTo(stage) >= 0;
    }

    /** {@return time until it starts to freeze, minutes; not a number if never} */
    public double minutesToThicken() {
        return minutesTo(Stage.THICKENS);
    }

    /** {@return time to soft-serve, minutes; not a number if never} */
    public double minutesToSoftServe() {
        return minutesTo(Stage.SOFT_SERVE);
    }

    /** {@return time until it can be scooped, minutes; not a number if never} */
    public double minutesToScoop() {
        return minutesTo(Stage.SCOOP);
    }

    /** {@return time until it is hard, minutes; not a number if never} */
    public double minutesToHard() {
        return minutesTo(Stage.HARD);
    }

    /**
     * {@return time to a stage with good and with poor contact, minutes from and to; not a number
     * where it is never reached}
     */
    public MinuteRange rangeMinutes(Stage stage) {
        return new MinuteRange(
                simulation(Reading.FAST).minutes(stage), simulation(Reading.SLOW).minutes(stage));
    }

    /**
     * A spread of minutes.
     *
     * @param least with good contact and brisk motion
     * @param most with poor contact and lazy motion
     */
    public record MinuteRange(double least, double most) {}

    /** {@return the state of the batch from step to step, the first at the start} */
    public List<FreezeMoment> course() {
        return List.copyOf(likely().course());
    }

    /**
     * {@return the state of the batch from step to step at another reading, the first at the start}
     */
    public List<FreezeMoment> course(Reading reading) {
        return List.copyOf(simulation(reading).course());
    }

    /** {@return when to shake a batch that is shaken now and then, minutes since the start} */
    public List<Double> shakeAtMinutes() {
        return likely().stirredMinutes();
    }

    /** {@return heat removed until soft-serve, or until the end for a still batch, kJ} */
    public double heatRemovedKJ() {
        return likely().firstJPerG() * freeze.massG() / 1000;
    }

    /** {@return heat that the room brings to the bath in that time, kJ, zero without a bath} */
    public double heatFromRoomKJ() {
        return likely().roomJ() / 1000;
    }

    /** {@return volume of the batch, L} */
    public double volumeL() {
        return likely().volumeL();
    }

    /**
     * {@return the least ice and salt for this batch: enough for its heat to soft-serve and the
     * room's in the time that takes, ending 8 °C below the soft-serve temperature; ice and salt, in
     * the vessel and room of the bath if there is one} Take a quarter more.
     */
    public IceAndSalt leastBath() {
        EnthalpyTable table = freeze.curve().table();
        double half = table.enthalpyAtIceJPerG(Stage.SOFT_SERVE.icePercent());
        double softC = Double.isNaN(half) ? table.coldestC() : table.temperatureC(half);
        double endC = Math.max(Brine.EUTECTIC_C + 0.5, Math.min(-2, softC - DRIVE_C));
        double heatJ =
                freeze.massG()
                        * (table.enthalpyJPerG(freeze.startC())
                                - table.enthalpyJPerG(Math.max(softC, endC)));
        IceAndSalt like =
                freeze.cold() instanceof Cold.Bath cold ? cold.bath() : IceAndSalt.of(1, 0);
        double minutes = minutesToSoftServe();
        double seconds = 60 * (minutes >= 0 ? minutes : HALF_AN_HOUR);
        IceAndSalt bath = IceAndSalt.leastFor(heatJ, endC);
        for (int i = 0; i < 6; i++) {
            double meanC = 0.5 * (Brine.EUTECTIC_C + endC);
            double room = bath.in(like.vessel()).roomWPerK() * (like.roomC() - meanC) * seconds;
            bath = IceAndSalt.leastFor(heatJ + room, endC);
        }
        return bath.in(like.vessel()).roomAt(like.roomC());
    }

    /** {@return advice in any language; empty if there is none} */
    public List<Phrase> comments() {
        return FreezeAdvice.of(freeze, this, likely());
    }

    /** Advice in English. */
    public List<String> remarks() {
        return Phrase.english(comments());
    }

    ThermalCurve curve() {
        return freeze.curve();
    }

    /** The setup that was planned. */
    public Freeze freeze() {
        return freeze;
    }

    @Override
    public Phrase phrase() {
        return FreezeAdvice.phrase(
                "plan",
                freeze.holder().phrase(),
                freeze.motion().phrase(),
                freeze.cold().phrase(),
                times(Stage.THICKENS),
                times(Stage.SOFT_SERVE),
                times(Stage.SCOOP),
                times(Stage.HARD));
    }

    private Phrase times(Stage stage) {
        MinuteRange range = rangeMinutes(stage);
        return reaches(stage)
                ? FreezeAdvice.phrase(
                        "reached", stage.phrase(), minutesTo(stage), range.least(), range.most())
                : FreezeAdvice.phrase("never", stage.phrase());
    }

    @Override
    public String toString() {
        return words();
    }
}
