package coldwright.desk.page;

import static coldwright.science.mix.Amount.grams;

import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;
import coldwright.science.sensory.Firmness;
import coldwright.science.thermal.PureWater;
import coldwright.science.thermal.ThermalCurve;

import java.util.Arrays;

/**
 * The sorbet of the home page: blood orange juice with sugar, in a freezer at −18 °C.
 *
 * @param icePercents ice at 0, −0.25 … −25 °C, % of its water
 * @param icePercent ice in the freezer, % of its water
 * @param iceVolumePercent ice in the freezer, % of the volume, without air
 * @param firmness how it scoops straight from the freezer
 */
record HomeSorbet(
        double[] icePercents, double icePercent, double iceVolumePercent, Firmness firmness) {
    /** Temperature of the freezer, °C. */
    static final int FREEZER_C = -18;

    /** The coldest temperature that is drawn, °C. */
    static final int COLDEST_C = -25;

    /** Distance of the temperatures at which the ice is calculated, °C. */
    static final double STEP_C = 0.25;

    /** Sugar in 1000 g of juice: least, first and most, g. */
    static final double LEAST_G = 0;

    static final double FIRST_G = 150;
    static final double MOST_G = 500;

    private static final double JUICE_G = 1000;

    /** Calculates the sorbet with so many grams of sugar for 1000 g of juice. */
    static HomeSorbet with(double sugarG) {
        Mix mix = Mix.of(grams(JUICE_G, Shelf.BLOOD_ORANGE_JUICE), grams(sugarG, Shelf.SUCROSE));
        FreezingCurve curve = mix.freezingCurve();
        double[] ice = new double[1 + (int) Math.round(-COLDEST_C / STEP_C)];
        Arrays.setAll(ice, i -> curve.icePercentAt(-i * STEP_C));
        double icePart = curve.iceG(FREEZER_C) / mix.massG();
        double density = ThermalCurve.of(mix).densityKgPerM3(FREEZER_C);
        return new HomeSorbet(
                ice,
                curve.icePercentAt(FREEZER_C),
                100 * icePart * density / PureWater.iceDensityKgPerM3(FREEZER_C),
                Firmness.of(mix, FREEZER_C));
    }
}
