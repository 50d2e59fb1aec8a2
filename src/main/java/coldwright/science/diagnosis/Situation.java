package coldwright.science.diagnosis;

import coldwright.science.Band;
import coldwright.science.Require;
import coldwright.science.Temperature;
import coldwright.science.crystal.Method;
import coldwright.science.freezer.Stage;
import coldwright.science.mix.Mix;
import coldwright.science.plan.BatchState;
import coldwright.science.plan.Frozen;
import coldwright.science.plan.Making;
import coldwright.science.style.DietRules;
import coldwright.science.style.Pieces;
import coldwright.science.style.Style;
import coldwright.science.style.StyleGuess;

import java.util.Objects;
import java.util.Optional;

/**
 * A batch with its freezing, storage and serving temperature.
 *
 * @param mix what is in it
 * @param coldC temperature of the bath, wall or freezer that freezes it, °C
 * @param servingC temperature at which it is served, °C
 * @param overrunPercent how much its volume grew by air, %
 * @param crystalUm mean size of its ice crystals by now with its band, µm, if it was calculated
 * @param steadyUm the mean size after the same time in a freezer of steady temperature, µm, if this
 *     one wasn't steady
 */
public record Situation(
        Mix mix,
        double coldC,
        double servingC,
        double overrunPercent,
        Optional<Band> crystalUm,
        Optional<Band> steadyUm) {
    /** Where ice cream is scooped, °C (from memory: −15 to −12 °C in shops). */
    public static final double SERVING_C = -12;

    public Situation {
        Objects.requireNonNull(mix, "mix");
        Temperature.require("coldC", coldC);
        Temperature.require("servingC", servingC);
        Require.within("overrunPercent", overrunPercent, new Require.Range(0, 200, "%"));
    }

    /**
     * A batch in a home freezer, served at −12 °C, without air.
     *
     * @param mix what is in it
     */
    public static Situation of(Mix mix) {
        return new Situation(
                mix, Temperature.HOME_FREEZER_C, SERVING_C, 0, Optional.empty(), Optional.empty());
    }

    /** The batch as it is judged: in the style that it probably has. */
    BatchState state() {
        Pieces pieces = Pieces.of(mix);
        Style style = StyleGuess.of("", pieces.mix(), Method.MACHINE);
        Making making = new Making(Method.MACHINE, 0, 0, overrunPercent, servingC, true);
        boolean freezes =
                pieces.mix().freezingCurve().icePercentAt(coldC) >= Stage.SOFT_SERVE.icePercent();
        Frozen frozen = Frozen.of(freezes, coldC, crystalUm, steadyUm);
        return BatchState.of(mix, style, DietRules.AS_IT_IS, making, frozen);
    }

    /**
     * The same, frozen by another cold.
     *
     * @param newColdC temperature of bath, wall or freezer, °C
     */
    public Situation frozenAt(double newColdC) {
        return new Situation(mix, newColdC, servingC, overrunPercent, crystalUm, steadyUm);
    }

    /**
     * The same, served at another temperature.
     *
     * @param newServingC °C
     */
    public Situation servedAt(double newServingC) {
        return new Situation(mix, coldC, newServingC, overrunPercent, crystalUm, steadyUm);
    }

    /**
     * The same with air beaten in.
     *
     * @param newOverrunPercent growth of the volume, %, 0 to 200
     */
    public Situation withAir(double newOverrunPercent) {
        return new Situation(mix, coldC, servingC, newOverrunPercent, crystalUm, steadyUm);
    }

    /**
     * The same with the size of its ice crystals.
     *
     * @param meanUm mean size, µm, above zero
     */
    public Situation withCrystals(double meanUm) {
        Require.positive("meanUm", meanUm, "µm");
        return withCrystals(new Band(meanUm, meanUm, meanUm));
    }

    /**
     * The same with the size of its ice crystals and its band.
     *
     * @param meanUm mean size with its band, µm, above zero
     */
    public Situation withCrystals(Band meanUm) {
        Require.positive("meanUm", meanUm.low(), "µm");
        return new Situation(mix, coldC, servingC, overrunPercent, Optional.of(meanUm), steadyUm);
    }

    /**
     * The same with the size of its crystals had the freezer been steady.
     *
     * @param meanUm mean size with its band, µm, above zero
     */
    public Situation steadyWouldBe(Band meanUm) {
        Require.positive("meanUm", meanUm.low(), "µm");
        return new Situation(mix, coldC, servingC, overrunPercent, crystalUm, Optional.of(meanUm));
    }
}
