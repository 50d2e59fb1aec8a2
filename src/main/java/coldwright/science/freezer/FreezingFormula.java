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
 * = ρ_l·c_l·(T_i − T_fm), ΔH₂ = ρ_s·(L + c_s·(T_fm − T_c)), ΔT₁ = (T_i + T_fm)/2 − T_a, ΔT₂ = T_fm
 * − T_a, Bi = h·d/k, d = D/2, E 1, 2, 3. It includes cooling before and after freezing; about 10 %
 * for watery food that starts to freeze near −1 °C (from memory), T_a −15 °C and colder.
 *
 * <p>Sources: R. Plank, Z. ges. Kälte-Ind. 20 (1913); Q. T. Pham, J. Food Technol. 21 (1986)
 * 209–219, in the form of ASHRAE Handbook, Refrigeration, read in transcription.
 *
 * @param form its form
 * @param sizeMm thickness or diameter, mm
 * @param densityKgPerM3 density frozen, kg/m³
 * @param latentJPerG latent heat of the whole, J/g
 * @param conductivityWPerMK conductivity frozen, W/(m·K)
 * @param filmWPerM2K film outside, W/(m²·K)
 * @param freezesAtC freezing point, °C
 * @param airC temperature outside, °C, colder
 */
public record FreezingFormula(
        Form form,
        double sizeMm,
        double densityKgPerM3,
        double latentJPerG,
        double conductivityWPerMK,
        double filmWPerM2K,
        double freezesAtC,
        double airC) {
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

    public FreezingFormula {
        Require.positive("sizeMm", sizeMm, "mm");
        Require.positive("densityKgPerM3", densityKgPerM3, "kg/m³");
        Require.positive("latentJPerG", latentJPerG, "J/g");
        Require.positive("conductivityWPerMK", conductivityWPerMK, "W/(m·K)");
        Require.positive("filmWPerM2K", filmWPerM2K, "W/(m²·K)");
        Temperature.require("freezesAtC", freezesAtC);
        Temperature.require("airC", airC);
        Require.that(
                airC < freezesAtC,
                "airC is %s °C; it must be below the freezing point of %s °C",
                airC,
                freezesAtC);
    }

    /**
     * A body of a form and size, otherwise a watery food in a home freezer.
     *
     * @param sizeMm thickness or diameter, mm
     */
    public static FreezingFormula of(Form form, double sizeMm) {
        return new FreezingFormula(form, sizeMm, 1050, 230, 1.4, 10, -1, -18);
    }

    /** With another density, kg/m³, and latent heat of the whole, J/g. */
    public FreezingFormula matter(double density, double latent) {
        return new FreezingFormula(
                form, sizeMm, density, latent, conductivityWPerMK, filmWPerM2K, freezesAtC, airC);
    }

    /** With another conductivity frozen, W/(m·K), and film outside, W/(m²·K). */
    public FreezingFormula conduction(double conductivity, double film) {
        return new FreezingFormula(
                form, sizeMm, densityKgPerM3, latentJPerG, conductivity, film, freezesAtC, airC);
    }

    /** With another freezing point, °C, and temperature outside, °C, colder. */
    public FreezingFormula between(double newFreezesAtC, double newAirC) {
        return new FreezingFormula(
                form,
                sizeMm,
                densityKgPerM3,
                latentJPerG,
                conductivityWPerMK,
                filmWPerM2K,
                newFreezesAtC,
                newAirC);
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

    /** {@return Pham's time, s, from the unfrozen food to the frozen one} */
    public double phamSeconds(Ends ends) {
        double d = sizeMm / 2000;
        double mean = 1.8 + 0.263 * ends.endC + 0.105 * airC;
        double before = 1000 * ends.unfrozenKgPerM3 * ends.unfrozenJPerGK * (ends.startC - mean);
        double during =
                1000 * densityKgPerM3 * (latentJPerG + ends.frozenJPerGK * (mean - ends.endC));
        double biot = filmWPerM2K * d / conductivityWPerMK;
        return d
                / (form.dimension * filmWPerM2K)
                * (before / ((ends.startC + mean) / 2 - airC) + during / (mean - airC))
                * (1 + biot / 2);
    }

    /**
     * The food before and after freezing, for Pham's formula.
     *
     * @param startC temperature at the start, °C
     * @param unfrozenKgPerM3 density unfrozen, kg/m³
     * @param unfrozenJPerGK heat capacity unfrozen, J/(g·K)
     * @param endC temperature in the middle at the end, °C
     * @param frozenJPerGK heat capacity frozen, J/(g·K)
     */
    public record Ends(
            double startC,
            double unfrozenKgPerM3,
            double unfrozenJPerGK,
            double endC,
            double frozenJPerGK) {
        public Ends {
            Temperature.require("startC", startC);
            Temperature.require("endC", endC);
            Require.positive("unfrozenKgPerM3", unfrozenKgPerM3, "kg/m³");
            Require.positive("unfrozenJPerGK", unfrozenJPerGK, "J/(g·K)");
            Require.positive("frozenJPerGK", frozenJPerGK, "J/(g·K)");
        }
    }
}
