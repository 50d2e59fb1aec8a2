package coldwright.science.freezer;

import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;
import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;
import coldwright.science.thermal.ThermalComposition;
import coldwright.science.thermal.ThermalCurve;

/** Batches with plain numbers, so that these tests need no shelf. */
final class Batches {
    private Batches() {}

    static ThermalCurve sorbet() {
        return sugarWater(28);
    }

    static ThermalCurve sugarWater(double sugarPercent) {
        double water = 100 - sugarPercent;
        Composition mix =
                Composition.NOTHING
                        .with(water, Component.WATER)
                        .with(sugarPercent, Component.SUCROSE);
        Solution solution = Solution.inWater(water).with(sugarPercent, Solute.SUCROSE);
        return ThermalCurve.of(ThermalComposition.of(mix), solution.freezingCurve());
    }

    static ThermalCurve spiked(double alcoholPercent) {
        double water = 76 - alcoholPercent;
        Composition mix =
                Composition.NOTHING
                        .with(water, Component.WATER)
                        .with(24, Component.SUCROSE)
                        .with(alcoholPercent, Component.ALCOHOL);
        Solution solution =
                Solution.inWater(water)
                        .with(24, Solute.SUCROSE)
                        .with(alcoholPercent, Solute.ETHANOL);
        return ThermalCurve.of(ThermalComposition.of(mix), solution.freezingCurve());
    }

    static ThermalCurve iceCream() {
        Composition mix =
                Composition.NOTHING
                        .with(63, Component.WATER)
                        .with(11, Component.MILK_FAT)
                        .with(4, Component.MILK_PROTEIN)
                        .with(6, Component.LACTOSE)
                        .with(15, Component.SUCROSE)
                        .with(1, Component.MILK_SALTS);
        Solution solution =
                Solution.inWater(63)
                        .with(6, Solute.LACTOSE)
                        .with(15, Solute.SUCROSE)
                        .withIdealParticles(17, "milk salts");
        return ThermalCurve.of(ThermalComposition.of(mix), solution.freezingCurve());
    }
}
