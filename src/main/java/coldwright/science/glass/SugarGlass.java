package coldwright.science.glass;

import coldwright.science.Band;

/**
 * A dry substance that turns to glass, with its glass transition and its Gordon–Taylor constant
 * against water.
 *
 * <p>Source: Y. H. Roos, "Melting and glass transitions of low molecular weight carbohydrates",
 * Carbohydr. Res. 238 (1993) 39–48 (sugars); the temperatures were seen quoted, the constants are
 * from memory. Starch and gluten: Roos, "Phase Transitions in Foods", 1995, from memory, within
 * about 20 °C. The spread is that of published values: sucrose 52 to 62 °C, maltose 43 to 87 °C.
 */
public enum SugarGlass {
    SUCROSE(new Band(52, 62, 62), 4.7),
    GLUCOSE(new Band(31, 31, 31), 4.5),
    FRUCTOSE(new Band(5, 5, 5), 3.8),
    LACTOSE(new Band(101, 101, 101), 6.6),
    MALTOSE(new Band(43, 87, 87), 6.2),
    /** Gelatinised starch, dry by extrapolation; from memory. */
    STARCH(new Band(223, 243, 263), 5.2),
    /** Wheat gluten, dry; from memory. */
    GLUTEN(new Band(140, 160, 180), 5.0);

    private final Band dryC;
    private final double constant;

    SugarGlass(Band dryC, double constant) {
        this.dryC = dryC;
        this.constant = constant;
    }

    /** {@return glass transition without any water, °C, with the spread of the sources} */
    public Band dryGlassTransitionC() {
        return dryC;
    }

    /** {@return how strongly water softens it: the constant k of Gordon and Taylor, no unit} */
    public double gordonTaylorConstant() {
        return constant;
    }
}
