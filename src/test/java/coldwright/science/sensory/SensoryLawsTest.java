package coldwright.science.sensory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.Band;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class SensoryLawsTest {
    private static final double ROUNDING = 1e-9;

    private static Mix syrup(double sucroseG) {
        return Mix.of(Amount.grams(100, Shelf.WATER), Amount.grams(sucroseG, Shelf.SUCROSE));
    }

    @Property(tries = 200)
    void aSucroseSolutionIsAsSweetAsItself(@ForAll @DoubleRange(min = 1, max = 150) double gram) {
        Band sweet = Sweetness.of(syrup(gram)).percentOfSucroseSolution();
        assertEquals(100 * gram / (100 + gram), sweet.middle(), 0.03);
    }

    @Property(tries = 100)
    void addingSugarSweetensAndAddingWaterDoesNot(
            @ForAll @DoubleRange(min = 5, max = 100) double gram) {
        double now = Sweetness.of(syrup(gram)).sucroseEquivalentPercent().middle();
        Mix sweeter = syrup(gram).with(Amount.grams(10, Shelf.FRUCTOSE));
        Mix thinner = syrup(gram).with(Amount.grams(10, Shelf.WATER));
        assertTrue(Sweetness.of(sweeter).sucroseEquivalentPercent().middle() > now);
        assertTrue(Sweetness.of(thinner).sucroseEquivalentPercent().middle() < now);
    }

    @Property(tries = 100)
    void partsAddUpToTheWhole(
            @ForAll @DoubleRange(min = 1, max = 50) double sucroseG,
            @ForAll @DoubleRange(min = 1, max = 50) double glucoseG) {
        Mix mix = syrup(sucroseG).with(Amount.grams(glucoseG, Shelf.GLUCOSE));
        double sum =
                Sweetness.of(mix).parts().stream()
                        .mapToDouble(p -> p.sucroseEquivalentPercent().high())
                        .sum();
        assertEquals(Sweetness.of(mix).sucroseEquivalentPercent().high(), sum, ROUNDING);
    }

    @Property(tries = 100)
    void colderIsNeverSofter(@ForAll @DoubleRange(min = -29, max = 0) double temperatureC) {
        Mix mix = syrup(35);
        assertTrue(
                Firmness.of(mix, temperatureC - 1).compareTo(Firmness.of(mix, temperatureC)) >= 0);
    }

    @Property(tries = 60)
    void scoopableTemperaturesAreScoopable(@ForAll @DoubleRange(min = 20, max = 60) double gram) {
        Band range = Firmness.scoopableC(syrup(gram));
        if (range.middle() > Firmness.STIFF_SYRUP_C) {
            assertEquals(Firmness.SCOOPABLE, Firmness.of(syrup(gram), range.middle()));
        }
        assertTrue(range.low() < range.high());
    }

    @Property(tries = 60)
    void moreSugarIsScoopableInMoreCold(@ForAll @DoubleRange(min = 20, max = 60) double gram) {
        assertTrue(
                Firmness.scoopableC(syrup(gram + 5)).middle()
                        < Firmness.scoopableC(syrup(gram)).middle());
    }

    @Property
    void weighingGivesTheOverrunBack(
            @ForAll @DoubleRange(max = 200) double percent,
            @ForAll @DoubleRange(min = 50, max = 500) double mixG) {
        double productG = mixG / (1 + percent / 100);
        assertEquals(percent, Overrun.byWeighing(mixG, productG).percent(), 1e-6);
    }

    @Property
    void airAndOverrunAreInverse(@ForAll @DoubleRange(max = 70) double airPercent) {
        assertEquals(airPercent, Overrun.ofAir(airPercent).airPercent(), ROUNDING * 100);
    }

    @Property(tries = 100)
    void servingsWeighTheWholeBatch(
            @ForAll @DoubleRange(max = 150) double percent,
            @ForAll @DoubleRange(min = 10, max = 200) double servingMl) {
        Mix mix = syrup(40);
        Overrun.Serving serving = new Overrun(percent).serving(mix, servingMl);
        assertEquals(mix.massG(), serving.massG() * serving.servings(), 1e-6);
    }
}
