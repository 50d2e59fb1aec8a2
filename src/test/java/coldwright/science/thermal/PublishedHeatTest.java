package coldwright.science.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;
import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Component properties and bulk heat figures against their sources. */
class PublishedHeatTest {
    private static final double LAST_DIGIT_K = 1e-5;
    private static final double LAST_DIGIT_DENSITY = 0.01;

    /** The polynomials' own deviation from IAPWS as their documentation states it. */
    private static final double FIT_DENSITY = 0.006;

    private static final double FIT_HEAT_CAPACITY = 1.6e-4;
    private static final double FIT_CONDUCTIVITY = 3e-4;
    private static final double FIT_VISCOSITY = 5e-5;
    private static final double FIT_ENTHALPY = 5e-3;

    /** Rounded handbook figures for a food of unstated composition. */
    private static final double BULK_SHARE = 0.10;

    @ParameterizedTest
    @CsvFileSource(
            resources = "/published/choi-okos-1986-values.csv",
            useHeadersInDisplayName = true)
    void choiAndOkos(
            Substance substance, double temperatureC, double k, double density, double cp) {
        assertEquals(k, substance.conductivityWPerMK(temperatureC), LAST_DIGIT_K);
        assertEquals(density, substance.densityKgPerM3(temperatureC), LAST_DIGIT_DENSITY);
        assertEquals(cp, substance.heatCapacityJPerGK(temperatureC), LAST_DIGIT_K);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/iapws-water-ice.csv", useHeadersInDisplayName = true)
    void waterAndIce(
            String what, double t, double density, double cp, Double k, Double mu, Double h) {
        if (what.equals("water")) {
            assertEquals(density, PureWater.densityKgPerM3(t), FIT_DENSITY);
            assertEquals(cp, PureWater.heatCapacityJPerGK(t), FIT_HEAT_CAPACITY);
            assertEquals(k, PureWater.conductivityWPerMK(t), FIT_CONDUCTIVITY);
            assertEquals(mu, PureWater.viscosityMPaS(t), FIT_VISCOSITY);
        } else {
            assertEquals(density, PureWater.iceDensityKgPerM3(t), FIT_DENSITY);
            assertEquals(cp, PureWater.iceHeatCapacityJPerGK(t), FIT_HEAT_CAPACITY);
            assertEquals(h, PureWater.iceEnthalpyJPerG(t), FIT_ENTHALPY);
        }
    }

    @ParameterizedTest
    @CsvFileSource(
            resources = "/published/bulk-milk-ice-cream-heat.csv",
            useHeadersInDisplayName = true)
    void bulkFigures(String food, double water, double above, double below, double latent) {
        ThermalCurve curve = food.equals("milk") ? Samples.milk() : Samples.iceCream();
        assertEquals(water, curve.waterPercent(), 0.5);
        assertEquals(above, curve.sensibleHeatCapacityJPerGK(10), BULK_SHARE * above);
        assertEquals(below, allFrozenAt20Below(curve), BULK_SHARE * below);
        double allIce = PureWater.LATENT_HEAT_JPERG * curve.waterPercent() / 100;
        assertEquals(latent, allIce, BULK_SHARE * latent);
    }

    /** The handbook's figure below freezing is for food without any liquid left. */
    private static double allFrozenAt20Below(ThermalCurve curve) {
        double water = curve.waterPercent() / 100;
        double liquid = water * (1 - curve.icePercentAt(-20) / 100);
        return curve.sensibleHeatCapacityJPerGK(-20)
                + liquid
                        * (PureWater.iceHeatCapacityJPerGK(-20)
                                - Substance.WATER.heatCapacityJPerGK(-20));
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
            return ThermalCurve.of(Makeup.of(milk), solution.freezingCurve());
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
            return ThermalCurve.of(Makeup.of(mix), solution.freezingCurve());
        }

        static ThermalCurve sorbet() {
            Composition mix =
                    Composition.NOTHING.with(72, Component.WATER).with(28, Component.SUCROSE);
            Solution solution = Solution.inWater(72).with(28, Solute.SUCROSE);
            return ThermalCurve.of(Makeup.of(mix), solution.freezingCurve());
        }

        static ThermalCurve water() {
            Composition mix = Composition.NOTHING.with(100, Component.WATER);
            return ThermalCurve.of(Makeup.of(mix), Solution.inWater(100).freezingCurve());
        }
    }
}
