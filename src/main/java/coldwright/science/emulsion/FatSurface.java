package coldwright.science.emulsion;

import coldwright.science.Band;
import coldwright.science.Require;
import coldwright.science.mix.Component;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Tally;

import java.util.Objects;

/**
 * The surface of the fat globules, with the protein and emulsifier available to cover it.
 *
 * <p>Equation: surface per mass of fat = 6/(ρ d32), ρ {@value #FAT_KG_PER_M3} kg/m³.
 *
 * <p>Loads: milk protein 2 mg/m² (1 to 3; the middle is the project's check value, the range from
 * memory); egg-yolk lecithin and added emulsifiers about 1.5 mg/m² (1 to 3, from memory). Yolk
 * solids contain 20 % phospholipid (from memory). Error: that of the loads; good for plenty or
 * shortage, not for the last percent. Nearly all of the milk protein can adsorb.
 *
 * @param mix the mix
 * @param sizes its globules
 */
public record FatSurface(Mix mix, GlobuleSizes sizes) {
    /** Density of milk fat, kg/m³, near 20 °C. */
    public static final double FAT_KG_PER_M3 = 920;

    /** Protein on the surface, mg/m². */
    public static final Band PROTEIN_MG_PER_M2 = new Band(1, 2, 3);

    private static final Band SMALL_EMULSIFIER_MG_PER_M2 = new Band(1, 1.5, 3);
    private static final double PHOSPHOLIPID_IN_YOLK_SOLIDS = 0.20;

    public FatSurface {
        Objects.requireNonNull(mix, "mix");
        Objects.requireNonNull(sizes, "sizes");
        Require.notNegative("fatPercent", mix.fatPercent(), "%");
    }

    /** {@return surface per gram of fat in globules, m² per g of fat} */
    public static double m2PerGFat(GlobuleSizes sizes) {
        return 6 / (FAT_KG_PER_M3 * sizes.sauterDiameterUm() * 1e-6) / 1000;
    }

    /** {@return surface of all the fat, m² per 100 g of mix} */
    public double m2Per100g() {
        return m2PerGFat(sizes) * mix.fatPercent();
    }

    /**
     * {@return how many times the protein, yolk and emulsifier of the mix can cover the surface: 1
     * is just enough; infinite without fat}
     */
    public Band timesCovered() {
        if (mix.fatPercent() == 0) {
            return Band.exactly(Double.POSITIVE_INFINITY);
        }
        double proteinMg = 1000 * mix.proteinPercent();
        double smallMg =
                1000
                        * (mix.composition().percent(Component.EMULSIFIER)
                                + PHOSPHOLIPID_IN_YOLK_SOLIDS
                                        * mix.composition().per100g(Tally.YOLK_SOLIDS));
        double area = m2Per100g();
        Band small = SMALL_EMULSIFIER_MG_PER_M2;
        Band protein = PROTEIN_MG_PER_M2;
        return new Band(
                (proteinMg / protein.high() + smallMg / small.high()) / area,
                (proteinMg / protein.middle() + smallMg / small.middle()) / area,
                (proteinMg / protein.low() + smallMg / small.low()) / area);
    }
}
