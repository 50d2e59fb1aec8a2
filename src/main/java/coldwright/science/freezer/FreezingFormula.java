package coldwright.science.freezer;

import coldwright.science.Require;
import coldwright.science.Temperature;

/**
 * Freezing time by hand: the formulas of Plank and of Pham.
 *
 * <p>Plank: t = ρ·L/(T_f − T_a)·(P·D/h + R·D²/k); for slab, cylinder, sphere P 1/2, 1/4, 1/6 and R
 * 1/8, 1/16, 1/24. Only the freezing itself, at one temperature: 20 to 40 % short for food.
 *
 * <p>Pham: t = d/(E·h)·(ΔH₁/ΔT₁ + ΔH₂/ΔT₂)·(1 + Bi/2), with T_fm = 1.8 + 0.263·T_c + 0.105·T_a, ΔH₁
 * = ρ·c_l·(T_i − T_fm), ΔH₂ = ρ·(L + c_s·(T_fm − T_c)), ΔT₁ = (T_i + T_fm)/2 − T_a, ΔT₂ = T_fm −
 * T_a, Bi = h·d/k, d = D/2, E 1, 2, 3. It includes cooling before and after freezing; about 10 %
 * for watery food that starts to freeze near −1 °C (from memory), T_a −15 °C and colder.
 *
 * <p>Sources: R. Plank, Z. ges. Kälte-Ind. 20 (1913); Q. T. Pham, J. Food Technol. 21 (1986)
 * 209–219, in the form of ASHRAE Handbook, Refrigeration, read in transcription.
 */
public final class FreezingFormula {
    private final Form form;
    private final double sizeMm;
    private double densityKgPerM3 = 1050;
    private double latentJPerG = 230;
    private double conductivityWPerMK = 1.4;
    private double filmWPerM2K = 10;
    private double freezesAtC = -1;
    private double airC = -18;
    private double liquidJPerGK = 3.5;
    private double solidJPerGK = 1.9;
    private double startC = 5;
    private double endC = -10;

    /** The three forms with a formula. */
    public enum Form {
        SLAB(1 / 2., 1 / 8., 1),
        CYLINDER(1 / 4., 1 / 16., 2),
        SPHERE(1 / 6., 1 / 24., 3);

        private final double p;
        private final double r;
        private final int dimension;

        Form(double p, double r, int dimension) {
            this.p = p;
            this.r = r;
            this.dimension = dimension;
        }
    }

    private FreezingFormula(Form form, double sizeMm) {
        this.form = form;
        this.sizeMm = sizeMm;
    }

    /**
     * A body of a form and size, otherwise a watery food in a home freezer.
     *
     * @param sizeMm thickness or diameter, mm
     */
    public static FreezingFormula of(Form form, double sizeMm) {
        return new FreezingFormula(form, Require.positive("sizeMm", sizeMm, "mm"));
    }

    private FreezingFormula copy() {
        FreezingFormula copy = new FreezingFormula(form, sizeMm);
        copy.densityKgPerM3 = densityKgPerM3;
        copy.latentJPerG = latentJPerG;
        copy.conductivityWPerMK = conductivityWPerMK;
        copy.filmWPerM2K = filmWPerM2K;
        copy.freezesAtC = freezesAtC;
        copy.airC = airC;
        copy.liquidJPerGK = liquidJPerGK;
        copy.solidJPerGK = solidJPerGK;
        copy.startC = startC;
        copy.endC = endC;
        return copy;
    }

    /**
     * With another density and latent heat.
     *
     * @param newDensityKgPerM3 density, kg/m³
     * @param newLatentJPerG latent heat of the whole, J/g
     */
    public FreezingFormula matter(double newDensityKgPerM3, double newLatentJPerG) {
        FreezingFormula copy = copy();
        copy.densityKgPerM3 = Require.positive("densityKgPerM3", newDensityKgPerM3, "kg/m³");
        copy.latentJPerG = Require.positive("latentJPerG", newLatentJPerG, "J/g");
        return copy;
    }

    /**
     * With other conduction.
     *
     * @param newConductivityWPerMK conductivity frozen, W/(m·K)
     * @param newFilmWPerM2K film outside, W/(m²·K)
     */
    public FreezingFormula conduction(double newConductivityWPerMK, double newFilmWPerM2K) {
        FreezingFormula copy = copy();
        copy.conductivityWPerMK =
                Require.positive("conductivityWPerMK", newConductivityWPerMK, "W/(m·K)");
        copy.filmWPerM2K = Require.positive("filmWPerM2K", newFilmWPerM2K, "W/(m²·K)");
        return copy;
    }

    /**
     * Between other temperatures.
     *
     * @param newFreezesAtC freezing point, °C
     * @param newAirC temperature outside, °C, colder
     */
    public FreezingFormula between(double newFreezesAtC, double newAirC) {
        FreezingFormula copy = copy();
        copy.freezesAtC = Temperature.require("freezesAtC", newFreezesAtC);
        copy.airC = Temperature.require("airC", newAirC);
        Require.that(
                newAirC < newFreezesAtC,
                "airC is %s °C; it must be below the freezing point of %s °C",
                newAirC,
                newFreezesAtC);
        return copy;
    }

    /**
     * With other heat capacities (Pham only).
     *
     * @param newLiquidJPerGK unfrozen, J/(g·K)
     * @param newSolidJPerGK frozen, J/(g·K)
     */
    public FreezingFormula heatCapacities(double newLiquidJPerGK, double newSolidJPerGK) {
        FreezingFormula copy = copy();
        copy.liquidJPerGK = Require.positive("liquidJPerGK", newLiquidJPerGK, "J/(g·K)");
        copy.solidJPerGK = Require.positive("solidJPerGK", newSolidJPerGK, "J/(g·K)");
        return copy;
    }

    /**
     * With other temperatures in the middle (Pham only).
     *
     * @param newStartC starting temperature, °C
     * @param newEndC final temperature in the middle, °C
     */
    public FreezingFormula fromTo(double newStartC, double newEndC) {
        FreezingFormula copy = copy();
        copy.startC = Temperature.require("startC", newStartC);
        copy.endC = Temperature.require("endC", newEndC);
        return copy;
    }

    /** {@return Plank's time, s} */
    public double plankSeconds() {
        double d = sizeMm / 1000;
        return densityKgPerM3
                * latentJPerG
                * 1000
                / (freezesAtC - airC)
                * (form.p * d / filmWPerM2K + form.r * d * d / conductivityWPerMK);
    }

    /** {@return Pham's time, s} */
    public double phamSeconds() {
        double d = sizeMm / 2000;
        double mean = 1.8 + 0.263 * endC + 0.105 * airC;
        double before = 1000 * densityKgPerM3 * liquidJPerGK * (startC - mean);
        double during = 1000 * densityKgPerM3 * (latentJPerG + solidJPerGK * (mean - endC));
        double biot = filmWPerM2K * d / conductivityWPerMK;
        return d
                / (form.dimension * filmWPerM2K)
                * (before / ((startC + mean) / 2 - airC) + during / (mean - airC))
                * (1 + biot / 2);
    }
}
