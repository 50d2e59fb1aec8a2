package coldwright.science.crystal;

import coldwright.science.Band;
import coldwright.science.Commented;
import coldwright.science.Require;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;
import coldwright.science.mix.Mix;
import coldwright.words.Phrase;
import coldwright.words.Worded;

import java.util.ArrayList;
import java.util.List;

/**
 * The ice crystals of a batch from freezing through storage, step by step. Immutable: each step
 * gives a new story.
 *
 * <pre>{@code
 * var fresh = CrystalStory.of(mix).frozenBy(Method.BAG);
 * fresh.meanUm();                                   // a band of µm
 * fresh.storedAt(-18).forDays(7).verdict();
 * fresh.storedAt(-18).forDays(7).heatShock(-6, 2).meanUm();
 * fresh.storedAt(-18).forDays(7).blended().storedAt(-18).forDays(1).meanUm();
 * }</pre>
 *
 * <p>Model: a population balance ({@code CrystalPopulation}). The cold wall is swept of small
 * crystals while the batch moves; they grow, melt, break and coarsen. The rate is physics, not a
 * fit: Gibbs–Thomson with diffusion of water through the freeze-concentrated liquid ({@code
 * UnfrozenSyrup}), heat in series, crowding by the screening of J. A. Marqusee and J. Ross, J.
 * Chem. Phys. 80 (1984) 536 (from memory; it was derived for little ice and is extrapolated to
 * much). The ice follows the freezing curve.
 *
 * <p>Band: rate halved and doubled (T. van Westen and R. D. Groot 2018 met measured rates in
 * sucrose within a factor of 2), with breakage a third and three times. A stabiliser slows the rate
 * by 1.2 (J. Mo et al., "Ice crystal coarsening in ice cream during cooling", Crystals 9 (2019)
 * 321, abstract). At draw from a machine the sizes are within the usual range (20–35 µm, from
 * memory); hardened they are some 20 % below it (45–55 µm). Left out: crystals that stick together,
 * the needles of still freezing, and the difference between the outside of a tub and its core.
 */
public final class CrystalStory implements Commented {
    private static final double FRIDGE_C = 5;
    private static final double REST_S = 120;

    private final CrystalState state;
    private final List<TrendEvidence> evidence;

    private CrystalStory(CrystalState crystalState, List<TrendEvidence> evidence) {
        this.state = crystalState;
        this.evidence = List.copyOf(evidence);
    }

    /** Starts a story, without ice yet, with a mix with water in the fridge. */
    public static CrystalStory of(Mix mix) {
        CrystalState start =
                new CrystalState(
                        FrozenMixTable.of(mix),
                        GrowthIntegrator.corners(mix),
                        null,
                        FRIDGE_C,
                        List.of());
        return new CrystalStory(start, List.of());
    }

    /**
     * Frozen in the usual time, from 5 °C until half the water is ice (bag, machine) or until it is
     * nearly as cold as the freezer (tubs).
     */
    public CrystalStory frozenBy(Method method) {
        return frozenBy(method, method.usualMinutes().middle());
    }

    /**
     * Frozen in a given time.
     *
     * @param minutes from the fridge to the end of freezing, 1 to 4000
     */
    public CrystalStory frozenBy(Method method, double minutes) {
        Require.within("minutes", minutes, new Require.Range(1, 4000, "min"));
        FrozenMixTable frozenMixTable = state.mixTable();
        double endC =
                method.endC(frozenMixTable.temperatureAtIcePercent(Stage.SOFT_SERVE.icePercent()));
        CoolingPath path =
                CoolingPath.against(frozenMixTable, FRIDGE_C, endC, method.coldC(), minutes * 60);
        return frozen(LowMidHigh.of(i -> path), method.motion());
    }

    /**
     * Frozen along a measured or calculated course.
     *
     * @param method how it was moved
     * @param readings temperatures of the batch at rising times, two or more
     * @throws IllegalArgumentException if the times do not rise or there are fewer than two
     */
    public CrystalStory frozenAlong(Method method, List<ThermometerReading> readings) {
        CoolingPath path = ThermometerReading.path(readings);
        return frozen(LowMidHigh.of(i -> path), method.motion());
    }

    /**
     * Frozen as a freeze plan for the same mix predicts, to soft-serve if it is moved all the time,
     * else until hard; the plan's fast and slow readings widen the band.
     */
    public CrystalStory frozenAs(FreezePlan plan) {
        PlannedCoolingPaths course = new PlannedCoolingPaths(state.mixTable(), plan);
        return frozen(course.paths(), course.motion());
    }

    /** Each spot of a still tub freezes in a fraction of the whole time. */
    private CrystalStory frozen(LowMidHigh<CoolingPath> paths, GrowthIntegrator.Motion motion) {
        if (state.frozen()) {
            throw new IllegalStateException(
                    "this batch is frozen already; start with CrystalStory.of(mix) again");
        }
        LowMidHigh<CoolingPath> local =
                motion.moved()
                        ? paths
                        : LowMidHigh.of(i -> paths.get(i).faster(state.variants().get(i).time()));
        CrystalState rested =
                state.along(local, motion, "freezing")
                        .still(CoolingPath.hold(local.middle().endC(), REST_S), "resting");
        return then(rested, motion.moved() ? TrendEvidence.MOVED : TrendEvidence.STILL);
    }

    /**
     * Puts the batch into cold storage, to be given a time.
     *
     * @param temperatureC temperature of the store, °C, −40 to −2
     */
    public Storage storedAt(double temperatureC) {
        return new Storage(this, temperatureC);
    }

    /**
     * Left out or in a warm freezer for a while, then back to its former temperature.
     *
     * @param temperatureC how warm it gets, °C, above the present temperature
     * @param hours how long it stays that warm, h, 0 to 100
     * @throws IllegalArgumentException if nearly all ice would melt
     */
    public CrystalStory heatShock(double temperatureC, double hours) {
        requireFrozen("a heat shock");
        Require.within("hours", hours, new Require.Range(0, 100, "h"));
        double before = state.temperatureC();
        Require.within("temperatureC", temperatureC, new Require.Range(before, 0, "°C"));
        state.requireIce(temperatureC);
        CrystalState after =
                state.still(CoolingPath.ramp(before, temperatureC), "warming")
                        .still(CoolingPath.hold(temperatureC, hours * 3600), "warm")
                        .still(CoolingPath.ramp(temperatureC, before), "freezing again");
        return then(after, TrendEvidence.SHOCK);
    }

    /**
     * Softened until half the water is ice and blended for half a minute.
     *
     * <p>Caution: blades and frozen lumps: unplug before scraping the bowl.
     *
     * @return the story, soft, with broken crystals
     */
    public CrystalStory blended() {
        requireFrozen("blending");
        double softC =
                Math.max(
                        state.temperatureC(),
                        state.mixTable().temperatureAtIcePercent(Stage.SOFT_SERVE.icePercent()));
        CrystalState soft = state.still(CoolingPath.ramp(state.temperatureC(), softC), "softening");
        return then(
                soft.along(
                        CoolingPath.blending(softC), GrowthIntegrator.Motion.BLENDER, "blending"),
                TrendEvidence.BLENDED);
    }

    /** {@return mean diameter by number now, µm with its band, zero without ice} */
    public Band meanUm() {
        return state.meanUm();
    }

    /** {@return all sizes now; empty without ice} */
    public CrystalSizes sizes() {
        return state.frozen()
                ? CrystalSizes.of(state.crowds(), state.mixTable().volumeMlPerG())
                : CrystalSizes.NONE;
    }

    /** {@return the texture at the middle of the band} */
    public Texture texture() {
        return Texture.of(meanUm().middle());
    }

    /** {@return the verdict in English, with the uncertainty of the band} */
    public String verdict() {
        return judgement().english();
    }

    /** {@return the verdict in any language, with the uncertainty of the band} */
    public Phrase judgement() {
        return judgement(meanUm());
    }

    /**
     * The same for a size that the story did not reach.
     *
     * @param um mean diameter, µm
     */
    public Phrase judgement(Band um) {
        if (!state.frozen()) {
            return phrase("not-frozen", state.temperatureC());
        }
        Texture likely = Texture.of(um.middle());
        Texture best = Texture.of(um.low());
        Texture worst = Texture.of(um.high());
        String doubt = (best == likely ? "" : "-at-best") + (worst == likely ? "" : "-at-worst");
        Phrase texture = phrase("likely" + doubt, likely.phrase(), best.phrase(), worst.phrase());
        return phrase("verdict", texture, um.middle(), um.low(), um.high());
    }

    private static Phrase phrase(String key, Object... values) {
        return Phrase.of("science.crystal", key, values);
    }

    /** {@return temperature now, °C} */
    public double temperatureC() {
        return state.temperatureC();
    }

    /** {@return ice now, % of the water} */
    public double icePercent() {
        return state.frozen() ? state.mixTable().icePercent(state.temperatureC()) : 0;
    }

    /** {@return the course so far, in the order of time} */
    public List<CrystalMoment> timeline() {
        return state.moments();
    }

    /** {@return certain results and trends in any language, one for each kind of step} */
    @Override
    public List<Phrase> comments() {
        return evidence.stream().map(TrendEvidence::phrase).toList();
    }

    CrystalState state() {
        return state;
    }

    CrystalStory then(CrystalState next, TrendEvidence step) {
        List<TrendEvidence> more = new ArrayList<>(evidence);
        if (!more.contains(step)) {
            more.add(step);
        }
        return new CrystalStory(next, more);
    }

    private void requireFrozen(String what) {
        if (!state.frozen()) {
            throw new IllegalStateException(
                    "%s needs ice, and there is none yet; freeze it first, for example with frozenBy(Method.BAG)"
                            .formatted(what));
        }
    }

    /** Evidence for each kind of step: published, or only this model's figure. */
    enum TrendEvidence implements Worded {
        MOVED,
        STILL,
        SHOCK,
        BLENDED,
        SWINGS,
        STORAGE
    }
}
