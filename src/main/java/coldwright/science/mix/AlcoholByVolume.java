package coldwright.science.mix;

import coldwright.science.Require;

/**
 * Conversion between alcohol by volume, as on labels, and alcohol by mass.
 *
 * <p>Density of ethanol–water mixtures at 20 °C: ρ = Σ A<sub>k</sub> p<sup>k</sup>, with p the mass
 * fraction of ethanol and ρ in kg/m³; alcohol by volume is 100·p·ρ/789.24.
 *
 * <p>Source: OIML R 22, International alcoholometric tables (1975), coefficients A<sub>k</sub> for
 * 20 °C. Valid from 0 to 100 %. Stated accuracy: better than 0.01 kg/m³ in density.
 */
public final class AlcoholByVolume {
    private static final double[] A_KG_PER_M3 = {
        998.20123,
        -192.9769495,
        389.1238958,
        -1668.103923,
        13522.15441,
        -88292.78388,
        306287.4042,
        -613838.1234,
        747017.2998,
        -547846.1354,
        223446.0334,
        -39032.85426
    };

    private static final double PURE_KG_PER_M3 = 789.24;

    private static final Require.Range PERCENT = new Require.Range(0, 100, "%");

    private AlcoholByVolume() {}

    /**
     * Alcohol by mass of a plain spirit without sugar.
     *
     * @param byVolumePercent alcohol by volume at 20 °C, %, 0 to 100
     * @return alcohol, % by mass
     */
    public static double massPercent(double byVolumePercent) {
        Require.within("byVolumePercent", byVolumePercent, PERCENT);
        double low = 0;
        double high = 100;
        while (high - low > 1e-9) {
            double middle = (low + high) / 2;
            if (byVolumePercent(middle) < byVolumePercent) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /**
     * Alcohol by volume of a plain spirit without sugar.
     *
     * @param massPercent alcohol, % by mass, 0 to 100
     * @return alcohol by volume at 20 °C, %
     */
    public static double byVolumePercent(double massPercent) {
        return massPercent * densityKgPerL(massPercent) * 1000 / PURE_KG_PER_M3;
    }

    /**
     * {@return density of ethanol and water at 20 °C, kg/L}
     *
     * @param massPercent alcohol, % by mass, 0 to 100
     */
    public static double densityKgPerL(double massPercent) {
        double p = Require.within("massPercent", massPercent, PERCENT) / 100;
        double sum = 0;
        for (int k = A_KG_PER_M3.length - 1; k >= 0; k--) {
            sum = sum * p + A_KG_PER_M3[k];
        }
        return sum / 1000;
    }
}
