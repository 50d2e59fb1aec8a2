package coldwright.science.freezing;

import java.util.Map;

/**
 * Maximal freeze-concentration: ice stops growing because the syrup between the crystals is so
 * thick that no more water reaches them.
 *
 * <p>Each solute has its own onset Tm′; a mixture's is taken as their mean by mass, a rule of this
 * project that is exact for one solute and for similar solutes. Salts and ideal particles do not
 * count. Sucrose: Tm′ −34 °C at about 80 % (from memory, Y. Roos and M. Karel, Int. J. Food Sci.
 * Technol. 26 (1991) 553; the −32 °C of older work is another definition).
 */
final class MaximalFreezeConcentration {
    private MaximalFreezeConcentration() {}

    /** Tm′ of a solution, °C; the coldest one covered if nothing in it sets a limit. */
    static double temperatureC(Solution solution) {
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
}
