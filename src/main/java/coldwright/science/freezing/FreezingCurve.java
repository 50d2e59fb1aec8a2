package coldwright.science.freezing;

import coldwright.science.Commented;
import coldwright.science.Require;
import coldwright.science.Temperature;
import coldwright.words.Phrase;

import java.util.List;
import java.util.Map;

/**
 * How much of a mix's water is ice at each temperature, in equilibrium.
 *
 * <p>As water freezes out, the solutes concentrate in the rest, which freezes lower: at each
 * temperature as much water stays liquid as the solutes keep from freezing. Equation: a_w of the
 * remaining liquid = a_w of ice; solved by the additive rule described at {@code IceLine}, without
 * iteration. Below {@link #iceStopsGrowingC} nothing changes.
 *
 * <pre>{@code
 * var curve = Solution.inWater(70).with(30, Solute.SUCROSE).freezingCurve();
 * curve.initialFreezingPointC();             // −2.65
 * curve.icePercentAt(-10);                   // 66 % of the water is ice
 * curve.temperatureAtIcePercentC(50);        // −6.0: half the water frozen
 * curve.concentratedPhaseSolidsPercent(-10); // 56 % sugar between the crystals
 * }</pre>
 *
 * <p>Real freezing lags behind: supercooling, and syrup too thick to let water through.
 */
public final class FreezingCurve implements Commented {
    private final Solution solution;
    private final IceLine line;
    private final double freezingPointC;
    private final double limitC;

    FreezingCurve(Solution solution) {
        this.solution = solution;
        this.line = IceLine.of(solution);
        this.freezingPointC = line.temperatureC(solution.waterG() / 1000);
        this.limitC = maximalFreezeConcentrationC(solution);
    }

    /** {@return the temperature at which the first ice is stable, °C, 0 or below} */
    public double initialFreezingPointC() {
        return freezingPointC;
    }

    /**
     * {@return the temperature below which no more ice forms: the syrup between the crystals is
     * then too thick (Tm′, for sucrose −34 °C), or all brine has set (the eutectic), °C; −120 if
     * nothing in the solution sets a limit}
     */
    public double iceStopsGrowingC() {
        return FreezingNotes.onlySalts(solution)
                ? FreezingNotes.coldestEutecticC(solution)
                : limitC;
    }

    /**
     * Ice as a share of all water.
     *
     * @param temperatureC temperature, °C, −60 to 120
     * @return % of the water, 0 to 100; 0 at the initial freezing point and above
     */
    public double icePercentAt(double temperatureC) {
        return 100 * (1 - liquidG(temperatureC) / solution.waterG());
    }

    /**
     * {@return mass of ice, g, of the water of the solution}
     *
     * @param temperatureC temperature, °C, −60 to 120
     */
    public double iceG(double temperatureC) {
        return solution.waterG() - liquidG(temperatureC);
    }

    /** {@return the most ice that ever forms, % of the water} */
    public double greatestIcePercent() {
        return icePercentAt(Temperature.COLDEST_C);
    }

    /**
     * {@return the temperature for a wanted share of ice, °C}
     *
     * @param icePercent % of the water, 0 to {@link #greatestIcePercent}
     * @throws IllegalArgumentException if so much ice never forms
     */
    public double temperatureAtIcePercentC(double icePercent) {
        Require.within("icePercent", icePercent, new Require.Range(0, 100, "% of the water"));
        if (icePercent == 0) {
            return freezingPointC;
        }
        double most = greatestIcePercent();
        Require.that(
                icePercent <= most,
                "icePercent is %s; at most %s %% of the water of this mix can freeze. Ask for less, or add water.",
                icePercent,
                Math.floor(most * 10) / 10);
        double wantedC = line.temperatureC(solution.waterG() / 1000 * (1 - icePercent / 100));
        return Math.max(wantedC, Math.max(limitC, Temperature.COLDEST_C));
    }

    /**
     * {@return strength of the liquid between the ice crystals: solutes in the unfrozen part, % by
     * mass; ideal particles carry no mass here}
     *
     * @param temperatureC temperature, °C, −60 to 120
     */
    public double concentratedPhaseSolidsPercent(double temperatureC) {
        double solutesG = solution.totalG() - solution.waterG();
        double phaseG = solutesG + liquidG(temperatureC);
        return phaseG == 0 ? 0 : 100 * solutesG / phaseG;
    }

    /**
     * Tm′ of a solution, °C, where ice stops growing because the syrup between the crystals is so
     * thick that no more water reaches them; −120 if nothing in it sets a limit. Each solute has
     * its own; a mixture's is taken as their mean by mass, a rule of this project that is exact for
     * one solute and for similar solutes. Salts and ideal particles do not count. Sucrose: −34 °C
     * at about 80 % (from memory, Y. Roos and M. Karel, Int. J. Food Sci. Technol. 26 (1991) 553;
     * the −32 °C of older work is another definition).
     */
    static double maximalFreezeConcentrationC(Solution solution) {
        double weighted = 0;
        double massG = 0;
        for (Map.Entry<Solute, Double> part : solution.massG().entrySet()) {
            if (!part.getKey().isSalt()) {
                weighted += part.getValue() * part.getKey().iceStopsC();
                massG += part.getValue();
            }
        }
        return massG > 0 ? weighted / massG : IceActivity.COLDEST_C;
    }

    @Override
    public List<Phrase> comments() {
        return FreezingNotes.of(this, solution);
    }

    private double liquidG(double temperatureC) {
        Temperature.require("temperatureC", temperatureC);
        double t = Math.max(temperatureC, limitC);
        if (t >= freezingPointC) {
            return solution.waterG();
        }
        return Math.min(solution.waterG(), 1000 * line.liquidKg(t));
    }
}
