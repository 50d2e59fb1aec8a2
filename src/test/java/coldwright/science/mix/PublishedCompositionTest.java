package coldwright.science.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.published.FromTable;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

import java.util.Map;
import java.util.Set;

/** The shelf against the raw rows that it was made from, and the trade's rules for milk. */
class PublishedCompositionTest {
    private static final Ledger LEDGER = Ledger.of(PublishedCompositionTest.class);

    private static final Tolerance TWO_DECIMALS =
            Tolerance.of(0.03, "two decimals, the split of the carbohydrate rounded part by part");

    private static final Tolerance LAST_DIGIT = Tolerance.of(0.05, "half the last digit");

    private static final Tolerance PROOF =
            Tolerance.of(0.2, "USDA counts proof at 60 °F, the shelf at 20 °C");

    private static final Tolerance RULE = Tolerance.of(1e-3, "a rule");
    private static final Tolerance CUT_OFF = Tolerance.of(0.001, "last digit, cut off");

    private static final Tolerance FORMULA =
            Tolerance.percent(1, "stated accuracy of the formula, made for milk mixes");

    @ParameterizedTest
    @FromTable("usda-sr24-composition")
    void shelfKeepsTheRow(Row row) {
        Ingredient ingredient = Shelf.find(row.text("name"));
        Composition c = ingredient.composition();
        assertEquals("USDA SR24 " + row.text("ndb"), ingredient.source());
        double carbohydrate =
                c.percent(Component.Kind.SUGAR)
                        + c.percent(Component.Kind.CARBOHYDRATE)
                        + c.percent(Component.Kind.POLYOL)
                        + c.percent(Component.Kind.ACID);
        Ledger.At at = LEDGER.at(row, row.text("name"));
        at.compare("water, %", row.number("water"), c.percent(Component.WATER), TWO_DECIMALS);
        at.compare("fat, %", row.number("fat"), c.percent(Component.Kind.FAT), TWO_DECIMALS);
        at.compare(
                "protein, %",
                row.number("protein"), c.percent(Component.Kind.PROTEIN), TWO_DECIMALS);
        at.compare("carbohydrate, %", row.number("carbohydrate"), carbohydrate, TWO_DECIMALS);
        at.compare("ash, %", row.number("ash"), c.percent(Component.Kind.MINERAL), TWO_DECIMALS);
    }

    /** Every numbered row of the shelf, but for the fields in which it departs on purpose. */
    @ParameterizedTest
    @FromTable("usda-sr24-shelf")
    void everyNumberedRowIsKept(Row row) {
        Ingredient ingredient = Shelf.find(row.text("name"));
        Composition c = ingredient.composition();
        assertEquals("USDA SR24 " + row.text("ndb"), ingredient.source());
        assertEquals(row.text("departs").isEmpty(), row.text("why").isEmpty(), row::toString);
        Map<String, Double> found =
                Map.of(
                        "water", c.percent(Component.WATER),
                        "fat", c.percent(Component.Kind.FAT),
                        "protein", c.percent(Component.Kind.PROTEIN),
                        "carbohydrate",
                                c.percent(Component.Kind.SUGAR)
                                        + c.percent(Component.Kind.CARBOHYDRATE)
                                        + c.percent(Component.Kind.POLYOL)
                                        + c.percent(Component.Kind.ACID),
                        "alcohol", c.percent(Component.ALCOHOL),
                        "ash", c.percent(Component.Kind.MINERAL));
        Ledger.At at = LEDGER.at(row, row.text("name"));
        found.forEach(
                (field, percent) -> {
                    boolean departs = Set.of(row.text("departs").split(" ")).contains(field);
                    if (!departs && !row.text(field).isEmpty()) {
                        at.compare(field + ", %", row.number(field), percent, TWO_DECIMALS);
                    }
                });
    }

    @Test
    void everyNumberedRowIsInTheTable() {
        assertEquals(
                Shelf.all().stream().filter(one -> one.source().startsWith("USDA SR24")).count(),
                PublishedTable.read("usda-sr24-shelf").rows().size());
    }

    @ParameterizedTest
    @FromTable("usda-sr24-honey-sugars")
    void honey(Row row) {
        Component sugar = Component.valueOf(row.text("sugar"));
        LEDGER.at(row, sugar.words())
                .compare(
                        "sugars of honey, %",
                        row.number("percent"),
                        Shelf.HONEY.composition().percent(sugar),
                        Tolerance.ROUNDING);
    }

    @ParameterizedTest
    @FromTable("usda-sr24-spirit")
    void eightyProof(Row row) {
        Component part = Component.valueOf(row.text("part"));
        LEDGER.at(row, part.words())
                .compare(
                        "rum 40 %, %",
                        row.number("percent"), Shelf.RUM_40.composition().percent(part), PROOF);
    }

    @ParameterizedTest
    @FromTable("university-milk-rules")
    void rulesForMilk(Row row) {
        LEDGER.at(row, row.text("what"))
                .compare(
                        "rule, " + row.text("unit"),
                        row.number("value"),
                        byTheProgram(row.text("what")),
                        RULE);
    }

    private static double byTheProgram(String what) {
        return switch (what) {
            case "milk solids not fat of the skim part" -> MilkSolids.bySerumRulePercent(0);
            case "milk solids not fat of 80 % butter" ->
                    Mix.of(grams(Shelf.BUTTER_80)).milkSolidsNotFatPercent();
            case "lactose of milk solids not fat" ->
                    OwnIngredient.of("milk solids", "milk solids not fat 100")
                            .composition()
                            .percent(Component.LACTOSE);
            case "lactose of whey solids" ->
                    OwnIngredient.of("whey solids", "whey solids 100")
                            .composition()
                            .percent(Component.LACTOSE);
            case "salts constant from Leighton's milk" -> MilkSolids.IONS_MMOL_PER_G * 1.86;
            default -> throw new IllegalArgumentException(what);
        };
    }

    @Test
    @DisplayName("The serum rule agrees with USDA's milk, cream and skim milk powder")
    void serumRule() {
        assertEquals(1.8, MilkSolids.bySerumRulePercent(80), 1e-12);
        assertEquals(
                0.09 * (100 - 3.27),
                Mix.of(grams(Shelf.WHOLE_MILK)).milkSolidsNotFatPercent(),
                0.005);
        assertEquals(6.3, Mix.of(grams(Shelf.find("cream 30 %"))).milkSolidsNotFatPercent(), 1e-9);
        Composition powder = Shelf.SKIM_MILK_POWDER.composition();
        double measured =
                powder.percent(Component.LACTOSE) / powder.per100g(Tally.MILK_SOLIDS_NOT_FAT);
        assertEquals(.545, measured, .005, "USDA's skim milk powder agrees with the rule");
    }

    @ParameterizedTest
    @FromTable("alcohol-by-volume")
    void alcoholByVolume(Row row) {
        double byVolume = row.number("by_volume_percent");
        double byMass = row.number("mass_percent");
        Ledger.At at = LEDGER.at(row, row.text("by_volume_percent") + " % by volume");
        at.compare("alcohol by mass, %", byMass, AlcoholByVolume.massPercent(byVolume), LAST_DIGIT);
        at.compare(
                "alcohol by volume, %",
                byVolume, AlcoholByVolume.byVolumePercent(byMass), LAST_DIGIT);
    }

    @ParameterizedTest
    @FromTable("university-mix-density")
    void density(Row row) {
        Ingredient mix =
                OwnIngredient.of(
                        "mix",
                        "fat %s, water %s"
                                .formatted(row.text("fat_percent"), row.text("water_percent")));
        assertEquals(row.number("solids_percent"), Mix.of(grams(mix)).totalSolidsPercent(), 1e-9);
        LEDGER.at(row, row.text("fat_percent") + " % fat")
                .compare(
                        "density of a mix, kg/L",
                        row.number("density_kg_per_l"),
                        MixDensity.kgPerL(mix.composition()),
                        CUT_OFF);
    }

    @ParameterizedTest
    @FromTable("crc-102-sucrose-density")
    void densityOfSyrup(Row row) {
        double percent = row.number("sucrose_percent");
        Mix syrup =
                Mix.of(
                        Amount.grams(percent, Shelf.SUCROSE),
                        Amount.grams(100 - percent, Shelf.WATER));
        LEDGER.at(row, row.text("sucrose_percent") + " %")
                .compare(
                        "density of sucrose in water, kg/L",
                        row.number("density_kg_per_l"),
                        syrup.densityKgPerL(),
                        FORMULA);
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
