package coldwright.science.mix;

import coldwright.science.Rounded;
import coldwright.words.Phrase;

/**
 * How near the lactose of a mix is to crystallising, which feels sandy on the tongue.
 *
 * <p>The trade's measure: milk solids not fat at most (100 − fat − sugars added − stabiliser and
 * emulsifier)/7 (Hyde and Rothwell 1973, Ice Cream, as quoted by a dairy science site; 0.15 instead
 * of 1/7 is also printed). Lactose beyond that of milk counts as the solids of milk that would
 * bring it ({@link MilkSolids#LACTOSE}).
 *
 * <p>The chemist's: lactose in the water that is still liquid against its solubility at 0 °C
 * (Hudson; it falls further below, so the result is the least). All frozen mixes exceed it by far
 * and stay smooth only because crystals are slow to form, so it is compared with a sound mix of 10
 * % fat, 14 % sucrose and 11 % milk solids not fat (a mix with 12 % was used to make sand: Zoller
 * and Williams, USDA, read second-hand). Crystals start soonest from −10 to −12 °C and hardly grow
 * at −20 °C (Y. D. Livney, D. P. Donhowe and R. W. Hartel, Int. J. Food Sci. Technol. 30 (1995)
 * 311, abstract read).
 *
 * @param milkSolidsNotFatPercent milk solids not fat of the mix, % by mass
 * @param milkSolidsNotFatLimitPercent the trade's limit for this mix, % by mass
 * @param lactosePercent lactose, % by mass
 * @param lactosePer100gWater lactose in the unfrozen mix, g per 100 g of water
 * @param saturationPer100gWater solubility of lactose at 0 °C, g per 100 g of water
 */
public record LactoseSaturation(
        double milkSolidsNotFatPercent,
        double milkSolidsNotFatLimitPercent,
        double lactosePercent,
        double lactosePer100gWater,
        double saturationPer100gWater) {
    /** Most lactose in the milk solids not fat of milk, as a share (USDA SR24, low-fat milk). */
    private static final double MOST_IN_MILK = 0.56;

    /** The limits for a mix. */
    public static LactoseSaturation of(Mix mix) {
        Composition c = mix.composition();
        double addedSugars =
                mix.sugarsPercent()
                        - c.percent(Component.LACTOSE)
                        + c.percent(Component.HIGHER_SACCHARIDES);
        double rest =
                100
                        - mix.fatPercent()
                        - addedSugars
                        - c.percent(Component.STABILISER)
                        - c.percent(Component.EMULSIFIER);
        double lactose = c.percent(Component.LACTOSE);
        return new LactoseSaturation(
                mix.milkSolidsNotFatPercent(),
                Math.max(0, rest) / 7,
                lactose,
                lactose == 0 ? 0 : 100 * lactose / mix.waterPercent(),
                SugarSolubility.gPer100gWater(Component.LACTOSE, 0));
    }

    /** {@return milk solids-not-fat, with lactose beyond that of milk as such, % by mass} */
    public double asMilkSolidsPercent() {
        double beyond = lactosePercent - MOST_IN_MILK * milkSolidsNotFatPercent;
        return milkSolidsNotFatPercent + Math.max(0, beyond) / MilkSolids.LACTOSE;
    }

    /**
     * {@return how many times the lactose in the liquid water is what dissolves at 0 °C, of a mix
     * in store; at least}
     *
     * @param temperatureC temperature of the store, °C, −60 to 0
     */
    public static double timesSaturated(Mix mix, double temperatureC) {
        double liquid = 1 - mix.freezingCurve().icePercentAt(temperatureC) / 100;
        LactoseSaturation unfrozen = of(mix);
        return unfrozen.lactosePer100gWater / liquid / unfrozen.saturationPer100gWater;
    }

    /**
     * {@return {@link #timesSaturated} against the same of a sound mix: above 1 sand is likelier
     * than in it}
     *
     * @param temperatureC temperature of the store, °C, −60 to 0
     */
    public static double timesSound(Mix mix, double temperatureC) {
        Composition sound =
                MilkSolids.addMilk(
                        Composition.NOTHING
                                .with(65, Component.WATER)
                                .with(10, Component.MILK_FAT)
                                .with(14, Component.SUCROSE),
                        11);
        Mix reference = Mix.of(Amount.grams(100, Ingredient.own("sound mix", sound)));
        return timesSaturated(mix, temperatureC) / timesSaturated(reference, temperatureC);
    }

    /**
     * {@return whether the trade's rule predicts sandiness in storage: true above the trade's
     * limit}
     */
    public boolean sandyInStore() {
        return asMilkSolidsPercent() > milkSolidsNotFatLimitPercent;
    }

    /** {@return milk solids-not-fat, or added lactose, against the limit, in any language} */
    public Phrase judgement() {
        boolean added = asMilkSolidsPercent() > milkSolidsNotFatPercent;
        return added
                ? Phrase.of(
                        "science.mix",
                        sandyInStore() ? "lactose.added.sandy" : "lactose.added",
                        Rounded.tenth(lactosePercent),
                        Rounded.tenth(asMilkSolidsPercent()),
                        Rounded.tenth(milkSolidsNotFatLimitPercent))
                : Phrase.of(
                        "science.mix",
                        sandyInStore() ? "lactose.sandy" : "lactose",
                        Rounded.tenth(milkSolidsNotFatPercent),
                        Rounded.tenth(milkSolidsNotFatLimitPercent));
    }

    /** {@return the judgement as an English sentence} */
    public String verdict() {
        return judgement().english();
    }
}
