package coldwright.science.sensory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.science.Band;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

class SensoryLawsTest {
    private static final double ROUNDING = 1e-9;

    private static Mix syrup(double sucroseG) {
        return Mix.of(Amount.grams(100, Shelf.WATER), Amount.grams(sucroseG, Shelf.SUCROSE));
    }

    @Cases(200)
    void aSucroseSolutionIsAsSweetAsItself(Draw draw) {
        double gram = draw.doubleIn(1, 150);
        Band sweet = Sweetness.of(syrup(gram)).percentOfSucroseSolution();
        assertEquals(100 * gram / (100 + gram), sweet.middle(), 0.03);
    }

    @Cases(100)
    void addingSugarSweetensAndAddingWaterDoesNot(Draw draw) {
        double gram = draw.doubleIn(5, 100);
        double now = Sweetness.of(syrup(gram)).sucroseEquivalentPercent().middle();
        Mix sweeter = syrup(gram).with(Amount.grams(10, Shelf.FRUCTOSE));
        Mix thinner = syrup(gram).with(Amount.grams(10, Shelf.WATER));
        assertTrue(Sweetness.of(sweeter).sucroseEquivalentPercent().middle() > now);
        assertTrue(Sweetness.of(thinner).sucroseEquivalentPercent().middle() < now);
    }

    @Cases(100)
    void partsAddUpToTheWhole(Draw draw) {
        double sucroseG = draw.doubleIn(1, 50);
        double glucoseG = draw.doubleIn(1, 50);
        Mix mix = syrup(sucroseG).with(Amount.grams(glucoseG, Shelf.GLUCOSE));
        double sum =
                Sweetness.of(mix).parts().stream()
                        .mapToDouble(p -> p.sucroseEquivalentPercent().high())
                        .sum();
        assertEquals(Sweetness.of(mix).sucroseEquivalentPercent().high(), sum, ROUNDING);
    }

    @Cases(100)
    void colderIsNeverSofter(Draw draw) {
        double temperatureC = draw.doubleIn(-29, 0);
        Mix mix = syrup(35);
        assertTrue(
                Firmness.of(mix, temperatureC - 1).compareTo(Firmness.of(mix, temperatureC)) >= 0);
    }

    @Cases(60)
    void scoopableTemperaturesAreScoopable(Draw draw) {
        double gram = draw.doubleIn(20, 60);
        Band range = Firmness.scoopableC(syrup(gram));
        if (range.middle() > Firmness.STIFF_SYRUP_C) {
            assertEquals(Firmness.SCOOPABLE, Firmness.of(syrup(gram), range.middle()));
        }
        assertTrue(range.low() < range.high());
    }

    @Cases(60)
    void moreSugarIsScoopableInMoreCold(Draw draw) {
        double gram = draw.doubleIn(20, 60);
        assertTrue(
                Firmness.scoopableC(syrup(gram + 5)).middle()
                        < Firmness.scoopableC(syrup(gram)).middle());
    }

    @Cases(1000)
    void weighingGivesTheOverrunBack(Draw draw) {
        double percent = draw.doubleIn(0, 200);
        double mixG = draw.doubleIn(50, 500);
        double productG = mixG / (1 + percent / 100);
        assertEquals(percent, Overrun.byWeighing(mixG, productG).percent(), 1e-6);
    }

    @Cases(100)
    void servingsWeighTheWholeBatch(Draw draw) {
        double percent = draw.doubleIn(0, 150);
        double servingMl = draw.doubleIn(10, 200);
        Mix mix = syrup(40);
        Overrun.Serving serving = new Overrun(percent).serving(mix, servingMl);
        assertEquals(mix.massG(), serving.massG() * serving.servings(), 1e-6);
    }
}
