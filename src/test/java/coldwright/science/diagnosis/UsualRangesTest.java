package coldwright.science.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.published.FromTable;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.Band;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.Map;

/** The bounds of what is usual, and how far beyond them a batch is said to be. */
class UsualRangesTest {
    private static final Ledger LEDGER = Ledger.of(UsualRangesTest.class);
    private static final Tolerance NODE = Tolerance.of(0, "stands in the program");

    private static final double EXACT = 1e-9;

    private static final Map<String, UsualRange> RANGES =
            Map.ofEntries(
                    Map.entry("ICE_AT_SERVING", UsualRange.ICE_AT_SERVING),
                    Map.entry("ICE_WHEN_CHURNED", UsualRange.ICE_WHEN_CHURNED),
                    Map.entry("CRYSTALS", UsualRange.CRYSTALS),
                    Map.entry("FAT", UsualRange.FAT),
                    Map.entry("SOLIDS_WITH_MILK", UsualRange.SOLIDS_WITH_MILK),
                    Map.entry("SOLIDS_OF_SORBET", UsualRange.SOLIDS_OF_SORBET),
                    Map.entry("PROTEIN_PER_WATER", UsualRange.PROTEIN_PER_WATER),
                    Map.entry("STABILISER", UsualRange.STABILISER),
                    Map.entry("STARCH", UsualRange.STARCH),
                    Map.entry("SWEETNESS_WITH_MILK", UsualRange.SWEETNESS_WITH_MILK),
                    Map.entry("SWEETNESS_OF_SORBET", UsualRange.SWEETNESS_OF_SORBET));

    @ParameterizedTest
    @FromTable("memory-usual-ranges")
    void boundsAreThoseOfTheTable(Row row) {
        UsualRange usualRange = RANGES.get(row.text("what"));
        Ledger.At at = LEDGER.at(row, row.text("what").toLowerCase(java.util.Locale.ROOT));
        at.compare("least usual value", row.number("least"), usualRange.least(), NODE);
        if (row.text("most").isEmpty()) {
            assertEquals(Double.POSITIVE_INFINITY, usualRange.most());
        } else {
            at.compare("most usual value", row.number("most"), usualRange.most(), NODE);
        }
    }

    /** A mix with milk fat in it, the rest water. */
    private static Composition milky(double sucrose, double fat) {
        return Composition.NOTHING
                .with(100 - sucrose - fat, Component.WATER)
                .with(fat, Component.MILK_FAT)
                .with(sucrose, Component.SUCROSE);
    }

    private static Composition in(Composition all, double percent, Component component) {
        return all.with(all.percent(Component.WATER) - percent, Component.WATER)
                .with(percent, component);
    }

    private static Situation of(Composition composition) {
        return Situation.of(Mix.of(Amount.grams(1000, Ingredient.own("a batch", composition))));
    }

    private static double steps(Situation situation, Symptom symptom, int suspect) {
        return new SuspectTable(situation).behind(symptom).get(suspect).steps(situation.mix());
    }

    @ParameterizedTest
    @CsvSource({"19.9, 0", "20, 0", "22, 0.5", "24, 1", "32, 3"})
    void fatAboveTwentyMakesButter(double fat, double expected) {
        assertEquals(expected, steps(of(milky(15, fat)), Symptom.BUTTERY, 0), EXACT);
    }

    @ParameterizedTest
    @CsvSource({"12, 0", "10, 0", "6, 0.5", "2, 1"})
    void fatBelowTenMeltsFast(double fat, double expected) {
        assertEquals(expected, steps(of(milky(15, fat)), Symptom.MELTS_FAST, 2), EXACT);
    }

    @ParameterizedTest
    @CsvSource({"16, 0", "17, 0", "18, 0.5", "21, 2"})
    void sugarAboveSeventeenIsTooSweetWithMilk(double sucrose, double expected) {
        assertEquals(expected, steps(of(milky(sucrose, 12)), Symptom.TOO_SWEET, 0), EXACT);
    }

    @ParameterizedTest
    @CsvSource({"28, 0", "30, 0", "31.5, 0.5", "36, 2"})
    void sugarAboveThirtyIsTooSweetInASorbet(double sucrose, double expected) {
        assertEquals(expected, steps(of(milky(sucrose, 0)), Symptom.TOO_SWEET, 0), EXACT);
    }

    /** R. W. Hartel 2019: numerous crystals under about 50 µm read as smooth. */
    @ParameterizedTest
    @CsvSource({"30, 0", "50, 0", "57.5, 0.5", "65, 1", "80, 2"})
    void crystalsAreFeltFromFiftyMicrometres(double um, double expected) {
        Situation situation = of(milky(15, 12)).withCrystals(um);
        assertEquals(expected, steps(situation, Symptom.ICY, 0), EXACT);
    }

    /** What a steady freezer would have done as well is not blamed on the swings. */
    @ParameterizedTest
    @CsvSource({"80, 40, 0, 2", "80, 65, 1, 1", "45, 40, 0, 0", "65, 65, 1, 0"})
    void swingsAreBlamedForTheirShare(double now, double steady, double itself, double swings) {
        Situation situation =
                of(milky(15, 12)).withCrystals(now).steadyWouldBe(Band.exactly(steady));
        assertEquals(itself, steps(situation, Symptom.ICY, 0), EXACT);
        assertEquals(swings, steps(situation, Symptom.ICY, 1), EXACT);
        assertEquals(0, steps(of(milky(15, 12)).withCrystals(now), Symptom.ICY, 1), EXACT);
    }

    @ParameterizedTest
    @CsvSource({"36, 0", "34, 0.5", "28, 2"})
    void fewSolidsAreWeak(double solids, double expected) {
        assertEquals(expected, steps(of(milky(solids - 12, 12)), Symptom.WEAK, 0), EXACT);
    }

    @ParameterizedTest
    @CsvSource({"26, 0", "24, 0.5", "18, 2"})
    void fewSolidsOfASorbetAreWeak(double solids, double expected) {
        assertEquals(expected, steps(of(milky(solids, 0)), Symptom.WEAK, 0), EXACT);
    }

    @ParameterizedTest
    @CsvSource({"42, 0", "44, 0.25", "50, 1"})
    void manySolidsAreGummy(double solids, double expected) {
        assertEquals(expected, steps(of(milky(solids - 12, 12)), Symptom.GUMMY, 2), EXACT);
        assertEquals(expected, steps(of(milky(solids - 8, 0)), Symptom.GUMMY, 2), EXACT);
    }

    @Test
    void stabiliserTooLittleAndTooMuch() {
        Composition mix = milky(15, 12);
        for (Symptom symptom : new Symptom[] {Symptom.WEAK, Symptom.ICY, Symptom.MELTS_FAST}) {
            int which = symptom == Symptom.ICY ? 4 : symptom == Symptom.WEAK ? 2 : 1;
            double share = symptom == Symptom.ICY ? 0.4 : symptom == Symptom.WEAK ? 0.5 : 0.6;
            assertEquals(share, steps(of(mix), symptom, which), EXACT);
            assertEquals(
                    share / 2,
                    steps(of(in(mix, 0.1, Component.STABILISER)), symptom, which),
                    EXACT);
            assertEquals(0, steps(of(in(mix, 0.2, Component.STABILISER)), symptom, which), EXACT);
            assertEquals(share / 2, steps(of(in(mix, 1, Component.STARCH)), symptom, which), EXACT);
            assertEquals(share / 2, steps(of(in(mix, 1, Component.FIBRE)), symptom, which), EXACT);
        }
        assertEquals(0, steps(of(in(mix, 0.5, Component.STABILISER)), Symptom.GUMMY, 0), EXACT);
        assertEquals(1, steps(of(in(mix, 0.7, Component.STABILISER)), Symptom.GUMMY, 0), EXACT);
        assertEquals(0, steps(of(in(mix, 2, Component.STARCH)), Symptom.GUMMY, 1), EXACT);
        assertEquals(0.8, steps(of(in(mix, 3, Component.STARCH)), Symptom.GUMMY, 1), EXACT);
    }

    @Test
    void proteinPerWaterAndAir() {
        Composition mix = milky(15, 12);
        double water = mix.percent(Component.WATER);
        assertEquals(0.5 * 4 / 1.5, steps(of(mix), Symptom.WEAK, 1), EXACT);
        double protein = 0.025 * water / 1.025;
        assertEquals(
                0.5, steps(of(in(mix, protein, Component.MILK_PROTEIN)), Symptom.WEAK, 1), EXACT);
        assertEquals(0, steps(of(milky(30, 0)), Symptom.WEAK, 1), EXACT);
        double solids = 27;
        assertEquals(0, steps(of(mix).withAir(2.5 * solids), Symptom.WEAK, 3), EXACT);
        assertEquals(0.8, steps(of(mix).withAir(2.5 * solids + 25), Symptom.WEAK, 3), EXACT);
    }

    /** What the freezing curve says, against 65 to 75 % at serving and 50 % at the cold. */
    @ParameterizedTest
    @CsvSource({"-8", "-12", "-20", "-25"})
    void iceAtServingAndAtTheCold(double servingC) {
        Situation situation = of(milky(24, 12)).servedAt(servingC).frozenAt(-4.5);
        double ice = situation.mix().freezingCurve().icePercentAt(servingC);
        double much = Math.max(0, (ice - 75) / 5);
        double little = Math.max(0, (65 - ice) / 5);
        assertEquals(much, steps(situation, Symptom.HARD, 0), EXACT);
        assertEquals(0.5 * much, steps(situation, Symptom.ICY, 2), EXACT);
        assertEquals(little, steps(situation, Symptom.TOO_SOFT, 0), EXACT);
        assertEquals(0.7 * little, steps(situation, Symptom.MELTS_FAST, 0), EXACT);
        double churned = situation.mix().freezingCurve().icePercentAt(-4.5);
        assertEquals(
                Math.max(0, (50 - churned) / 15),
                steps(situation, Symptom.WILL_NOT_FREEZE, 0),
                EXACT);
    }
}
