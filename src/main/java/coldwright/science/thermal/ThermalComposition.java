package coldwright.science.thermal;

import coldwright.science.Require;
import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;

import java.util.function.ToDoubleFunction;

/**
 * A composition sorted into the few substances of the thermal tables.
 *
 * <p>Sugars, polyols, acids and starch count as carbohydrate, gums as fibre, emulsifiers as fat,
 * salts as ash. Any rest of a food table is divided in proportion.
 *
 * <p>Without ice; equations: heat capacity by mass, density by volume, conductivity in parallel by
 * volume, as Choi and Okos 1986 combine them.
 */
public final class ThermalComposition {
    private static final Substance[] SUBSTANCES = Substance.values();

    private final double[] shares = new double[SUBSTANCES.length];

    private ThermalComposition() {}

    /**
     * Sorts a composition that is not empty.
     *
     * @throws IllegalArgumentException if the composition is empty
     */
    public static ThermalComposition of(Composition composition) {
        double sum = composition.sumPercent();
        Require.that(sum > 0, "the composition is empty; it must have at least one component");
        ThermalComposition thermalComposition = new ThermalComposition();
        for (Component component : Component.values()) {
            double share = composition.percent(component) / sum;
            if (share > 0) {
                thermalComposition.shares[substance(component).ordinal()] += share;
            }
        }
        return thermalComposition;
    }

    private static Substance substance(Component component) {
        return switch (component) {
            case FIBRE, STABILISER -> Substance.FIBRE;
            case EMULSIFIER -> Substance.FAT;
            default ->
                    switch (component.kind()) {
                        case WATER -> Substance.WATER;
                        case FAT -> Substance.FAT;
                        case PROTEIN -> Substance.PROTEIN;
                        case MINERAL -> Substance.ASH;
                        case ALCOHOL -> Substance.ETHANOL;
                        default -> Substance.CARBOHYDRATE;
                    };
        };
    }

    /** {@return share of one substance, of the mass, 0 to 1} */
    public double share(Substance substance) {
        return shares[substance.ordinal()];
    }

    /**
     * {@return heat capacity, all water liquid, J/(g·K)}
     *
     * @param temperatureC temperature, °C, −60 to 150
     */
    public double heatCapacityJPerGK(double temperatureC) {
        return sum(0, part -> part.heatCapacityJPerGK(temperatureC));
    }

    /** {@return sensible heat above 0 °C of all but the water, J per g of the whole, at °C} */
    double solidsEnthalpyJPerG(double temperatureC) {
        return sum(share(Substance.WATER), part -> part.enthalpyFromZeroJPerG(temperatureC));
    }

    /** {@return density without air, kg/m³, at °C, with a part of the water, 0 to 1, as ice} */
    double densityKgPerM3(double temperatureC, double iceOfWater) {
        double ice = share(Substance.WATER) * iceOfWater;
        return 1 / (liquidVolume(temperatureC, ice) + iceVolume(temperatureC, ice));
    }

    /**
     * {@return conductivity without air, W/(m·K), at a temperature, °C, with part of the water, 0
     * to 1, as ice: the liquid in parallel by volume}
     */
    double conductivityWPerMK(double temperatureC, double iceOfWater, Structure iceLies) {
        double ice = share(Substance.WATER) * iceOfWater;
        double liquidVolume = liquidVolume(temperatureC, ice);
        double sum =
                sum(
                        ice,
                        part ->
                                part.conductivityWPerMK(temperatureC)
                                        / part.densityKgPerM3(temperatureC));
        if (ice <= 0) {
            return sum / liquidVolume;
        }
        double iceVolume = iceVolume(temperatureC, ice);
        double iceConductivity = Substance.ICE.conductivityWPerMK(temperatureC);
        if (liquidVolume <= 0) {
            return iceConductivity;
        }
        return iceLies.mixed(
                sum / liquidVolume, iceConductivity, iceVolume / (iceVolume + liquidVolume));
    }

    private double liquidVolume(double temperatureC, double ice) {
        return sum(ice, part -> 1 / part.densityKgPerM3(temperatureC));
    }

    /** Sum over the substances, by mass, without some of the water. */
    private double sum(double withoutWater, ToDoubleFunction<Substance> property) {
        double sum = 0;
        for (Substance part : SUBSTANCES) {
            double mass = share(part) - (part == Substance.WATER ? withoutWater : 0);
            if (mass > 0) {
                sum += mass * property.applyAsDouble(part);
            }
        }
        return sum;
    }

    private static double iceVolume(double temperatureC, double ice) {
        return ice / Substance.ICE.densityKgPerM3(temperatureC);
    }
}
