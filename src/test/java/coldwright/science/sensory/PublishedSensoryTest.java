package coldwright.science.sensory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.Band;
import coldwright.science.freezing.Solute;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PublishedSensoryTest {
    private static final double HALF_LAST_DIGIT = 0.005;
    private static final double HALF_LAST_DIGIT_IONS = 0.05;
    private static final double ROUNDING = 1e-9;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(
            resources = "/published/sweetness-three-lists.csv",
            useHeadersInDisplayName = true)
    void sweetnessSpreadsAsItsSources(String sugar, double low, double high) {
        if (sugar.equals("INVERT")) {
            Mix invert = Mix.of(Amount.grams(50, Shelf.GLUCOSE), Amount.grams(50, Shelf.FRUCTOSE));
            double middle = Sweetness.of(invert).sucroseEquivalentPercent().middle();
            assertTrue(middle >= low && middle <= high, middle + " of invert");
        } else {
            Band found = Sweetener.valueOf(sugar).relativeSweetness();
            assertEquals(low, found.low());
            assertEquals(high, found.high());
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/anti-freezing-power.csv", useHeadersInDisplayName = true)
    void powerByMolarMass(String solute, double power, double ionsPower) {
        Solute s = Solute.valueOf(solute);
        assertEquals(power, AntiFreezingPower.perGram(s), HALF_LAST_DIGIT);
        double tolerance = ionsPower > 10 ? HALF_LAST_DIGIT_IONS : HALF_LAST_DIGIT;
        assertEquals(ionsPower, AntiFreezingPower.perGramOfIons(s), tolerance);
    }

    @ParameterizedTest(name = "{0} % of {1} kg/L")
    @CsvFileSource(resources = "/published/university-overrun.csv", useHeadersInDisplayName = true)
    void weightOfALitre(double overrunPercent, double mixKgPerL, double productGPerL) {
        assertEquals(productGPerL, new Overrun(overrunPercent).gPerL(mixKgPerL), ROUNDING * 1e3);
    }
}
