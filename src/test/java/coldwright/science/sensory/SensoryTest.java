package coldwright.science.sensory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.Band;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SensoryTest {
    private static final Mix ICE_CREAM =
            Mix.of(
                    Amount.grams(500, Shelf.WHOLE_MILK),
                    Amount.grams(250, Shelf.HEAVY_CREAM),
                    Amount.grams(130, Shelf.SUCROSE),
                    Amount.grams(45, Shelf.find("skimmed milk powder")));

    @Test
    void coldDullsThinSweetnessOnly() {
        Mix thin = Mix.of(Amount.grams(92, Shelf.WATER), Amount.grams(8, Shelf.SUCROSE));
        assertTrue(Sweetness.of(thin).cold().english().contains("thin enough to lose sweetness"));
        assertTrue(Sweetness.of(ICE_CREAM).cold().english().contains("hardly loses sweetness"));
        assertTrue(Sweetness.of(ICE_CREAM).cold().english().endsWith("A trend, no figure."));
    }

    @Test
    void unsweetenedIsZero() {
        Mix water = Mix.of(Amount.grams(100, Shelf.WATER));
        assertEquals(0, Sweetness.of(water).percentOfSucroseSolution().high());
        assertTrue(Sweetness.of(water).parts().isEmpty());
    }

    @Test
    void anOrdinaryIceCreamIsScoopableSomewhatBelowMinusTen() {
        double middle = Firmness.scoopableC(ICE_CREAM).middle();
        assertTrue(middle < -8 && middle > -18, middle + " °C");
        assertEquals(Firmness.SOFT, Firmness.of(ICE_CREAM, -5));
        assertEquals(Firmness.LIQUID, Firmness.of(ICE_CREAM, 4));
    }

    @Test
    void tooLittleWaterIsNeverScoopable() {
        Mix fudge = Mix.of(Amount.grams(30, Shelf.WATER), Amount.grams(70, Shelf.SUCROSE));
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> Firmness.scoopableC(fudge));
        assertEquals(
                "waterPercent is 30; it must be above 47 %. A drier mix stays soft at any cold.",
                e.getMessage());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-8, -12, -18, -24})
    void theRangeAndTheFirmnessCallTheSameScoopable(double temperatureC) {
        int scoopable = 0;
        for (double dry = 0; dry <= 40; dry += 10) {
            Mix base =
                    Mix.of(
                            Amount.grams(78 - dry, Shelf.WATER),
                            Amount.grams(dry, Shelf.HEAVY_CREAM));
            for (double gram = 4; gram < 60; gram += 1) {
                Mix mix = base.with(Amount.grams(gram, Shelf.GLUCOSE));
                boolean firmness = Firmness.of(mix, temperatureC) == Firmness.SCOOPABLE;
                double ice = Firmness.spoonIcePercent(mix, temperatureC);
                Band scoops = Firmness.scoopablePercentAt(temperatureC);
                boolean within = ice > scoops.low() && ice <= scoops.high();
                assertEquals(firmness, within, mix::toString);
                scoopable += firmness ? 1 : 0;
            }
        }
        assertTrue(scoopable > 0, "some of them are scoopable");
    }

    /** 1000 g of a sorbet by hand: each gram of sugar times its power. */
    @Test
    void aMixAddsUpItsGramsOnTheScalesOfTheTrade() {
        Mix sorbet =
                Mix.of(
                        Amount.grams(1400, Shelf.WATER),
                        Amount.grams(400, Shelf.SUCROSE),
                        Amount.grams(200, Shelf.DEXTROSE));
        assertEquals(200 + 100 * 1.9, sorbet.pac(), 0.05);
        assertEquals(200 + 100 * 0.77, sorbet.pod(), 1e-9);
        assertEquals(
                sorbet.pod() / 10, Sweetness.of(sorbet).sucroseEquivalentPercent().middle(), 1e-9);
        Mix salted = sorbet.with(Amount.grams(20, Shelf.SODIUM_CHLORIDE));
        assertEquals((2000 * sorbet.pac() + 20 * 5857) / 2020, salted.pac(), 0.05);
        Mix sour = sorbet.with(Amount.grams(20, Shelf.CITRIC_ACID));
        assertEquals(sorbet.pac() * 2000 / 2020, sour.pac(), 1e-9, "the trade leaves acids out");
        Mix milk = Mix.of(Amount.grams(1000, Shelf.WHOLE_MILK));
        assertEquals(10 * milk.composition().percent(Component.LACTOSE), milk.pac(), 0.05);
    }

    /** Three times the sugar is three times the PAC, but more than five times the depression. */
    @Test
    void theTradesScaleIgnoresHowLittleWaterThereIs() {
        Mix thin = Mix.of(Amount.grams(850, Shelf.WATER), Amount.grams(150, Shelf.SUCROSE));
        Mix thick = Mix.of(Amount.grams(550, Shelf.WATER), Amount.grams(450, Shelf.SUCROSE));
        assertEquals(3, thick.pac() / thin.pac(), 1e-9);
        assertTrue(thick.initialFreezingPointC() / thin.initialFreezingPointC() > 5);
    }

    @Test
    void dextroseIsGlucoseWithoutItsWater() {
        assertEquals(Shelf.GLUCOSE, Shelf.DEXTROSE);
        assertEquals(Shelf.DEXTROSE, Shelf.find("dextrose"));
        assertEquals(0.909 * Shelf.DEXTROSE.pac(), Shelf.DEXTROSE_MONOHYDRATE.pac(), 0.05);
    }

    @Test
    void swappedWeighingsAreNamed() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> Overrun.byWeighing(100, 200));
        assertEquals(
                "productG is 200 and mixG is 100; the product can't weigh more than its mix. Were they swapped?",
                e.getMessage());
    }
}
