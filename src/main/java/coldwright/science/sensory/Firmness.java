package coldwright.science.sensory;

import coldwright.science.Band;
import coldwright.science.Require;
import coldwright.science.Rounded;
import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Mix;
import coldwright.words.Worded;

/**
 * The firmness of a frozen mix, by its ice.
 *
 * <p>Bands: 65 to 75 % of the water is ice where a spoon goes in (textbooks of the trade, from
 * memory; there is no sharp line); wishes, findings and this class all take these two limits from
 * here. The other limits are common practice, no source. The textbooks speak of ordinary ice cream,
 * with some 62 % water: in a drier mix the same share of the water is less ice for the spoon to
 * meet. So the class is found by the ice in the water and by the ice in the whole mix (at 62 %
 * water), and the softer of the two counts (by judgement). Fat, gums and above all air make the
 * same ice softer, so a mix without air is at the hard end of its class.
 *
 * <p>Below −20 °C the syrup itself turns stiff: the class goes up by one (by judgement).
 */
public enum Firmness implements Worded {
    LIQUID(8),
    SLUSHY(39),
    SOFT(Firmness.SCOOPABLE_LEAST_ICE_PERCENT),
    SCOOPABLE(Firmness.SCOOPABLE_MOST_ICE_PERCENT),
    FIRM(84),
    HARD(100);

    /** Below this share of ice it slumps, % of the water (from memory, as above). */
    public static final double SCOOPABLE_LEAST_ICE_PERCENT = 65;

    /** Above this share of ice it resists a spoon, % of the water (from memory, as above). */
    public static final double SCOOPABLE_MOST_ICE_PERCENT = 75;

    /** Water of an ordinary ice cream, % by mass (common practice, no source). */
    public static final double ORDINARY_WATER_PERCENT = 62;

    /** Below this temperature the class is one firmer, °C; by judgement. */
    public static final double STIFF_SYRUP_C = -20;

    private final double upToPercentOfWater;

    Firmness(double upToPercentOfWater) {
        this.upToPercentOfWater = upToPercentOfWater;
    }

    /**
     * Firmness of a mix at a temperature.
     *
     * @param temperatureC temperature, °C, −60 to 120
     */
    public static Firmness of(Mix mix, double temperatureC) {
        Firmness by = upTo(spoonIcePercent(mix, temperatureC));
        boolean stiff = temperatureC < STIFF_SYRUP_C && by != LIQUID && by != HARD;
        return stiff ? values()[by.ordinal() + 1] : by;
    }

    /**
     * {@return the ice that a spoon meets, which decides the class, % of the water; of a mix with
     * less than 62 % water less than that, in proportion}
     *
     * @param temperatureC temperature, °C, −60 to 120
     */
    public static double spoonIcePercent(Mix mix, double temperatureC) {
        return spoonIcePercent(mix, mix.freezingCurve(), temperatureC);
    }

    /**
     * As {@link #spoonIcePercent(Mix, double)}, with the curve of the mix at hand.
     *
     * @param temperatureC temperature, °C, −60 to 120
     * @return % of the water
     */
    public static double spoonIcePercent(Mix mix, FreezingCurve curve, double temperatureC) {
        double part = Math.min(1, mix.waterPercent() / ORDINARY_WATER_PERCENT);
        return part * curve.icePercentAt(temperatureC);
    }

    /**
     * {@return the class whose ice makes a mix scoopable at a temperature, below −20 °C the softer
     * one, because the syrup adds a class: most and least ice, in the measure of {@link
     * #spoonIcePercent}}
     *
     * @param temperatureC temperature, °C
     */
    public static Band scoopablePercentAt(double temperatureC) {
        Firmness by = temperatureC < STIFF_SYRUP_C ? SOFT : SCOOPABLE;
        double least = values()[by.ordinal() - 1].upToPercentOfWater;
        return new Band(least, (least + by.upToPercentOfWater) / 2, by.upToPercentOfWater);
    }

    private static Firmness upTo(double percentOfWater) {
        for (Firmness firmness : values()) {
            if (percentOfWater <= firmness.upToPercentOfWater) {
                return firmness;
            }
        }
        return HARD;
    }

    /**
     * {@return the temperatures at which a mix is scoopable, °C: low where it turns firm, high
     * where it turns soft, middle between}
     *
     * @throws IllegalArgumentException if the mix has too little water ever to be scoopable
     */
    public static Band scoopableC(Mix mix) {
        double water = mix.waterPercent();
        FreezingCurve curve = mix.freezingCurve();
        double drier = Math.max(1, ORDINARY_WATER_PERCENT / water);
        double softEnd = drier * SCOOPABLE_LEAST_ICE_PERCENT;
        double firmEnd = drier * SCOOPABLE_MOST_ICE_PERCENT;
        Require.that(
                firmEnd <= 99,
                "waterPercent is %s; it must be above 47 %%. A drier mix stays soft at any cold.",
                Rounded.tenth(water));
        double warm = curve.temperatureAtIcePercentC(softEnd);
        double cold = curve.temperatureAtIcePercentC(firmEnd);
        return new Band(cold, (warm + cold) / 2, warm);
    }
}
