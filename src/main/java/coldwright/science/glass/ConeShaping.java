package coldwright.science.glass;

import coldwright.science.Band;
import coldwright.science.Commented;
import coldwright.science.Require;
import coldwright.science.Rounded;
import coldwright.science.Temperature;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.List;

/**
 * How a thin hot wafer cools after the iron, and how long it can be bent.
 *
 * <p>Equation: T = Ta + (T₀ − Ta)·exp(−t/τ), τ = (ρ c d/2)(1/h + d/(6k)), d the thickness, both
 * sides losing heat; h the film plus radiation 4εσTm³ at the mean temperature. The second term is
 * the wafer's own resistance: with it the lumped form matches the slowest mode of the exact series
 * for a slab within 1 % up to a Biot number h(d/2)/k of 0.5 and within 5 % up to 1.5; {@link
 * #comments} warns when it is more. The wafer bends while its sugar melt is thinner than the
 * glassmaker's softening point, 10^6.6 Pa·s ({@link Wlf}), and cracks below the melt's own glass
 * transition.
 *
 * <p>Left out: steam leaving the wafer (it cools faster), fat, and the stiffness of the starch
 * walls, which shortens the time. Error: a factor of two, mostly the film.
 *
 * <p>Caution: the iron and the wafer cause burns at these temperatures; shape with a cloth or heat
 * gloves.
 *
 * <pre>{@code
 * ConeShaping.of(Wafer.rolledSugarCone()).secondsToShape();   // a band of seconds
 * }</pre>
 *
 * @param wafer the wafer
 * @param ironC temperature at which it leaves the iron, °C
 * @param roomC temperature of the room and the form, °C
 * @param surroundings the surroundings in which it cools
 */
public record ConeShaping(Wafer wafer, double ironC, double roomC, Surroundings surroundings)
        implements Commented {
    /** Above this Biot number the inside lags and lumped cooling is only a trend. */
    public static final double LUMPED_TO_BIOT = 1.5;

    private static final double USUAL_IRON_C = 170;
    private static final double USUAL_ROOM_C = 22;
    private static final double STEFAN_BOLTZMANN = 5.670374e-8;
    private static final double EMISSIVITY = 0.9;

    public ConeShaping {
        Require.within("ironC", ironC, new Require.Range(60, 230, "°C"));
        Require.within("roomC", roomC, new Require.Range(-30, 50, "°C"));
    }

    /** A wafer from an iron at 170 °C into still air at 22 °C (common practice, no source). */
    public static ConeShaping of(Wafer wafer) {
        return new ConeShaping(wafer, USUAL_IRON_C, USUAL_ROOM_C, Surroundings.STILL_AIR);
    }

    /**
     * The same from another iron.
     *
     * @param temperatureC °C, 60 to 230
     */
    public ConeShaping fromIronAt(double temperatureC) {
        return new ConeShaping(wafer, temperatureC, roomC, surroundings);
    }

    /** The same, cooled in other surroundings. */
    public ConeShaping cooled(Surroundings place) {
        return new ConeShaping(wafer, ironC, roomC, place);
    }

    /**
     * {@return temperature of the wafer, °C; low is the fastest cooling of the band}
     *
     * @param seconds s after the iron, zero or more
     */
    public Band temperatureCAfter(double seconds) {
        Require.notNegative("seconds", seconds, "s");
        return timeConstantS().map(tau -> roomC + (ironC - roomC) * Math.exp(-seconds / tau));
    }

    /**
     * {@return how long it can be bent easily, s, zero if it leaves the iron too cool; all zero if
     * the wafer cannot be rolled}
     */
    public Band secondsToShape() {
        return secondsTo(bendsAboveC());
    }

    /** {@return how long until it snaps, not bends, s, at least {@link #secondsToShape}} */
    public Band secondsToSnap() {
        return secondsTo(wafer.sugarPhase().glassTransitionC());
    }

    /** {@return temperature below which it is too stiff to bend easily, °C} */
    public double bendsAboveC() {
        return wafer.sugarPhase().glassTransitionC() + Wlf.aboveGlassC(Wlf.LOG_PAS_SOFTENING);
    }

    /** {@return how far the inside lags behind the surface: h(d/2)/k at the band's middle} */
    public double biot() {
        return surfaceWPerM2K().middle() * wafer.thicknessMm() / 2000 / Wafer.CONDUCTIVITY_W_PER_MK;
    }

    @Override
    public List<Phrase> comments() {
        List<Phrase> comments = new ArrayList<>();
        if (biot() > LUMPED_TO_BIOT) {
            comments.add(
                    Phrase.of(
                            "science.glass",
                            "inside-lags",
                            Rounded.hundredth(biot()),
                            LUMPED_TO_BIOT));
        }
        if (!wafer.canBeRolled()) {
            comments.add(Phrase.of("science.glass", "breaks-hot", Wafer.ROLLABLE_SUGAR_PERCENT));
        }
        return List.copyOf(comments);
    }

    private Band secondsTo(double temperatureC) {
        if (!wafer.canBeRolled() || ironC <= temperatureC) {
            return Band.exactly(0);
        }
        if (temperatureC <= roomC) {
            return Band.exactly(Double.POSITIVE_INFINITY);
        }
        return timeConstantS().times(Math.log((ironC - roomC) / (temperatureC - roomC)));
    }

    private Band timeConstantS() {
        return surfaceWPerM2K().map(this::timeConstantS);
    }

    private double timeConstantS(double filmWPerM2K) {
        double thicknessM = wafer.thicknessMm() / 1000;
        double inside = thicknessM / 6 / Wafer.CONDUCTIVITY_W_PER_MK;
        double heat = Wafer.DENSITY_G_PER_ML * 1e6 * wafer.heatCapacityJPerGK() * thicknessM / 2;
        return heat * (1 / filmWPerM2K + inside);
    }

    private Band surfaceWPerM2K() {
        if (!surroundings.inAir()) {
            return surroundings.filmWPerM2K();
        }
        double mean = Temperature.kelvin((ironC + roomC) / 2);
        double radiation = 4 * EMISSIVITY * STEFAN_BOLTZMANN * mean * mean * mean;
        return surroundings.filmWPerM2K().plus(Band.exactly(radiation));
    }
}
