package coldwright.science.freezing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The rule of mixtures (Ross 1975) solved without the grid: each group's −ln a_w by its closed form
 * in all the water, their sum set equal to that of ice.
 */
class BlendExactTest {
    /** What the grid and its parabolas may cost, °C. */
    private static final double GRID_C = 1e-5;

    @ParameterizedTest
    @CsvSource({
        "30, 0.5, 20",
        "15, 1, 50",
        "40, 2, 0",
        "10, 5, 100",
        "20, 0, 500",
        "25, 0.2, 10",
        "0, 3, 300",
        "55, 3, 200",
        "3, 0.05, 2",
        "120, 8, 0"
    })
    void mixturesFreezeWhereTheClosedFormsSay(double sugarG, double saltG, double idealMillimol) {
        Solution mixed =
                Solution.inWater(100)
                        .with(sugarG, Solute.SUCROSE)
                        .with(saltG, Solute.SODIUM_CHLORIDE)
                        .withIdealParticles(idealMillimol, "milk salts");
        double exactC =
                IceActivity.temperatureOfMinusLnC(
                        alone(Solute.SUCROSE, sugarG)
                                + alone(Solute.SODIUM_CHLORIDE, saltG)
                                + idealMillimol / 100 / SoluteActivity.WATER_MOL_PER_KG);
        assertEquals(exactC, mixed.freezingPointC(), GRID_C);
    }

    /** Two salts and two sugars: each pair by Zdanovskii's rule, by bisection on temperature. */
    @Test
    void twoOfEachKindAsWell() {
        Solution mixed =
                Solution.inWater(100)
                        .with(20, Solute.SUCROSE)
                        .with(10, Solute.FRUCTOSE)
                        .with(1, Solute.SODIUM_CHLORIDE)
                        .with(1, Solute.POTASSIUM_CHLORIDE);
        double sugars = group(20, Solute.SUCROSE, 10, Solute.FRUCTOSE);
        double salts = group(1, Solute.SODIUM_CHLORIDE, 1, Solute.POTASSIUM_CHLORIDE);
        double exactC = IceActivity.temperatureOfMinusLnC(sugars + salts);
        assertEquals(exactC, mixed.freezingPointC(), GRID_C);
    }

    private static double alone(Solute solute, double grams) {
        return grams == 0 ? 0 : solute.binding().minusLn(10 * grams / solute.molarMassGPerMol());
    }

    /** The −ln a_w at which both together keep just 100 g of water. */
    private static double group(double oneG, Solute one, double otherG, Solute other) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            double kg =
                    oneG / one.molarMassGPerMol() / one.binding().molality(middle)
                            + otherG / other.molarMassGPerMol() / other.binding().molality(middle);
            if (kg > 0.1) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
