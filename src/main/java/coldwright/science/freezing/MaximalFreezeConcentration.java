package coldwright.science.freezing;

import java.util.Map;

/**
 * Where ice stops growing: the syrup between the crystals has become so thick that no more water
 * reaches them (maximal freeze-concentration).
 *
 * <p>Each solute has its own onset Tm′; a mixture's is taken as their mean by mass, a rule of this
 * project that is right for one solute and for solutes alike. Salts and ideal particles do not
 * count. Sucrose: Tm′ −34 °C at about 80 % (from memory, Y. Roos and M. Karel, Int. J. Food Sci.
 * Technol. 26 (1991) 553; the −32 °C of older work is another definition).
 */
final class MaximalFreezeConcentration {
    private MaximalFreezeConcentration() {}

    /** Tm′ of a solution, °C; the coldest served if nothing in it sets a limit. */
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
