package coldwright.science.freezer;

import coldwright.science.Require;

/**
 * The wall between batch and cold.
 *
 * <p>Conductivities: EN ISO 10077-2:2003 (polythene 0.33, polypropylene 0.22, stainless steel 17,
 * soda-lime glass 1.0), read. Thicknesses are what kitchens have, from memory.
 *
 * @param thicknessMm thickness, mm, zero for none
 * @param conductivityWPerMK conductivity, W/(m·K)
 */
public record Wall(double thicknessMm, double conductivityWPerMK) {
    /** A freezer bag of polythene in a second one, 2 × 0.07 mm. */
    public static final Wall DOUBLE_BAG = new Wall(0.14, 0.33);

    /** A polypropylene tub. */
    public static final Wall PLASTIC_TUB = new Wall(1.2, 0.22);

    /** A can or bowl of stainless steel. */
    public static final Wall STEEL = new Wall(0.8, 17);

    /** A glass dish; it can crack when frozen full. */
    public static final Wall GLASS = new Wall(4, 1.0);

    public Wall {
        Require.within("thicknessMm", thicknessMm, new Require.Range(0, 50, "mm"));
        Require.positive("conductivityWPerMK", conductivityWPerMK, "W/(m·K)");
    }

    /**
     * {@return heat transfer coefficient of wall and film together, W/(m²·K)}
     *
     * @param filmWPerM2K film outside, W/(m²·K)
     */
    public double with(double filmWPerM2K) {
        return 1 / (1 / filmWPerM2K + thicknessMm / 1000 / conductivityWPerMK);
    }
}
