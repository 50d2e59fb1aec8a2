package coldwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.crystal.CrystalStory;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import java.util.List;
import java.util.Map;

class ReckoningTest {
    private static final double ROUNDING = 1e-4;

    private static Reckoning reckon(String head, String rows) throws BatchFault {
        return Reckoning.of(BatchReader.read("b.txt", head + "\ningredient,grams\n" + rows + "\n"));
    }

    private static final String SORBET = "blood orange juice,600\nsucrose,150\n";

    @Test
    void treeSaysWhatTheScienceSays() throws BatchFault {
        Reckoning reckoning = reckon("method: bag\nbath: ice 2000 g, salt 500 g", SORBET);
        Map<String, Object> tree = ReckoningTree.of(reckoning);
        assertEquals(
                reckoning.mix().initialFreezingPointC(),
                (double) tree.get("initial_freezing_point_c"),
                ROUNDING);
        assertEquals(
                reckoning.mix().freezingCurve().icePercentAt(-18),
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
    @EnumSource(BatchFile.Method.class)
    void reckonsEveryMethod(BatchFile.Method method) throws BatchFault {
        Reckoning reckoning = reckon("method: " + method.name(), SORBET);
        assertTrue(reckoning.plan().minutesToSoftServe() > 0, () -> reckoning.plan().toString());
        assertTrue(reckoning.keeping().isPresent());
        assertFalse(ReckoningText.of(reckoning).contains("NaN"));
    }

    @Test
    void aFreezerColderThanTheModelStillKeepsItsCrystals() throws BatchFault {
        Reckoning coldest = reckon("freezer: -60 °C", SORBET);
        assertEquals(
                reckon("freezer: -40 °C", SORBET).keeping().orElseThrow().night().texture(),
                coldest.keeping().orElseThrow().night().texture());
        assertTrue(Keeping.tastedUm(coldest.batch()).isPresent());
    }

    @Test
    void heatShockCoarsensWhatIsTasted() throws BatchFault {
        String kept = "method: bag\nstored: 7 days, swinging 3 °C, warmed to -6 °C for 2 h";
        Reckoning reckoning = reckon(kept, SORBET);
        Keeping keeping = reckoning.keeping().orElseThrow();
        double um = keeping.kept().orElseThrow().meanUm().middle();
        double steadyUm = keeping.steady().orElseThrow().meanUm().middle();
        assertTrue(um > steadyUm, um + " µm, steady " + steadyUm);
        assertEquals(keeping.kept().get(), keeping.tasted());
        // the same as a cook would write it
        CrystalStory drawn = keeping.drawn();
        assertEquals(
                drawn.storedAt(-18).swinging(3).forDays(7).heatShock(-6, 2).meanUm(),
                keeping.tasted().meanUm());
        assertEquals(drawn.storedAt(-18).forDays(7).meanUm().middle(), steadyUm);
        Map<?, ?> crystals = (Map<?, ?>) ReckoningTree.of(reckoning).get("crystals");
        assertEquals(um, (double) crystals.get("as_kept_mean_micrometres"), 0.01);
        assertEquals(steadyUm, (double) crystals.get("kept_steady_mean_micrometres"), 0.01);

        Map<String, Object> usual = ReckoningTree.of(reckon("method: bag", SORBET));
        assertFalse(usual.containsKey("stored"));
        assertFalse(((Map<?, ?>) usual.get("crystals")).containsKey("as_kept_mean_micrometres"));
    }

    @Test
    void whereNearlyAllMeltsItSaysSo() throws BatchFault {
        Reckoning reckoning =
                reckon("method: bag\nstored: 1 day, warmed to -0.5 °C for 2 h", SORBET);
        assertTrue(reckoning.keeping().orElseThrow().kept().isEmpty());
        assertTrue(
                reckoning.notes().stream().anyMatch(note -> note.contains("nearly all of its ice")),
                () -> reckoning.notes().toString());
    }

    @Test
    void saysNullWhereALiqueurBatchNeverGetsThere() throws BatchFault {
        Reckoning reckoning =
                reckon(
                        "method: bag\nbath: ice 1000 g, salt 100 g",
                        "rum 40 %,400\nwhole milk,400\nsucrose,100\n");
        Map<?, ?> plan = (Map<?, ?>) ReckoningTree.of(reckoning).get("freeze_plan");
        assertNull(plan.get("minutes_to_hard"));
        assertFalse(((List<?>) plan.get("remarks")).isEmpty());
        assertTrue(
                reckoning.findings().stream().anyMatch(f -> f.what().contains("freeze")),
                () -> reckoning.findings().toString());
    }

    @Test
    void refusesAMixWithoutWater() {
        assertEquals(
                "b.txt: the mix has no water, and water is what freezes; add water, milk or juice",
                assertThrows(BatchFault.class, () -> reckon("", "ethanol,100\nsucrose,20\n"))
                        .getMessage());
    }

    @Test
    void refusesWhatNoFreezerFreezes() {
        String message =
                assertThrows(BatchFault.class, () -> reckon("", "neutral spirit 96 %,900\n"))
                        .getMessage();
        assertTrue(message.startsWith("b.txt: the mix begins to freeze only at −"), message);
        assertTrue(message.endsWith("use less alcohol, sugar or salt to its water"), message);
    }

    @Test
    void survivesOddBatches() throws BatchFault {
        for (String rows :
                List.of(
                        "water,1",
                        "water,1000000",
                        "sunflower oil,500\nwater,1",
                        "salt,200\nwater,100",
                        "sucrose,700\nwater,300",
                        "whole milk,1000")) {
            Reckoning reckoning = reckon("method: tub", rows);
            assertFalse(ReckoningText.of(reckoning).contains("NaN"), rows);
            double startC =
                    ((Number) ReckoningTree.of(reckoning).get("initial_freezing_point_c"))
                            .doubleValue();
            assertTrue(startC <= 0 && startC > -60, rows + " " + startC);
        }
    }
}
