package coldwright.science.emulsion;

import coldwright.science.Band;
import coldwright.science.mix.Ingredient;

import java.util.Locale;

/**
 * A thickener, by the volume that one gram takes up in water (the intrinsic viscosity for gums, the
 * swollen volume for starch), and by how much stirring thins it.
 *
 * <p>Volumes in dL/g, from memory, of gums in water, which differ by brand. By the consistency of
 * mixes of 10 % fat with 0.55, 0.2 and 0.2 % of them (C. Liu et al. 2023, table 4, read
 * second-hand) the low ends of locust bean gum and xanthan are lower, because sugar makes the coils
 * smaller (Elfak, Pass and Phillips 1979, abstract), and the high end of carrageenan (iota) is
 * higher. Guar and cellulose gum: low end by 0.1 % of the two together (M. BahramParvar and H. D.
 * Goff, Dairy Sci. Technol. 93 (2013) 273, table 1, read second-hand). Cooked starch swells to
 * 10–25 mL/g (from memory).
 *
 * <p>Flow index n of the power law, from the same two papers; 0.7 for others, of mixes without
 * xanthan (H. D. Goff, V. J. Davidson and E. Cappi 1994, read second-hand).
 */
public enum Thickener {
    GUAR(new Band(7, 9, 15), 0.73),
    LOCUST_BEAN(new Band(4.6, 7, 11), 0.80),
    XANTHAN(new Band(17, 25, 60), 0.46),
    CARRAGEENAN(new Band(5, 10, 24), 0.42),
    ALGINATE(new Band(4, 7, 12), 0.7),
    CELLULOSE_GUM(new Band(5, 8, 15), 0.73),
    PECTIN(new Band(2, 4, 6), 0.7),
    AGAR(new Band(2, 4, 6), 0.7),
    GELATINE(new Band(0.3, 0.5, 0.7), 0.7),
    /** Only once cooked. */
    COOKED_STARCH(new Band(0.10, 0.16, 0.25), 1),
    /** A commercial blend of unknown composition. */
    UNKNOWN_BLEND(new Band(4, 9, 15), 0.7);

    private final Band dLPerG;
    private final double flowIndex;

    Thickener(Band dLPerG, double flowIndex) {
        this.dLPerG = dLPerG;
        this.flowIndex = flowIndex;
    }

    /**
     * {@return the thickener in an ingredient, by the name of anything with stabiliser in it;
     * {@link #UNKNOWN_BLEND} if that gives no clue}
     */
    public static Thickener of(Ingredient ingredient) {
        String said = ingredient.name().toLowerCase(Locale.ROOT);
        for (Thickener thickener : values()) {
            if (said.contains(thickener.name().toLowerCase(Locale.ROOT).replace('_', ' '))) {
                return thickener;
            }
        }
        return UNKNOWN_BLEND;
    }

    /**
     * {@return volume that one gram takes up, dL/g: intrinsic viscosity of a gum, swollen volume of
     * starch}
     */
    public Band dLPerG() {
        return dLPerG;
    }

    /** {@return flow index n: 1 if stirring doesn't thin it, less if it does} */
    public double flowIndex() {
        return flowIndex;
    }
}
