package coldwright.science.crystal;

import coldwright.science.Require;
import coldwright.science.Temperature;
import coldwright.science.thermal.PureWater;

/**
 * The lower melting point of small crystals, which drives coarsening.
 *
 * <p>Equation: drop = 2γ T₀/(ρ L R).
 *
 * <p>Constants: γ 33 mJ/m² (published values run from 25 to 35; the project's choice), ice at 0 °C
 * 916.7 kg/m³ and 333.4 J/g (IAPWS-06), T₀ the melting point. Range: radius from 0.1 µm. Error:
 * that of γ, ±15 %.
 */
public final class GibbsThomson {
    /** Surface energy of ice against solution, mJ/m². */
    public static final double SURFACE_MJ_PER_M2 = 33;

    /** Density of ice at 0 °C, kg/m³, IAPWS-06 to a tenth; {@link PureWater} has all. */
    public static final double ICE_KG_PER_M3 = 916.7;

    /** Heat of melting at 0 °C, J/g, IAPWS-06 to a tenth; γ is known to ±15 %. */
    public static final double MELTING_J_PER_G = 333.4;

    /** Drop times radius, °C·µm. */
    static final double DROP_C_UM =
            2
                    * SURFACE_MJ_PER_M2
                    * 1e-3
                    * Temperature.ZERO_C_IN_K
                    / (ICE_KG_PER_M3 * MELTING_J_PER_G * 1e3)
                    * 1e6;

    private GibbsThomson() {}

    /**
     * {@return how far below the melting point of a flat face a round crystal melts, °C, more than
     * zero}
     *
     * @param radiusUm radius, µm, 0.1 and more
     */
    public static double meltingPointDropC(double radiusUm) {
        Require.within("radiusUm", radiusUm, new Require.Range(0.1, 1e6, "µm"));
        return DROP_C_UM / radiusUm;
    }
}
