package coldwright.science.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The shelf against the raw rows that it was made from, and the trade's rules for milk. */
class PublishedCompositionTest {
    /**
     * The rows have two decimals, and the split of a row's carbohydrate is rounded part by part.
     */
    private static final double TWO_DECIMALS = 0.03;

    /** Printed to one decimal, at a reference temperature that the source does not name. */
    private static final double LAST_DIGIT = 0.1;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/usda-sr24-composition.csv", numLinesToSkip = 4)
    void shelfKeepsTheRow(
            String name,
            String ndb,
            double water,
            double fat,
            double protein,
            double carbohydrate,
            double ash) {
        Ingredient ingredient = Shelf.find(name);
        Composition c = ingredient.composition();
        assertEquals("USDA SR24 " + ndb, ingredient.source());
        assertEquals(water, c.percent(Component.WATER), TWO_DECIMALS, "water");
        assertEquals(fat, c.percent(Component.Kind.FAT), TWO_DECIMALS, "fat");
        assertEquals(protein, c.percent(Component.Kind.PROTEIN), TWO_DECIMALS, "protein");
        assertEquals(
                carbohydrate,
                c.percent(Component.Kind.SUGAR)
                        + c.percent(Component.Kind.CARBOHYDRATE)
                        + c.percent(Component.Kind.POLYOL)
                        + c.percent(Component.Kind.ACID),
                TWO_DECIMALS,
                "carbohydrate");
        assertEquals(ash, c.percent(Component.Kind.MINERAL), TWO_DECIMALS, "ash");
    }

    @Test
    @DisplayName("Honey's sugars by kind: USDA")
    void honey() {
        Composition c = Shelf.HONEY.composition();
        assertEquals(35.75, c.percent(Component.GLUCOSE));
        assertEquals(40.94, c.percent(Component.FRUCTOSE));
        assertEquals(.89, c.percent(Component.SUCROSE));
        assertEquals(1.44, c.percent(Component.MALTOSE));
        assertEquals(3.1, c.percent(Component.GALACTOSE));
    }

    @Test
    @DisplayName("Serum rule: 9 % of the skim part; 80 % butter carries 1.8 %")
    void serumRule() {
        assertEquals(1.8, MilkSolids.bySerumRulePercent(80), 1e-12);
        assertEquals(1.8, Mix.of(grams(Shelf.BUTTER_80)).milkSolidsNotFatPercent(), 1e-9);
        assertEquals(
                0.09 * (100 - 3.27),
                Mix.of(grams(Shelf.WHOLE_MILK)).milkSolidsNotFatPercent(),
                0.005);
        assertEquals(6.3, Mix.of(grams(Shelf.find("cream 30 %"))).milkSolidsNotFatPercent(), 1e-9);
    }

    @Test
    @DisplayName("Lactose is 54.5 % of milk solids not fat and 76.5 % of whey solids")
    void lactoseShares() {
        Ingredient milk = OwnIngredient.of("milk solids", "milk solids not fat 100");
        Ingredient whey = OwnIngredient.of("whey solids", "whey solids 100");
        assertEquals(54.5, milk.composition().percent(Component.LACTOSE), 1e-9);
        assertEquals(76.5, whey.composition().percent(Component.LACTOSE), 1e-9);
        Composition powder = Shelf.SKIM_MILK_POWDER.composition();
        double measured =
                powder.percent(Component.LACTOSE) / powder.per100g(Tally.MILK_SOLIDS_NOT_FAT);
        assertEquals(.545, measured, .005, "USDA's skim milk powder agrees with the rule");
    }

    @ParameterizedTest(name = "{0} % by volume")
    @CsvFileSource(resources = "/published/alcohol-by-volume.csv", numLinesToSkip = 4)
    void alcoholByVolume(double byVolumePercent, double massPercent) {
        assertEquals(massPercent, AlcoholByVolume.massPercent(byVolumePercent), LAST_DIGIT);
        assertEquals(byVolumePercent, AlcoholByVolume.byVolumePercent(massPercent), LAST_DIGIT);
    }

    @Test
    @DisplayName("80-proof spirit, USDA 14037: water 66.6, ethanol by difference 33.4")
    void eightyProof() {
        // USDA counts proof at 60 °F, OIML at 20 °C.
        assertEquals(33.4, Shelf.RUM_40.composition().percent(Component.ALCOHOL), 0.15);
    }

    @Test
    @DisplayName("Density: 12 % fat, 38.3 % total solids, 61.7 % water make 1.096 kg/L")
    void density() {
        Ingredient mix = OwnIngredient.of("mix", "fat 12, water 61.7");
        assertEquals(38.3, Mix.of(grams(mix)).totalSolidsPercent(), 1e-9);
        // The published figure is cut off, not rounded: the formula gives 1.0969.
        assertEquals(1.096, MixDensity.kgPerL(mix.composition()), 0.001);
    }

    @Test
    @DisplayName("DE 42 syrup solids count 0.8 of sucrose in the trade")
    void syrupFactor() {
        Ingredient solids = Shelf.GLUCOSE_SYRUP_POWDER;
        Mix mix = Mix.of(Amount.grams(10 / .95, solids), Amount.grams(100, Shelf.WATER));
        double per10gSolids = mix.tradeMethod().sugarsEquivalentPercent() * mix.massG() / 100;
        assertEquals(8.0, per10gSolids, 0.1);
    }

    @Test
    @DisplayName("Dried and liquid syrup differ in water only")
    void syrups() {
        Composition dry = Shelf.GLUCOSE_SYRUP_POWDER.composition();
        Composition wet = Shelf.GLUCOSE_SYRUP.composition();
        for (Component c :
                new Component[] {
                    Component.GLUCOSE, Component.MALTOSE, Component.HIGHER_SACCHARIDES
                }) {
            assertEquals(dry.percent(c) / 95, wet.percent(c) / 80, 1e-4);
        }
        assertTrue(wet.percent(Component.WATER) > dry.percent(Component.WATER));
    }

    private static Amount grams(Ingredient ingredient) {
        return Amount.grams(100, ingredient);
    }
}
