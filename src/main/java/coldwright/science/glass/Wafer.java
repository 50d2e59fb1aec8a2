package coldwright.science.glass;

import static coldwright.science.mix.Component.OTHER_CARBOHYDRATE;
import static coldwright.science.mix.Component.OTHER_FAT;
import static coldwright.science.mix.Component.OTHER_PROTEIN;
import static coldwright.science.mix.Component.STARCH;
import static coldwright.science.mix.Component.SUCROSE;
import static coldwright.science.mix.Component.WATER;

import coldwright.science.Require;
import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;

import java.util.Map;

/**
 * A baked wafer for a cone, by its composition and thickness.
 *
 * <p>Heat capacity: Choi and Okos 1986 at 60 °C (carbohydrate 1.65, protein 2.08, fat 2.06, water
 * 4.19 J/(g·K)). Density 0.6 g/mL and conductivity 0.12 W/(m·K) are those of a porous dry crumb, by
 * judgement, each within a third.
 *
 * @param composition its composition per 100 g; fibre and unnamed parts count as starch, salts are
 *     left out
 * @param thicknessMm thickness, mm, 0.5 to 6
 */
public record Wafer(Composition composition, double thicknessMm) {
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
    private static final double MOSTLY_FAT_PERCENT = 60;

    public Wafer {
        Require.within("thicknessMm", thicknessMm, new Require.Range(0.5, 6, "mm"));
        double water = composition.percent(WATER);
        Require.within("waterPercent of the wafer", water, new Require.Range(0, 40, "% by mass"));
        Require.within(
                "fatPercent of the wafer",
                composition.percent(Component.Kind.FAT),
                new Require.Range(0, MOSTLY_FAT_PERCENT, "% by mass"));
    }

    /**
     * A wafer of the usual 2 mm.
     *
     * @param composition its composition per 100 g
     */
    public static Wafer of(Composition composition) {
        return new Wafer(composition, USUAL_MM);
    }

    /**
     * A rolled sugar cone, 2 mm thick.
     *
     * <p>USDA SR24 18272: water 3.0, protein 7.9, fat 3.8, carbohydrate 84.1 of which sugars 25.66
     * and fibre 1.7; the sugars are counted as sucrose.
     */
    public static Wafer rolledSugarCone() {
        return of(
                Composition.NOTHING
                        .with(3.0, WATER)
                        .with(25.66, SUCROSE)
                        .with(56.74, STARCH)
                        .with(1.7, OTHER_CARBOHYDRATE)
                        .with(7.9, OTHER_PROTEIN)
                        .with(3.8, OTHER_FAT));
    }

    /**
     * A moulded wafer cone, 2 mm thick: little sugar, so it cannot be rolled.
     *
     * <p>USDA SR24 18271: water 5.3, protein 8.1, fat 6.9, carbohydrate 79.0 of which sugars 6.0
     * and fibre 3.0.
     */
    public static Wafer mouldedCone() {
        return of(
                Composition.NOTHING
                        .with(5.3, WATER)
                        .with(6.0, SUCROSE)
                        .with(70.0, STARCH)
                        .with(3.0, OTHER_CARBOHYDRATE)
                        .with(8.1, OTHER_PROTEIN)
                        .with(6.9, OTHER_FAT));
    }

    /**
     * The same wafer, thicker or thinner.
     *
     * @param newThicknessMm thickness, mm, 0.5 to 6
     */
    public Wafer thick(double newThicknessMm) {
        return new Wafer(composition, newThicknessMm);
    }

    /**
     * The same wafer with another water content, its other parts in the same proportion.
     *
     * @param newWaterPercent water, % by mass, 0 to 40
     */
    public Wafer moist(double newWaterPercent) {
        Require.within("newWaterPercent", newWaterPercent, new Require.Range(0, 40, "% by mass"));
        double f = (100 - newWaterPercent) / (100 - waterPercent());
        Composition moist = Composition.NOTHING.with(newWaterPercent, WATER);
        for (Component component : Component.values()) {
            double percent = composition.percent(component);
            if (component != WATER && percent > 0) {
                moist = moist.with(percent * f, component);
            }
        }
        return new Wafer(moist, thicknessMm);
    }

    /** {@return water, % by mass} */
    public double waterPercent() {
        return composition.percent(WATER);
    }

    /** {@return sugars of all kinds, % by mass} */
    public double sugarPercent() {
        return composition.percent(Component.Kind.SUGAR);
    }

    /** {@return heat capacity, J/(g·K)} */
    public double heatCapacityJPerGK() {
        return (waterPercent() * CP_WATER
                        + (sugarPercent() + composition.percent(Component.Kind.CARBOHYDRATE))
                                * CP_CARBOHYDRATE
                        + composition.percent(Component.Kind.PROTEIN) * CP_PROTEIN
                        + composition.percent(Component.Kind.FAT) * CP_FAT)
                / 100;
    }

    /**
     * {@return whether there is enough sugar for the hot wafer to bend: true from {@value
     * #ROLLABLE_SUGAR_PERCENT} % sugar in the dry matter on}
     */
    public boolean canBeRolled() {
        return sugarPercent() / (100 - waterPercent()) * 100 >= ROLLABLE_SUGAR_PERCENT;
    }

    /** The melt of sugar and its share of the water that binds the wafer and lets it bend. */
    public GordonTaylor sugarPhase() {
        double share =
                waterPercent() / (100 - composition.percent(Component.Kind.FAT) - waterPercent());
        return new GordonTaylor(share * sugarPercent(), Map.of(SugarGlass.SUCROSE, sugarPercent()));
    }
}
