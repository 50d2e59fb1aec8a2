package coldwright.science.thermal;

import coldwright.science.Commented;
import coldwright.science.Require;
import coldwright.science.Temperature;
import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Mix;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The thermal curve of a batch from liquid to hardened: enthalpy, apparent heat capacity,
 * conductivity and density at each temperature.
 *
 * <p>Equation: h(T) = Σ xᵢ·∫cᵢ dT + x_w·[(1 − f)·h_liquid(T) + f·h_ice(T)], with f the ice share of
 * the water by the freezing curve, xᵢ mass shares, h zero for the liquid batch at 0 °C. The latent
 * heat at each temperature is h_liquid − h_ice there: 333.4 J/g at 0 °C, less when colder. The mass
 * of water and ice together never changes.
 *
 * <p>Sources: component properties {@link Substance}, ice {@link PureWater}, conductivity {@link
 * Structure}: ice in the liquid by Levy 1981, air in that by Maxwell and Eucken.
 *
 * <p>Range: −45 to 100 °C; the component tables end at −40. Left out: the heat of mixing as the
 * liquid concentrates (a few J/g), melting of fat (about 80 J per g of fat between 0 and 30 °C),
 * glass or sugar crystals in the cold. Expected error: enthalpy between two temperatures 5 %,
 * conductivity 10 % without air; with as much air as mix it is too high, perhaps by half (ice
 * creams are reported near 0.3 W/(m·K) at −20 °C, from memory).
 */
public final class ThermalCurve implements Commented {
    private static final double COLDEST_C = -45;
    private static final double WARMEST_C = 100;
    private static final double ICE_STEP = 0.005;

    /** A freezing point nearer to 0 °C than this is that of pure water. */
    private static final double PURE_C = -1e-6;

    private static final double DEGREE = 1;
    private static final double AIR_K = 0.024;

    private final ThermalComposition thermalComposition;
    private final FreezingCurve freezing;
    private final double overrunPercent;
    private final EnthalpyTable table;

    private ThermalCurve(
            ThermalComposition thermalComposition, FreezingCurve freezing, double overrunPercent) {
        this.thermalComposition = thermalComposition;
        this.freezing = freezing;
        this.overrunPercent = overrunPercent;
        this.table = tabulate();
    }

    /**
     * The curve of a mix with some water.
     *
     * @throws IllegalArgumentException if there is no water to freeze
     */
    public static ThermalCurve of(Mix mix) {
        ThermalComposition thermalComposition = ThermalComposition.of(mix.composition());
        return of(
                thermalComposition,
                thermalComposition.share(Substance.WATER) > 0 ? mix.freezingCurve() : null);
    }

    /**
     * The curve of a composition with some water, whose freezing curve is given.
     *
     * @throws IllegalArgumentException if there is no water to freeze
     */
    public static ThermalCurve of(ThermalComposition thermalComposition, FreezingCurve freezing) {
        Require.that(
                thermalComposition.share(Substance.WATER) > 0,
                "waterPercent is 0 %%; it must be more than zero");
        return new ThermalCurve(thermalComposition, freezing, 0);
    }

    /**
     * The same with air beaten in: less dense, less conducting, the same heat per gram.
     *
     * @param newOverrunPercent overrun, % by volume of the mix, 0 to 200
     */
    public ThermalCurve withOverrun(double newOverrunPercent) {
        Require.within("overrunPercent", newOverrunPercent, new Require.Range(0, 200, "%"));
        return new ThermalCurve(thermalComposition, freezing, newOverrunPercent);
    }

    /** Makes points about evenly spaced in ice: in an ideal solution T·(1 − f) is constant. */
    private EnthalpyTable tabulate() {
        List<EnthalpyTable.Point> points = new ArrayList<>();
        double start = Math.max(COLDEST_C, freezing.initialFreezingPointC());
        for (double t = WARMEST_C; t > start; t -= t > 5 ? 5 : DEGREE) {
            points.add(point(t, 0));
        }
        points.add(point(start, 0));
        double coldest = start;
        if (start > PURE_C) {
            points.add(point(start, freezing.icePercentAt(start - DEGREE)));
        } else {
            for (double f = ICE_STEP; f < 0.998 && start / (1 - f) > COLDEST_C; f += ICE_STEP) {
                coldest = start / (1 - f);
                points.add(point(coldest, freezing.icePercentAt(coldest)));
            }
        }
        for (double t = Math.ceil(coldest - DEGREE); t >= COLDEST_C; t -= DEGREE) {
            points.add(point(t, freezing.icePercentAt(t)));
        }
        Collections.reverse(points);
        return EnthalpyTable.through(points);
    }

    private EnthalpyTable.Point point(double temperatureC, double icePercent) {
        double share = icePercent / 100;
        return new EnthalpyTable.Point(
                temperatureC,
                enthalpy(temperatureC, share),
                conduct(temperatureC, share),
                icePercent);
    }

    private double enthalpy(double temperatureC, double iceOfWater) {
        double water = thermalComposition.share(Substance.WATER);
        double ice = iceOfWater > 0 ? iceOfWater * PureWater.iceEnthalpyJPerG(temperatureC) : 0;
        double liquid = (1 - iceOfWater) * Substance.WATER.enthalpyFromZeroJPerG(temperatureC);
        return thermalComposition.solidsEnthalpyJPerG(temperatureC) + water * (ice + liquid);
    }

    private double conduct(double temperatureC, double iceOfWater) {
        double dense =
                thermalComposition.conductivityWPerMK(
                        temperatureC, iceOfWater, Structure.INTERLOCKED);
        return overrunPercent == 0 ? dense : Structure.DISPERSED.mixed(dense, AIR_K, airShare());
    }

    private double airShare() {
        return overrunPercent / (100 + overrunPercent);
    }

    private double iceShare(double temperatureC) {
        Temperature.require("temperatureC", temperatureC);
        return temperatureC >= 0 ? 0 : freezing.icePercentAt(temperatureC) / 100;
    }

    /** {@return initial freezing point, °C, 0 or below} */
    public double initialFreezingPointC() {
        return freezing.initialFreezingPointC();
    }

    /** {@return water, as liquid or ice, % by mass} */
    public double waterPercent() {
        return 100 * thermalComposition.share(Substance.WATER);
    }

    /**
     * {@return ice at a temperature, % of the water}
     *
     * @param temperatureC temperature, °C, −60 to 120
     */
    public double icePercentAt(double temperatureC) {
        return 100 * iceShare(temperatureC);
    }

    /**
     * {@return enthalpy, zero for the liquid batch at 0 °C, J/g}
     *
     * @param temperatureC temperature, °C, −60 to 120
     */
    public double enthalpyJPerG(double temperatureC) {
        return enthalpy(temperatureC, iceShare(temperatureC));
    }

    /**
     * {@return apparent heat capacity, with the latent heat of the ice that melts, J/(g·K): the
     * slope of the enthalpy over 0.02 °C; below the freezing point on its cold side}
     *
     * @param temperatureC temperature, °C, −59 to 119
     */
    public double apparentHeatCapacityJPerGK(double temperatureC) {
        double start = initialFreezingPointC();
        double near = 0.01;
        double low = temperatureC - near;
        double high = temperatureC + near;
        if (temperatureC > start) {
            low = Math.max(low, start);
        } else {
            high = Math.min(high, start);
        }
        return (enthalpyJPerG(high) - enthalpyJPerG(low)) / (high - low);
    }

    /**
     * {@return heat capacity of ice and liquid as they are, without melting, J/(g·K)}
     *
     * @param temperatureC temperature, °C, −60 to 120
     */
    public double sensibleHeatCapacityJPerGK(double temperatureC) {
        double all = thermalComposition.heatCapacityJPerGK(temperatureC);
        double ice = thermalComposition.share(Substance.WATER) * iceShare(temperatureC);
        if (ice <= 0) {
            return all;
        }
        return all
                + ice
                        * (PureWater.iceHeatCapacityJPerGK(temperatureC)
                                - Substance.WATER.heatCapacityJPerGK(temperatureC));
    }

    /**
     * {@return conductivity with ice and air, W/(m·K)}
     *
     * @param temperatureC temperature, °C, −60 to 120
     */
    public double conductivityWPerMK(double temperatureC) {
        return conduct(temperatureC, iceShare(temperatureC));
    }

    /**
     * {@return conductivity without air for another arrangement of the ice: {@link
     * Structure#PARALLEL} and {@link Structure#SERIES} are the bounds, W/(m·K)}
     *
     * @param temperatureC temperature, °C, −60 to 120
     */
    public double conductivityWPerMK(double temperatureC, Structure iceLies) {
        return thermalComposition.conductivityWPerMK(temperatureC, iceShare(temperatureC), iceLies);
    }

    /**
     * {@return density with ice and air; the volume of air is constant, kg/m³}
     *
     * @param temperatureC temperature, °C, −60 to 120
     */
    public double densityKgPerM3(double temperatureC) {
        return thermalComposition.densityKgPerM3(temperatureC, iceShare(temperatureC))
                * (1 - airShare());
    }

    /**
     * {@return heat to remove between two temperatures, J/g, negative if the second is warmer}
     *
     * @param fromC starting temperature, °C
     * @param toC final temperature, °C
     */
    public double heatToRemoveJPerG(double fromC, double toC) {
        return enthalpyJPerG(fromC) - enthalpyJPerG(toC);
    }

    /**
     * {@return temperature, ice and conduction by enthalpy, to simulate freezing: the table, −45 to
     * 100 °C}
     */
    public EnthalpyTable table() {
        return table;
    }

    @Override
    public List<Phrase> comments() {
        List<Phrase> comments = new ArrayList<>(freezing.comments());
        if (thermalComposition.share(Substance.ETHANOL) > 0.2) {
            comments.add(Phrase.of("science.thermal", "much-alcohol"));
        }
        return List.copyOf(comments);
    }
}
