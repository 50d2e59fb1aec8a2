package coldwright.science.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.published.FromTable;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.Band;
import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;
import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;

import org.junit.jupiter.params.ParameterizedTest;

import java.util.Locale;

/** Component properties and bulk heat figures against their sources. */
class PublishedHeatTest {
    private static final Ledger LEDGER = Ledger.of(PublishedHeatTest.class);

    private static final Tolerance LAST_DIGIT = Tolerance.of(1e-5, "last digit");
    private static final Tolerance LAST_DIGIT_DENSITY = Tolerance.of(0.01, "last digit");

    private static final String FIT = "the polynomials' own deviation from IAPWS";
    private static final Tolerance FIT_DENSITY = Tolerance.of(0.006, FIT);
    private static final Tolerance FIT_HEAT_CAPACITY = Tolerance.of(1.6e-4, FIT);
    private static final Tolerance FIT_CONDUCTIVITY = Tolerance.of(3e-4, FIT);
    private static final Tolerance FIT_VISCOSITY = Tolerance.of(5e-5, FIT);
    private static final Tolerance FIT_ENTHALPY = Tolerance.of(5e-3, FIT);

    private static final Tolerance BULK =
            Tolerance.percent(5, "Choi and Okos state about 5 % for a mix");

    private static final double WATER_OF_THE_SAMPLE_PERCENT = 0.5;

    @ParameterizedTest
    @FromTable("choi-okos-1986-values")
    void choiAndOkos(Row row) {
        Substance substance = Substance.valueOf(row.text("substance"));
        double t = row.number("temperature_c");
        Ledger.At at =
                LEDGER.at(
                        row,
                        substance.name().toLowerCase(Locale.ROOT)
                                + " at "
                                + row.text("temperature_c")
                                + " °C");
        if (!row.text("conductivity_w_per_m_k").isEmpty()) {
            at.compare(
                    "conductivity, W/(m·K)",
                    row.number("conductivity_w_per_m_k"),
                    substance.conductivityWPerMK(t),
                    LAST_DIGIT);
            at.compare(
                    "density, kg/m³",
                    row.number("density_kg_per_m3"),
                    substance.densityKgPerM3(t),
                    LAST_DIGIT_DENSITY);
        }
        at.compare(
                "heat capacity, J/(g·K)",
                row.number("heat_capacity_j_per_g_k"),
                substance.heatCapacityJPerGK(t),
                LAST_DIGIT);
    }

    @ParameterizedTest
    @FromTable("iapws-water-ice")
    void waterAndIce(Row row) {
        boolean water = row.text("what").equals("water");
        double t = row.number("temperature_c");
        Ledger.At at =
                LEDGER.at(row, row.text("what") + " at " + row.text("temperature_c") + " °C");
        at.compare(
                "density, kg/m³",
                row.number("density_kg_per_m3"),
                water ? PureWater.densityKgPerM3(t) : PureWater.iceDensityKgPerM3(t),
                FIT_DENSITY);
        at.compare(
                "heat capacity, J/(g·K)",
                row.number("heat_capacity_j_per_g_k"),
                water ? PureWater.heatCapacityJPerGK(t) : PureWater.iceHeatCapacityJPerGK(t),
                FIT_HEAT_CAPACITY);
        if (water) {
            at.compare(
                    "conductivity, W/(m·K)",
                    row.number("conductivity_w_per_m_k"),
                    PureWater.conductivityWPerMK(t),
                    FIT_CONDUCTIVITY);
            at.compare(
                    "viscosity, mPa·s",
                    row.number("viscosity_mpa_s"),
                    PureWater.viscosityMPaS(t),
                    FIT_VISCOSITY);
        } else {
            at.compare(
                    "enthalpy, J/g",
                    row.number("enthalpy_j_per_g"),
                    PureWater.iceEnthalpyJPerG(t),
                    FIT_ENTHALPY);
        }
    }

    @ParameterizedTest
    @FromTable("bulk-milk-ice-cream-heat")
    void bulkFigures(Row row) {
        String food = row.text("food");
        ThermalCurve curve = food.equals("milk") ? Samples.milk() : Samples.iceCream();
        assertEquals(
                row.number("water_percent"), curve.waterPercent(), WATER_OF_THE_SAMPLE_PERCENT);
        Ledger.At at = LEDGER.at(row, food);
        at.compare(
                "heat capacity above freezing, J/(g·K)",
                row.number("above_j_per_g_k"),
                curve.sensibleHeatCapacityJPerGK(10),
                BULK);
        at.compare(
                "heat capacity below freezing, J/(g·K)",
                row.number("below_j_per_g_k"),
                curve.sensibleHeatCapacityJPerGK(-20),
                BULK);
        double freezingC = curve.initialFreezingPointC();
        at.compare(
                "heat from the freezing point to −40 °C, J/g",
                row.number("latent_j_per_g") + row.number("below_j_per_g_k") * (freezingC + 40),
                curve.heatToRemoveJPerG(freezingC, -40),
                BULK);
    }

    @ParameterizedTest
    @FromTable("geankoplis-heat-capacities")
    void foodsAboveFreezing(Row row) {
        double water = row.number("water_percent");
        double fat = row.number("fat_percent");
        double rest = 100 - water - fat;
        Composition food =
                Composition.NOTHING
                        .with(water, Component.WATER)
                        .with(fat, Component.MILK_FAT)
                        .with(0.55 * rest, Component.LACTOSE)
                        .with(0.37 * rest, Component.MILK_PROTEIN)
                        .with(0.08 * rest, Component.MILK_SALTS);
        LEDGER.at(row, row.text("food"))
                .compare(
                        "heat capacity above freezing, J/(g·K)",
                        row.between("low_j_per_g_k", "high_j_per_g_k"),
                        Band.exactly(
                                ThermalComposition.of(food).heatCapacityJPerGK(row.number("at_c"))),
                        BULK);
    }

    /** Mixes with plain numbers, so that these tests need no shelf. */
    static final class Samples {
        private Samples() {}

        static ThermalCurve milk() {
            Composition milk =
                    Composition.NOTHING
                            .with(88.13, Component.WATER)
                            .with(3.27, Component.MILK_FAT)
                            .with(3.15, Component.MILK_PROTEIN)
                            .with(4.78, Component.LACTOSE)
                            .with(0.67, Component.MILK_SALTS);
            Solution solution =
                    Solution.inWater(88.13)
                            .with(4.78, Solute.LACTOSE)
                            .withIdealParticles(11.5, "milk salts");
            return ThermalCurve.of(ThermalComposition.of(milk), solution.freezingCurve());
        }

        static ThermalCurve iceCream() {
            Composition mix =
                    Composition.NOTHING
                            .with(63.7, Component.WATER)
                            .with(10, Component.MILK_FAT)
                            .with(4, Component.MILK_PROTEIN)
                            .with(6, Component.LACTOSE)
                            .with(15, Component.SUCROSE)
                            .with(0.3, Component.STABILISER)
                            .with(1, Component.MILK_SALTS);
            Solution solution =
                    Solution.inWater(63.7)
                            .with(6, Solute.LACTOSE)
                            .with(15, Solute.SUCROSE)
                            .withIdealParticles(17, "milk salts");
            return ThermalCurve.of(ThermalComposition.of(mix), solution.freezingCurve());
        }

        static ThermalCurve sorbet() {
            Composition mix =
                    Composition.NOTHING.with(72, Component.WATER).with(28, Component.SUCROSE);
            Solution solution = Solution.inWater(72).with(28, Solute.SUCROSE);
            return ThermalCurve.of(ThermalComposition.of(mix), solution.freezingCurve());
        }

        static ThermalCurve water() {
            Composition mix = Composition.NOTHING.with(100, Component.WATER);
            return ThermalCurve.of(
                    ThermalComposition.of(mix), Solution.inWater(100).freezingCurve());
        }
    }
}
