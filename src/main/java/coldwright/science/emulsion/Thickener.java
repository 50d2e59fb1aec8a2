package coldwright.science.emulsion;

import coldwright.science.Band;
import coldwright.science.mix.Ingredient;

import java.util.Locale;

/**
 * A thickener, by the volume that one gram takes up in water: the intrinsic viscosity for gums, the
 * swollen volume for starch.
 *
 * <p>Values in dL/g, from memory, wide because they differ by brand: guar 8–15, locust bean 8–15,
 * xanthan 20–60, carrageenan 5–10, carboxymethyl cellulose 5–15, pectin 2–6, gelatine 0.3–0.7;
 * cooked starch swells to 10–25 mL/g.
 */
public enum Thickener {
    GUAR(new Band(8, 11, 15)),
    LOCUST_BEAN(new Band(8, 11, 15)),
    XANTHAN(new Band(20, 35, 60)),
    CARRAGEENAN(new Band(5, 7, 10)),
    ALGINATE(new Band(4, 7, 12)),
    CELLULOSE_GUM(new Band(5, 9, 15)),
    PECTIN(new Band(2, 4, 6)),
    AGAR(new Band(2, 4, 6)),
    GELATINE(new Band(0.3, 0.5, 0.7)),
    /** Only once cooked. */
    COOKED_STARCH(new Band(0.10, 0.16, 0.25)),
    /** A commercial blend of unknown composition. */
    UNKNOWN_BLEND(new Band(4, 9, 15));

    private final Band dLPerG;

    Thickener(Band dLPerG) {
        this.dLPerG = dLPerG;
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
}
