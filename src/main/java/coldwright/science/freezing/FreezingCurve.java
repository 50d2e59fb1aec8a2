package coldwright.science.freezing;

import coldwright.science.Require;
import coldwright.science.Temperature;

import java.util.List;

/** How much of a mix's water is ice at each temperature. */
public final class FreezingCurve {
    private final Solution solution;

    FreezingCurve(Solution solution) {
        this.solution = solution;
    }

    /**
     * The temperature at which the first ice is stable.
     *
     * @return °C, 0 or below
     */
    public double initialFreezingPointC() {
        return solution.freezingPointC();
    }

    /**
     * Ice as a share of all water.
     *
     * @param temperatureC temperature, °C, −60 to 120
     * @return % of the water, 0 to 100
     */
    public double icePercentAt(double temperatureC) {
        Temperature.require("temperatureC", temperatureC);
        double target = IceActivity.minusLn(temperatureC);
        if (target <= solution.minusLn(1)) {
            return 0;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (solution.minusLn(middle) > target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 100 * (1 - high);
    }

    /**
     * Mass of ice.
     *
     * @param temperatureC temperature, °C, −60 to 120
     * @return g, for the mass of water that the solution has
     */
    public double iceG(double temperatureC) {
        return solution.waterG() * icePercentAt(temperatureC) / 100;
    }

    /**
     * The temperature for a wanted share of ice.
     *
     * @param icePercent % of the water, 0 to less than 100
     * @return °C
     */
    public double temperatureAtIcePercentC(double icePercent) {
        Require.within("icePercent", icePercent, new Require.Range(0, 99.9, "% of the water"));
        return IceActivity.temperatureOfMinusLnC(solution.minusLn(1 - icePercent / 100));
    }

    /**
     * Strength of the liquid between the ice crystals.
     *
     * @param temperatureC temperature, °C, −60 to 120
     * @return solutes in the unfrozen liquid, % by mass
     */
    public double concentratedPhaseSolidsPercent(double temperatureC) {
        double solutesG = solution.totalG() - solution.waterG();
        double liquidG = solution.waterG() - iceG(temperatureC);
        return 100 * solutesG / (solutesG + liquidG);
    }

    /**
     * Where the answer leaves the range of its sources.
     *
     * @return remarks, empty if none
     */
    public List<String> notes() {
        return solution.notes();
    }
}
