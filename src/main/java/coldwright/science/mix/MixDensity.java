package coldwright.science.mix;

import static coldwright.science.mix.Component.ALCOHOL;
import static coldwright.science.mix.Component.WATER;

/**
 * Density of a mix without air.
 *
 * <p>1/ρ = 1.075·F + 0.63·(TS − F) + W, with F fat, TS total solids and W water as mass fractions
 * and ρ in kg/L. Source: university ice cream course notes (the worked example, 12 % fat, 38.3 %
 * total solids, 61.7 % water, gives 1.096 kg/L). Made for milk mixes near room temperature; about
 * ±1 %.
 *
 * <p>Alcohol adds the volume of ethanol and the mix's water together at 20 °C (OIML R 22) minus
 * that of the water alone; without alcohol the published formula is unchanged.
 */
public final class MixDensity {
    private static final double FAT_L_PER_KG = 1.075;
    private static final double OTHER_SOLIDS_L_PER_KG = 0.63;
    private static final double WATER_L_PER_KG = 1;

    private MixDensity() {}

    /** {@return density of a composition without air, kg/L} */
    public static double kgPerL(Composition composition) {
        double fat = composition.percent(Component.Kind.FAT);
        double water = composition.percent(WATER);
        double alcohol = composition.percent(ALCOHOL);
        double otherSolids = 100 - water - alcohol - fat;
        double litresPer100kg =
                FAT_L_PER_KG * fat
                        + OTHER_SOLIDS_L_PER_KG * otherSolids
                        + WATER_L_PER_KG * water
                        + alcoholLitres(alcohol, water);
        return 100 / litresPer100kg;
    }

    private static double alcoholLitres(double alcohol, double water) {
        if (alcohol == 0) {
            return 0;
        }
        double together = alcohol + water;
        return together / AlcoholByVolume.densityKgPerL(100 * alcohol / together)
                - water / AlcoholByVolume.densityKgPerL(0);
    }
}
