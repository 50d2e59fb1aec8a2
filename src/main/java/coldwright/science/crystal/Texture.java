package coldwright.science.crystal;

import coldwright.words.Worded;

/**
 * The texture of a batch by the size of its crystals.
 *
 * <p>Sources: 10 to 20 µm feels creamy (K. L. K. Cook and R. W. Hartel, "Mechanisms of ice
 * crystallization in ice cream production", Compr. Rev. Food Sci. Food Saf. 9 (2010) 213); numerous
 * crystals under about 50 µm feel smooth (R. W. Hartel, "Engineering frozen desserts", Chem. Eng.
 * Prog., May 2019); the threshold for iciness near 55 µm is from memory.
 */
public enum Texture implements Worded {
    /** No ice, or hardly any. */
    NOT_FROZEN(0),
    CREAMY(20),
    SMOOTH(50),
    /** At the threshold. */
    ON_THE_EDGE(55),
    ICY(Double.POSITIVE_INFINITY);

    private final double upToUm;

    Texture(double upToUm) {
        this.upToUm = upToUm;
    }

    /**
     * The texture for a mean size.
     *
     * @param meanUm mean diameter of the crystals, µm; zero for no ice
     */
    public static Texture of(double meanUm) {
        for (Texture texture : values()) {
            if (meanUm <= texture.upToUm) {
                return texture;
            }
        }
        throw new IllegalArgumentException("meanUm is not a number; it must be zero or more");
    }

    /** {@return largest mean diameter of this texture, µm} */
    public double upToUm() {
        return upToUm;
    }
}
