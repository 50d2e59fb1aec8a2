package coldwright.science.glass;

import coldwright.science.Require;
import coldwright.science.Temperature;
import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;

import java.util.Map;

/**
 * The viscosity of a syrup.
 *
 * <p>Equation: log₁₀ η = 22.46 N − 0.114 + Φ (1.1 + 43.1 N^1.25), η in mPa·s, N the mole fraction
 * of sucrose, N = c/(1900 − 18 c) with c in % by mass, Φ = (30 − t)/(91 + t) with t in °C.
 *
 * <p>Source: Génotelle's equation in M. Mathlouthi and J. Génotelle, "Rheological properties of
 * sucrose solutions and suspensions", in: Sucrose: properties and applications, Blackie 1995; the
 * coefficients were read in an open-source model of sap flow that cites it; the book was not
 * opened.
 *
 * <p>Range: 0 to 80 °C and up to 75 %. For the freeze-concentrated liquid of an ice it is
 * extrapolated to colder and stronger syrup: there it is a trend, within a factor of about three
 * (its pole is at −91 °C, near the state diagram of sucrose).
 *
 * <p>Error: against the CRC Handbook at 20 °C below 4 % (see the published tests); towards 0 °C up
 * to some 10 %, from memory of older tables.
 *
 * <p>Other sugars count as sucrose by mass times a factor: monosaccharides {@value
 * #MONOSACCHARIDE_SHARE}, from memory of handbook tables at 20 °C and against the measurements of
 * Telis et al. 2007 for fructose within their scatter. Small molecules and salts thin a syrup by
 * even smaller factors, set by judgement; none of this matters below a few percent of them.
 */
public final class SyrupViscosity {
    /** Grams of sucrose as thick as one gram of a monosaccharide; from memory, 0.92 to 0.97. */
    public static final double MONOSACCHARIDE_SHARE = 0.94;

    private static final double GLYCEROL_SHARE = 0.75;
    private static final double ACID_SHARE = 0.8;
    private static final double SALT_SHARE = 0.6;
    private static final double ETHANOL_SHARE = 0.5;

    private static final double DRIEST_PERCENT = 95;
    private static final Require.Range SYRUP = new Require.Range(0, DRIEST_PERCENT, "% by mass");

    private SyrupViscosity() {}

    /**
     * {@return viscosity of sucrose in water, mPa·s}
     *
     * @param sucrosePercent sucrose, % by mass, 0 to 95 (reliable to 75)
     * @param temperatureC temperature, °C, −60 to 120 (reliable from 0 to 80)
     */
    public static double sucroseMPaS(double sucrosePercent, double temperatureC) {
        Require.within("sucrosePercent", sucrosePercent, SYRUP);
        Temperature.require("temperatureC", temperatureC);
        return genotelle(sucrosePercent, temperatureC);
    }

    /**
     * {@return viscosity of a solution of several solutes, gums and proteins left out, mPa·s}
     *
     * @param solution water and solutes
     * @param temperatureC temperature, °C, −60 to 120 (reliable from 0 to 80)
     */
    public static double mPaS(Solution solution, double temperatureC) {
        Temperature.require("temperatureC", temperatureC);
        return genotelle(Math.min(likeSucrosePercent(solution), DRIEST_PERCENT), temperatureC);
    }

    /** {@return the strength of a sucrose syrup of the same viscosity, sucrose, % by mass} */
    private static double likeSucrosePercent(Solution solution) {
        double sucroseG = 0;
        for (Map.Entry<Solute, Double> part : solution.massG().entrySet()) {
            sucroseG += part.getValue() * share(part.getKey());
        }
        return 100 * sucroseG / (sucroseG + solution.waterG());
    }

    private static double share(Solute solute) {
        return switch (solute) {
            case SUCROSE, LACTOSE, MALTOSE, TREHALOSE -> 1;
            case GLUCOSE, FRUCTOSE, GALACTOSE, SORBITOL -> MONOSACCHARIDE_SHARE;
            case GLYCEROL -> GLYCEROL_SHARE;
            case ETHANOL -> ETHANOL_SHARE;
            case SODIUM_CHLORIDE, POTASSIUM_CHLORIDE, CALCIUM_CHLORIDE -> SALT_SHARE;
            default -> ACID_SHARE;
        };
    }

    private static double genotelle(double percent, double temperatureC) {
        double moleFraction = percent / (1900 - 18 * percent);
        double cold = (30 - temperatureC) / (91 + temperatureC);
        double log =
                22.46 * moleFraction - 0.114 + cold * (1.1 + 43.1 * Math.pow(moleFraction, 1.25));
        return Math.pow(10, log);
    }
}
