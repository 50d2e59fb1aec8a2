package coldwright.science.mix;

import static coldwright.science.mix.Amount.grams;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * University mix problems, forwards: the published amounts must give the composition asked for.
 * Amounts are printed to 0.01 or 0.001 kg in 100 kg.
 */
class PublishedBalancingInputsTest {
    /** Amounts printed to 0.01 kg. */
    private static final double PRINTED_PERCENT = 0.02;

    private static final Ingredient POWDER =
            OwnIngredient.of("skim powder", "milk solids not fat 97");

    @Test
    @DisplayName("14/10/15/.4 from butter, skim powder and water")
    void butterPowderWater() {
        Mix mix =
                Mix.of(
                        grams(17500, OwnIngredient.of("butter", "fat 80, milk solids not fat 1.8")),
                        grams(9980, POWDER),
                        grams(15000, Shelf.SUCROSE),
                        grams(400, OwnIngredient.of("stabiliser", "stabiliser 100")),
                        grams(57120, Shelf.WATER));
        assertEquals(100_000, mix.massG(), 1);
        assertEquals(14, mix.milkFatPercent(), PRINTED_PERCENT);
        assertEquals(10, mix.milkSolidsNotFatPercent(), PRINTED_PERCENT);
        assertEquals(15, mix.composition().percent(Component.SUCROSE), PRINTED_PERCENT);
    }

    @Test
    @DisplayName("18/9.5/15/.4/1 yolk from cream 30, milk 3.5 and powder 97")
    void creamMilkPowderYolk() {
        Mix mix =
                Mix.of(
                        grams(4086, POWDER),
                        grams(22090, dairy("milk", 3.5)),
                        grams(57420, dairy("cream", 30)),
                        grams(15000, Shelf.SUCROSE),
                        grams(400, OwnIngredient.of("stabiliser", "stabiliser 100")),
                        grams(1000, OwnIngredient.of("dried yolk", "yolk solids 100")));
        assertEquals(18, mix.milkFatPercent(), PRINTED_PERCENT);
        assertEquals(9.5, mix.milkSolidsNotFatPercent(), PRINTED_PERCENT);
        assertEquals(1, mix.composition().per100g(Tally.YOLK_SOLIDS), PRINTED_PERCENT);
    }

    @Test
    @DisplayName("14/10/15/.5 with sweetened condensed skim: total solids 39.50")
    void condensed() {
        Mix mix =
                Mix.of(
                        grams(16170, Shelf.SWEETENED_CONDENSED_SKIMMED_MILK),
                        grams(8530, Shelf.SUCROSE),
                        grams(39930, dairy("cream", 32)),
                        grams(34870, dairy("milk", 3.5)),
                        grams(500, OwnIngredient.of("stabiliser", "stabiliser 100")));
        assertEquals(100_000, mix.massG(), 1);
        assertEquals(14, mix.milkFatPercent(), PRINTED_PERCENT);
        assertEquals(10, mix.milkSolidsNotFatPercent(), PRINTED_PERCENT);
        assertEquals(15, mix.composition().percent(Component.SUCROSE), PRINTED_PERCENT);
        assertEquals(39.50, mix.totalSolidsPercent(), PRINTED_PERCENT);
    }

    @Test
    @DisplayName("12/10/14 with .7 others from cream 38.5/5.5, milk 3.5/8.5 and powder 96")
    void statedSolids() {
        Mix mix =
                Mix.of(
                        grams(
                                26160,
                                OwnIngredient.of("cream", "fat 38.5, milk solids not fat 5.5")),
                        grams(55101, OwnIngredient.of("milk", "fat 3.5, milk solids not fat 8.5")),
                        grams(4039, OwnIngredient.of("powder", "milk solids not fat 96")),
                        grams(14000, Shelf.SUCROSE),
                        grams(700, OwnIngredient.of("others", "stabiliser 100")));
        assertEquals(100_000, mix.massG(), 1);
        assertEquals(12, mix.milkFatPercent(), 0.002);
        assertEquals(10, mix.milkSolidsNotFatPercent(), 0.002);
    }

    private static Ingredient dairy(String name, double fatPercent) {
        return OwnIngredient.of(
                name,
                "fat %s, milk solids not fat %s"
                        .formatted(fatPercent, MilkSolids.bySerumRulePercent(fatPercent)));
    }
}
