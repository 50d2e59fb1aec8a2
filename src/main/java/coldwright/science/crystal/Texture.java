package coldwright.science.crystal;

import coldwright.science.Band;

/**
 * What the tongue says of the crystals.
 *
 * <p>Sources: 10 to 20 µm feels creamy (K. L. K. Cook and R. W. Hartel, "Mechanisms of ice
 * crystallization in ice cream production", Compr. Rev. Food Sci. Food Saf. 9 (2010) 213); numerous
 * crystals under about 50 µm read as smooth (R. W. Hartel, "Engineering frozen desserts", Chem.
 * Eng. Prog., May 2019); the threshold for iciness near 55 µm is from memory.
 */
public enum Texture {
    /** No ice, or hardly any. */
    NOT_FROZEN("not frozen", 0),
    CREAMY("creamy", 20),
    SMOOTH("smooth", 50),
    /** At the threshold. */
    ON_THE_EDGE("on the edge of icy", 55),
    ICY("icy", Double.POSITIVE_INFINITY);

    private final String words;
    private final double upToUm;

    Texture(String words, double upToUm) {
        this.words = words;
        this.upToUm = upToUm;
    }

    /**
     * The texture for a mean size.
     *
     * @param meanUm mean diameter of the crystals, µm; zero for no ice
     * @return what the tongue says
     */
    public static Texture of(double meanUm) {
        for (Texture texture : values()) {
            if (meanUm <= texture.upToUm) {
                return texture;
            }
        }
        throw new IllegalArgumentException(
                "meanUm is not a number; it must be zero or more: the mean diameter of the crystals");
    }

    /**
     * The word for it.
     *
     * @return such as {@code smooth}
     */
    public String words() {
        return words;
    }

    /**
     * The words for a band.
     *
     * @param meanUm mean diameter of the crystals, µm
     * @return such as {@code smooth, at worst icy}
     */
    static String words(Band meanUm) {
        String middle = of(meanUm.middle()).words;
        String best = of(meanUm.low()).words;
        String worst = of(meanUm.high()).words;
        return middle
                + (best.equals(middle) ? "" : ", at best " + best)
                + (worst.equals(middle) ? "" : ", at worst " + worst);
    }

    /**
     * Largest mean diameter that still counts as this.
     *
     * @return µm
     */
    public double upToUm() {
        return upToUm;
    }
}
