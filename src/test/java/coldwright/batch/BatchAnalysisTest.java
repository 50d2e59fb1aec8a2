package coldwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.crystal.CrystalStory;
import coldwright.science.crystal.Method;
import coldwright.words.Phrase;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import java.util.List;
import java.util.Map;

class BatchAnalysisTest {
    private static final double ROUNDING = 1e-4;

    private static BatchAnalysis reckon(String head, String rows) {
        return BatchAnalysis.of(
                RecipeFileReader.read("b.txt", head + "\ningredient,grams\n" + rows + "\n"));
    }

    private static final String SORBET = "blood orange juice,600\nsucrose,150\n";

    @Test
    void treeSaysWhatTheScienceSays() {
        BatchAnalysis batchAnalysis = reckon("method: bag\nbath: ice 2000 g, salt 500 g", SORBET);
        Map<String, Object> tree = BatchAnalysisTree.of(batchAnalysis);
        assertEquals(
                batchAnalysis.mix().initialFreezingPointC(),
                (double) tree.get("initial_freezing_point_c"),
                ROUNDING);
        assertEquals(
                batchAnalysis.mix().freezingCurve().icePercentAt(-18),
                (double) tree.get("ice_percent_of_water_at_minus_18_c"),
                ROUNDING);
        List<?> curve = (List<?>) tree.get("ice_curve");
        assertEquals(31, curve.size());
        assertEquals(Map.of("temperature_c", 0, "ice_percent_of_water", 0.0), curve.get(0));
        Map<?, ?> composition = (Map<?, ?>) tree.get("composition");
        assertEquals(
                100,
                (double) composition.get("water_percent")
                        + (double) composition.get("total_solids_percent"),
                0.5);
        assertEquals(
                -21.1, (double) ((Map<?, ?>) tree.get("freeze_plan")).get("cold_at_start_c"), 0.2);
    }

    @ParameterizedTest
    @EnumSource(Method.class)
    void reckonsEveryMethod(Method method) {
        BatchAnalysis batchAnalysis = reckon("method: " + FreezingSetup.word(method), SORBET);
        assertTrue(
                batchAnalysis.plan().minutesToSoftServe() > 0,
                () -> batchAnalysis.plan().toString());
        assertTrue(batchAnalysis.crystals().isPresent());
        assertFalse(BatchAnalysisText.of(batchAnalysis).contains("NaN"));
    }

    @Test
    void aFreezerColderThanTheModelStillKeepsItsCrystals() {
        BatchAnalysis coldest = reckon("freezer: -60 °C", SORBET);
        assertEquals(
                reckon("freezer: -40 °C", SORBET).crystals().orElseThrow().night().texture(),
                coldest.crystals().orElseThrow().night().texture());
        assertTrue(BatchAnalysis.of(coldest.batch()).crystals().isPresent());
    }

    @Test
    void heatShockCoarsensWhatIsTasted() {
        String kept = "method: bag\nstored: 7 days, swinging 3 °C, warmed to -6 °C for 2 h";
        BatchAnalysis batchAnalysis = reckon(kept, SORBET);
        CrystalsInStorage crystalsInStorage = batchAnalysis.crystals().orElseThrow();
        double um = crystalsInStorage.kept().orElseThrow().meanUm().middle();
        double steadyUm = crystalsInStorage.steady().orElseThrow().meanUm().middle();
        assertTrue(um > steadyUm, um + " µm, steady " + steadyUm);
        assertEquals(crystalsInStorage.kept().get(), crystalsInStorage.tasted());
        // the same as a cook would write it
        CrystalStory drawn = crystalsInStorage.drawn();
        assertEquals(
                drawn.storedAt(-18).swinging(3).forDays(7).heatShock(-6, 2).meanUm(),
                crystalsInStorage.tasted().meanUm());
        assertEquals(drawn.storedAt(-18).forDays(7).meanUm().middle(), steadyUm);
        Map<?, ?> crystals = (Map<?, ?>) BatchAnalysisTree.of(batchAnalysis).get("crystals");
        assertEquals(um, (double) crystals.get("as_kept_mean_micrometres"), 0.01);
        assertEquals(steadyUm, (double) crystals.get("kept_steady_mean_micrometres"), 0.01);

        Map<String, Object> usual = BatchAnalysisTree.of(reckon("method: bag", SORBET));
        assertFalse(usual.containsKey("stored"));
        assertFalse(((Map<?, ?>) usual.get("crystals")).containsKey("as_kept_mean_micrometres"));
    }

    @Test
    void whereNearlyAllMeltsItSaysSo() {
        BatchAnalysis batchAnalysis =
                reckon("method: bag\nstored: 1 day, warmed to -0.5 °C for 2 h", SORBET);
        assertTrue(batchAnalysis.crystals().orElseThrow().kept().isEmpty());
        assertTrue(
                batchAnalysis.report().notes().stream()
                        .anyMatch(note -> note.english().contains("nearly all of its ice")),
                () -> batchAnalysis.report().notes().toString());
    }

    @Test
    void saysNullWhereALiqueurBatchNeverGetsThere() {
        BatchAnalysis batchAnalysis =
                reckon(
                        "method: bag\nbath: ice 1000 g, salt 100 g",
                        "rum 40 %,400\nwhole milk,400\nsucrose,100\n");
        Map<?, ?> plan = (Map<?, ?>) BatchAnalysisTree.of(batchAnalysis).get("freeze_plan");
        assertNull(plan.get("minutes_to_hard"));
        assertFalse(((List<?>) plan.get("remarks")).isEmpty());
        assertTrue(
                batchAnalysis.report().findings().stream()
                        .anyMatch(f -> f.what().contains("freeze")),
                () -> batchAnalysis.report().findings().toString());
    }

    @Test
    void refusesAMixWithoutWater() {
        assertEquals(
                "b.txt: the mix has no water, and water is what freezes; add water, milk or juice",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> reckon("", "ethanol,100\nsucrose,20\n"))
                        .getMessage());
    }

    @Test
    void refusesWhatNoFreezerFreezes() {
        String message =
                assertThrows(
                                IllegalArgumentException.class,
                                () -> reckon("", "neutral spirit 96 %,900\n"))
                        .getMessage();
        assertTrue(message.startsWith("b.txt: the mix begins to freeze only at −"), message);
        assertTrue(message.endsWith("use less alcohol, sugar or salt to its water"), message);
    }

    @Test
    void survivesOddBatches() {
        for (String rows :
                List.of(
                        "water,1",
                        "water,1000000",
                        "sunflower oil,500\nwater,1",
                        "salt,200\nwater,100",
                        "sucrose,700\nwater,300",
                        "whole milk,1000")) {
            BatchAnalysis batchAnalysis = reckon("method: tub", rows);
            assertFalse(BatchAnalysisText.of(batchAnalysis).contains("NaN"), rows);
            double startC =
                    ((Number) BatchAnalysisTree.of(batchAnalysis).get("initial_freezing_point_c"))
                            .doubleValue();
            assertTrue(startC <= 0 && startC > -60, rows + " " + startC);
        }
    }

    @Test
    void eachFactHasAUnitAndASourceAndEachRuleOfThumbSaysSo() {
        BatchReport report =
                reckon(
                                "method: bag\nstored: 7 days, swinging 3 °C",
                                "blood orange juice,600\nsucrose,400\nwater,50\n")
                        .report();
        int labelled = 0;
        for (Fact fact : report.facts()) {
            assertEquals(fact.value() instanceof Number, !fact.unit().isEmpty(), fact::key);
            assertTrue(fact.basis().words().contains(" "), fact::key);
            boolean sentence = fact.sentence().contains(" ");
            if (sentence && fact.basis().kind().ruleOfThumb()) {
                assertTrue(fact.sentence().contains("(rule of thumb)"), fact::sentence);
                labelled++;
            }
        }
        assertEquals(2, labelled, "spoon ice and anti-freezing power");
        assertTrue(report.fact("ice_percent_of_water_at_minus_12_c").validity().isPresent());
        assertTrue(
                report.sources().stream()
                        .anyMatch(one -> one.english().startsWith("rule of thumb, from memory: ")));
        assertFalse(
                BatchAnalysisText.of(reckon("method: bag", SORBET)).contains("textbooks"),
                "sources are told by --why");
    }

    /** Powers on the trade's scale: sucrose 100, dextrose 190 and 70 to 75: common practice. */
    @Test
    void powersAreThoseOfTheTradesScale() {
        BatchReport sucrose = reckon("method: bag", "sucrose,150\nwater,850\n").report();
        assertEquals(150, sucrose.fact(BatchReport.PAC).number(), ROUNDING);
        assertEquals(150, sucrose.fact("pod_g_of_sucrose_per_1000_g").number(), ROUNDING);
        BatchReport dextrose = reckon("method: bag", "dextrose,100\nwater,900\n").report();
        assertEquals(190, dextrose.fact(BatchReport.PAC).number(), 0.5);
        double pod = dextrose.fact("pod_g_of_sucrose_per_1000_g").number();
        assertTrue(pod >= 70 && pod <= 80, "POD " + pod);
    }

    @Test
    void dextroseIsCalledSoAndGlucoseHasANote() {
        BatchAnalysis dextrose = reckon("method: bag", "dextrose,100\nwater,900\n");
        BatchAnalysis glucose = reckon("method: bag", "glucose,100\nwater,900\n");
        assertEquals("dextrose", dextrose.mix().amounts().get(0).ingredient().name());
        assertEquals(dextrose.mix().composition(), glucose.mix().composition());
        assertTrue(
                Phrase.english(glucose.report().notes())
                        .contains(
                                "glucose is read as anhydrous dextrose; for the syrup write glucose syrup"));
        assertTrue(
                dextrose.report().notes().stream()
                        .anyMatch(one -> one.english().contains("dextrose monohydrate")));
        Recipe more =
                dextrose.batch()
                        .changed(
                                List.of(
                                        new coldwright.science.balance.AmountChange(
                                                10, coldwright.science.mix.Shelf.GLUCOSE)));
        assertEquals(110, more.lines().get(0).grams(), "more of the line that is there");
    }
}
