package coldwright.science.crystal;

import coldwright.science.Temperature;
import coldwright.science.freezing.IceActivity;
import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;
import coldwright.science.glass.SyrupViscosity;

import java.util.Map;

/**
 * The liquid between the crystals at one temperature, in equilibrium with ice, and how fast it lets
 * them exchange water.
 *
 * <p>Water moves through solutes that stay behind (Maxwell and Stefan): N = −c a' x_w/Σ(xⱼ/Ðⱼ), a'
 * the gradient of ln a_w. With the Gibbs–Thomson shift of a_w at a round face this gives dR/dt =
 * (A/R)(S − 1/R) and
 *
 * <pre>A = 2 γ v² c x_w / (R T Σ xⱼ/Ðⱼ),   Ðⱼ = x_w Dⱼ + x_s D_w (Darken)</pre>
 *
 * with v the molar volume of ice, c total moles per volume, xⱼ the mole fraction of solute j, x_s
 * all of them. The non-ideality of the syrup cancels, as T. van Westen and R. D. Groot, "Predicting
 * the kinetics of ice recrystallization in aqueous sugar solutions", Cryst. Growth Des. 18 (2018)
 * 2405, point out (abstract read; the equations here were derived independently): with
 * self-diffusion coefficients they matched measured rates in sucrose within a factor of 2.
 *
 * <p>Heat must leave the crystal too: 1/A = 1/A(diffusion) + 1/A(heat), A(heat) = k Γ/(ρL).
 */
record UnfrozenSyrup(double waterActivity, double viscosityMPaS, double growthUm3PerS) {
    /** Molar volume of ice, m³/mol: 18.015 g/mol over its density. */
    private static final double ICE_M3_PER_MOL = 18.015e-3 / GibbsThomson.ICE_KG_PER_M3;

    private static final double WATER_G_PER_MOL = 18.015;

    /** Heat conductivity of ice and syrup, W/(m·K): between 0.45 and 2.2; hardly matters. */
    private static final double CONDUCTIVITY_W_PER_MK = 0.5;

    /** Apparent volume of dissolved sugars at 20 °C, mL/g (memory); salts and alcohol differ. */
    private static final double SOLUTE_ML_PER_G = 0.62;

    /** Salts of milk and fruit count as molecules of this molar mass in diffusion. */
    private static final double ION_G_PER_MOL = 40;

    /**
     * The syrup left when part of the water is ice, below 0 °C, with the water still liquid, g, of
     * the solution's own.
     */
    static UnfrozenSyrup of(
            Solution solution, LongSugars longSugars, double liquidWaterG, double temperatureC) {
        double activity = IceActivity.waterActivity(Math.min(0, temperatureC));
        double viscosity =
                SyrupViscosity.mPaS(thickening(solution, longSugars, liquidWaterG), temperatureC);
        double waterMol = liquidWaterG / WATER_G_PER_MOL;
        double soluteMol = longSugars.mol();
        double soluteG = longSugars.higherSaccharidesG();
        for (Map.Entry<Solute, Double> e : solution.massG().entrySet()) {
            soluteMol += e.getValue() / e.getKey().molarMassGPerMol();
            soluteG += e.getValue();
        }
        double ionMol = Math.max(0, solution.idealMol() - longSugars.mol());
        soluteMol += ionMol;
        double all = waterMol + soluteMol;
        DarkenPairs darkenPairs =
                new DarkenPairs(
                        waterMol / all,
                        soluteMol / all * Diffusion.waterM2PerS(activity, temperatureC),
                        viscosity,
                        temperatureC);
        double drag = ionMol / all / darkenPairs.m2PerS(ION_G_PER_MOL);
        for (Map.Entry<Solute, Double> e : solution.massG().entrySet()) {
            double molarMass = e.getKey().molarMassGPerMol();
            drag += e.getValue() / molarMass / all / darkenPairs.m2PerS(molarMass);
        }
        if (longSugars.mol() > 0) {
            double molarMass =
                    Math.max(ION_G_PER_MOL, longSugars.higherSaccharidesG() / longSugars.mol());
            drag += longSugars.mol() / all / darkenPairs.m2PerS(molarMass);
        }
        double volumeM3 = (liquidWaterG + SOLUTE_ML_PER_G * soluteG) * 1e-6;
        double concentration = all / volumeM3;
        double gamma = GibbsThomson.SURFACE_MJ_PER_M2 * 1e-3;
        double byDiffusion =
                2
                        * gamma
                        * ICE_M3_PER_MOL
                        * ICE_M3_PER_MOL
                        * concentration
                        * darkenPairs.waterShare()
                        / (Temperature.GAS_J_PER_MOLK * Temperature.kelvin(temperatureC) * drag);
        double both = 1 / (1 / byDiffusion + 1 / byHeatM3PerS());
        return new UnfrozenSyrup(activity, viscosity, both * 1e18);
    }

    /** Growth constant if only heat had to leave the crystal, m³/s. */
    static double byHeatM3PerS() {
        return CONDUCTIVITY_W_PER_MK
                * GibbsThomson.DROP_C_UM
                * 1e-6
                / (GibbsThomson.ICE_KG_PER_M3 * GibbsThomson.MELTING_J_PER_G * 1e3);
    }

    private static Solution thickening(
            Solution solution, LongSugars longSugars, double liquidWaterG) {
        Solution left = new Solution(liquidWaterG, solution.massG(), Map.of());
        return longSugars.higherSaccharidesG() > 0
                ? left.with(longSugars.higherSaccharidesG(), Solute.SUCROSE)
                : left;
    }

    /**
     * Long sugars, which thicken more than they lower the freezing point: their mass, g, in the
     * same amount of mix as the solution, and molecules of them, mol, among the solution's ideal
     * particles.
     */
    record LongSugars(double higherSaccharidesG, double mol) {
        static final LongSugars NONE = new LongSugars(0, 0);
    }

    /** Diffusivities of water against each solute (Darken). */
    private record DarkenPairs(
            double waterShare, double waterPart, double viscosityMPaS, double temperatureC) {
        double m2PerS(double molarMass) {
            return waterShare * Diffusion.soluteM2PerS(molarMass, viscosityMPaS, temperatureC)
                    + waterPart;
        }
    }
}
