package coldwright.science.crystal;

import coldwright.science.freezing.FreezingCurve;
import coldwright.science.freezing.Solution;
import coldwright.science.mix.Component;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Tally;

/** A table of ice and liquid of a mix at every temperature below its freezing point. */
final class FrozenMixTable {
    /** Coldest temperature in the table, °C. */
    static final double COLDEST_C = -40;

    /** Distance below the freezing point of line k is this times k²: fine where ice comes fast. */
    private static final double SPACING_C = 0.01;

    private final double initialFreezingPointC;
    private final double[] iceMlPerG;
    private final double[] logGrowth;
    private final double[] logViscosity;
    private final double[] icePercent;
    private final double volumeMlPerG;

    /** Fills the table for a mix of water, solutes, and long sugars that thicken the liquid. */
    FrozenMixTable(Solution solution, UnfrozenSyrup.LongSugars longSugars, Bulk bulk) {
        double massG = bulk.massG;
        FreezingCurve curve = solution.freezingCurve();
        initialFreezingPointC = curve.initialFreezingPointC();
        double reachC = Math.max(1, initialFreezingPointC - COLDEST_C);
        int steps = (int) Math.ceil(Math.sqrt(reachC / SPACING_C)) + 1;
        iceMlPerG = new double[steps];
        logGrowth = new double[steps];
        icePercent = new double[steps];
        logViscosity = new double[steps];
        for (int k = 0; k < steps; k++) {
            double t = Math.max(lineC(k), -55);
            double iceG = k == 0 ? 0 : curve.iceG(t);
            icePercent[k] = 100 * iceG / solution.waterG();
            iceMlPerG[k] = iceG / massG / (GibbsThomson.ICE_KG_PER_M3 / 1000);
            double liquidG = Math.max(solution.waterG() - iceG, 1e-6 * solution.waterG());
            UnfrozenSyrup syrup = UnfrozenSyrup.of(solution, longSugars, liquidG, t);
            logGrowth[k] = Math.log(syrup.growthUm3PerS());
            logViscosity[k] = Math.log(syrup.viscosityMPaS());
        }
        volumeMlPerG = 1 / bulk.densityKgPerL;
    }

    /** The table of a mix. */
    static FrozenMixTable of(Mix mix) {
        double higherG =
                mix.massG() * mix.composition().percent(Component.HIGHER_SACCHARIDES) / 100;
        double higherMol =
                mix.massG() / 100 * mix.composition().per100g(Tally.HIGHER_SACCHARIDES_MMOL) / 1000;
        return new FrozenMixTable(
                mix.solution(),
                new UnfrozenSyrup.LongSugars(higherG, higherMol),
                new Bulk(mix.massG(), mix.densityKgPerL()));
    }

    /** The table of a plain solution. */
    static FrozenMixTable of(Solution solution) {
        return new FrozenMixTable(
                solution, UnfrozenSyrup.LongSugars.NONE, new Bulk(solution.totalG(), 1));
    }

    double initialFreezingPointC() {
        return initialFreezingPointC;
    }

    /** Ice, mL per g of mix. */
    double iceMlPerG(double temperatureC) {
        return read(iceMlPerG, temperatureC);
    }

    /** Ice, % of the water. */
    double icePercent(double temperatureC) {
        return read(icePercent, temperatureC);
    }

    /** Growth constant A, µm³/s. */
    double growthUm3PerS(double temperatureC) {
        return Math.exp(read(logGrowth, temperatureC));
    }

    /** Viscosity of the liquid between the crystals, mPa·s. */
    double viscosityMPaS(double temperatureC) {
        return Math.exp(read(logViscosity, temperatureC));
    }

    /** Volume of ice and liquid, mL per g of mix; air left out. */
    double volumeMlPerG() {
        return volumeMlPerG;
    }

    /** Temperature at which a share of the water is ice, °C; the coldest if it never is. */
    double temperatureAtIcePercent(double percent) {
        int k = 1;
        while (k < icePercent.length - 1 && icePercent[k] < percent) {
            k++;
        }
        double part = (percent - icePercent[k - 1]) / (icePercent[k] - icePercent[k - 1]);
        double at = k - 1 + Math.max(0, Math.min(1, part));
        return lineC(at);
    }

    private double lineC(double k) {
        return initialFreezingPointC - SPACING_C * k * k;
    }

    private double read(double[] table, double temperatureC) {
        double below = initialFreezingPointC - temperatureC;
        if (below <= 0) {
            return table[0];
        }
        double at = Math.sqrt(below / SPACING_C);
        int k = Math.min((int) at, table.length - 2);
        double part = Math.min(1, at - k);
        return table[k] + part * (table[k + 1] - table[k]);
    }

    /** Mass, g, and density without air, kg/L, of the mix that contains the solution. */
    record Bulk(double massG, double densityKgPerL) {}
}
