package coldwright.science.mix;

import coldwright.science.Rounded;
import coldwright.words.Phrase;

/**
 * How near the lactose of a mix is to crystallising, which feels sandy on the tongue.
 *
 * <p>Two measures. The trade's: milk solids not fat at most (100 − fat − sugars added − stabiliser
 * and emulsifier)/7 (Hyde and Rothwell 1973, Ice Cream, as quoted by a dairy science site; 0.15
 * instead of 1/7 is also printed). The chemist's: lactose in the water against its solubility at 0
 * °C (Hudson); frozen mixes exceed it by far and stay smooth only because crystals are slow to
 * form.
 *
 * @param milkSolidsNotFatPercent milk solids not fat of the mix, % by mass
 * @param milkSolidsNotFatLimitPercent the trade's limit for this mix, % by mass
 * @param lactosePer100gWater lactose in the unfrozen mix, g per 100 g of water
 * @param saturationPer100gWater solubility of lactose at 0 °C, g per 100 g of water
 */
public record LactoseSaturation(
        double milkSolidsNotFatPercent,
        double milkSolidsNotFatLimitPercent,
        double lactosePer100gWater,
        double saturationPer100gWater) {

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
                lactose == 0 ? 0 : 100 * lactose / mix.waterPercent(),
                SugarSolubility.gPer100gWater(Component.LACTOSE, 0));
    }

    /**
     * {@return whether the trade's rule predicts sandiness in storage: true above the trade's
     * limit}
     */
    public boolean sandyInStore() {
        return milkSolidsNotFatPercent > milkSolidsNotFatLimitPercent;
    }

    /** {@return milk solids-not-fat of the mix against the limit, in any language} */
    public Phrase judgement() {
        return Phrase.of(
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
