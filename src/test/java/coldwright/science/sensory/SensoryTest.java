package coldwright.science.sensory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.balance.Wish;
import coldwright.science.mix.Amount;
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
        assertTrue(Sweetness.of(thin).coldTrend().contains("thin enough to lose sweetness"));
        assertTrue(Sweetness.of(ICE_CREAM).coldTrend().contains("hardly loses sweetness"));
        assertTrue(Sweetness.of(ICE_CREAM).coldTrend().endsWith("A trend, no figure."));
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
    void aWishAndTheFirmnessCallTheSameScoopable(double temperatureC) {
        int scoopable = 0;
        for (double dry = 0; dry <= 40; dry += 10) {
            Mix base =
                    Mix.of(
                            Amount.grams(78 - dry, Shelf.WATER),
                            Amount.grams(dry, Shelf.HEAVY_CREAM));
            for (double gram = 4; gram < 60; gram += 1) {
                Mix mix = base.with(Amount.grams(gram, Shelf.GLUCOSE));
                boolean firmness = Firmness.of(mix, temperatureC) == Firmness.SCOOPABLE;
                assertEquals(
                        firmness, Wish.scoopableAt(temperatureC).grantedBy(mix), mix::toString);
                scoopable += firmness ? 1 : 0;
            }
        }
        assertTrue(scoopable > 0, "some of them are scoopable");
    }

    @Test
    void richnessFollowsFat() {
        assertEquals(Richness.RICH, Richness.of(ICE_CREAM));
        Mix sorbet = Mix.of(Amount.grams(75, Shelf.WATER), Amount.grams(25, Shelf.SUCROSE));
        assertEquals(Richness.NO_FAT, Richness.of(sorbet));
        assertTrue(Richness.isThin(sorbet));
    }

    @Test
    void powerOfAMixIsThatOfItsSolutes() {
        Mix syrup = Mix.of(Amount.grams(70, Shelf.WATER), Amount.grams(30, Shelf.SUCROSE));
        assertEquals(30, AntiFreezingPower.per100g(syrup), 0.02);
        Mix spirited = syrup.with(Amount.grams(5, Shelf.ETHANOL));
        assertTrue(AntiFreezingPower.per100g(spirited) > 60);
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
