package coldwright.science.glass;

import coldwright.science.Require;

import java.util.Map;

/**
 * A baked wafer for a cone, by what 100 g of it hold and how thick it is.
 *
 * <p>Heat capacity: Choi and Okos 1986 at 60 °C (carbohydrate 1.65, protein 2.08, fat 2.06, water
 * 4.19 J/(g·K)). Density 0.6 g/mL and conductivity 0.12 W/(m·K) are those of a porous dry crumb, by
 * judgement, each within a third.
 *
 * @param waterPercent water, % by mass
 * @param sugarPercent sugars, counted as sucrose, % by mass
 * @param starchPercent starch, fibre and other carbohydrate, % by mass
 * @param proteinPercent protein, % by mass
 * @param fatPercent fat, % by mass
 * @param thicknessMm thickness, mm, 0.5 to 6
 */
public record Wafer(
        double waterPercent,
        double sugarPercent,
        double starchPercent,
        double proteinPercent,
        double fatPercent,
        double thicknessMm) {
    /** Density of the porous crumb, g/mL; by judgement, ±30 %. */
    public static final double DENSITY_G_PER_ML = 0.6;

    /** Heat conductivity of the porous crumb, W/(m·K); by judgement, ±30 %. */
    public static final double CONDUCTIVITY_W_PER_MK = 0.12;

    /** Below this much sugar in the dry matter a wafer cannot be rolled hot; from memory. */
    public static final double ROLLABLE_SUGAR_PERCENT = 20;

    private static final double CP_WATER = 4.19;
    private static final double CP_CARBOHYDRATE = 1.65;
    private static final double CP_PROTEIN = 2.08;
    private static final double CP_FAT = 2.06;
    private static final double USUAL_MM = 2;
    private static final Require.Range PERCENT = new Require.Range(0, 100, "% by mass");

    /** Checks each share and their sum. */
    public Wafer {
        Require.within("waterPercent", waterPercent, PERCENT);
        Require.within("sugarPercent", sugarPercent, PERCENT);
        Require.within("starchPercent", starchPercent, PERCENT);
        Require.within("proteinPercent", proteinPercent, PERCENT);
        Require.within("fatPercent", fatPercent, PERCENT);
        Require.within("thicknessMm", thicknessMm, new Require.Range(0.5, 6, "mm"));
        double sum = waterPercent + sugarPercent + starchPercent + proteinPercent + fatPercent;
        Require.within("sum of the wafer's parts", sum, new Require.Range(50, 100.5, "%"));
    }

    /**
     * A rolled sugar cone, 2 mm thick.
     *
     * <p>USDA SR24 18272: water 3.0, protein 7.9, fat 3.8, carbohydrate 84.1 of which sugars 25.66.
     *
     * @return the wafer
     */
    public static Wafer rolledSugarCone() {
        return new Wafer(3.0, 25.66, 58.44, 7.9, 3.8, USUAL_MM);
    }

    /**
     * A moulded wafer cone, 2 mm thick: little sugar, so it cannot be rolled.
     *
     * <p>USDA SR24 18271: water 5.3, protein 8.1, fat 6.9, carbohydrate 79.0 of which sugars 6.0.
     *
     * @return the wafer
     */
    public static Wafer mouldedCone() {
        return new Wafer(5.3, 6.0, 73.0, 8.1, 6.9, USUAL_MM);
    }

    /**
     * The same wafer, thicker or thinner.
     *
     * @param newThicknessMm thickness, mm, 0.5 to 6
     * @return the new wafer
     */
    public Wafer thick(double newThicknessMm) {
        return new Wafer(
                waterPercent,
                sugarPercent,
                starchPercent,
                proteinPercent,
                fatPercent,
                newThicknessMm);
    }

    /**
     * The same wafer with another water content, its other parts in the same proportion.
     *
     * @param newWaterPercent water, % by mass, 0 to 40
     * @return the new wafer
     */
    public Wafer moist(double newWaterPercent) {
        Require.within("newWaterPercent", newWaterPercent, new Require.Range(0, 40, "% by mass"));
        double f = (100 - newWaterPercent) / (100 - waterPercent);
        return new Wafer(
                newWaterPercent,
                sugarPercent * f,
                starchPercent * f,
                proteinPercent * f,
                fatPercent * f,
                thicknessMm);
    }

    /**
     * Heat capacity.
     *
     * @return J/(g·K)
     */
    public double heatCapacityJPerGK() {
        return (waterPercent * CP_WATER
                        + (sugarPercent + starchPercent) * CP_CARBOHYDRATE
                        + proteinPercent * CP_PROTEIN
                        + fatPercent * CP_FAT)
                / 100;
    }

    /**
     * Whether there is sugar enough for the hot wafer to bend.
     *
     * @return true from {@value #ROLLABLE_SUGAR_PERCENT} % sugar in the dry matter on
     */
    public boolean canBeRolled() {
        return sugarPercent / (100 - waterPercent) * 100 >= ROLLABLE_SUGAR_PERCENT;
    }

    /**
     * The melt of sugar and water that holds the wafer together and lets it bend: its own share of
     * the water with it.
     *
     * @return the blend
     */
    public GordonTaylor sugarPhase() {
        double share = waterPercent / (100 - fatPercent - waterPercent);
        return new GordonTaylor(share * sugarPercent, Map.of(SugarGlass.SUCROSE, sugarPercent));
    }

    /**
     * The wafer's walls as if sugar, starch and protein were one phase: the stiff limit.
     *
     * @return the blend
     */
    public GordonTaylor wholeMatrix() {
        return new GordonTaylor(
                waterPercent,
                Map.of(
                        SugarGlass.SUCROSE, sugarPercent,
                        SugarGlass.STARCH, starchPercent,
                        SugarGlass.GLUTEN, proteinPercent));
    }
}
