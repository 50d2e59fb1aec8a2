package coldwright.science.bath;

import coldwright.words.Worded;

/**
 * The vessel of a bath, by the heat that its wall lets in.
 *
 * <p>Equation: 1/U = 1/h + s/k: still room air, with what walls radiate, h 8 W/(m²·K) (common
 * figure, from memory; free convection of gases alone 2 to 25, Y. A. Çengel's course notes, read),
 * then a layer of thickness s and conductivity k. The film of brine inside is left out. Water that
 * condenses on a bare bowl brings more heat, up to about half as much again: left out.
 */
public enum Vessel implements Worded {
    /** Metal or glass, bare. */
    BARE_BOWL(8),
    /** A bowl in a dry towel: 10 mm of cloth, 0.05 W/(m·K) (from memory). */
    WRAPPED_BOWL(1 / (1 / 8. + 0.010 / 0.05)),
    /** A cooler box: 25 mm of foam, 0.034 W/(m·K) (expanded polystyrene, read). */
    COOLER_BOX(1 / (1 / 8. + 0.025 / 0.034));

    private final double coefficientWPerM2K;

    Vessel(double coefficientWPerM2K) {
        this.coefficientWPerM2K = coefficientWPerM2K;
    }

    /** {@return heat transfer coefficient of the wall, W/(m²·K)} */
    public double coefficientWPerM2K() {
        return coefficientWPerM2K;
    }
}
