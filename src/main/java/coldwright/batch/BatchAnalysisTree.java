package coldwright.batch;

import coldwright.science.Band;
import coldwright.science.crystal.CrystalStory;
import coldwright.science.crystal.Texture;
import coldwright.science.diagnosis.Finding;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;
import coldwright.science.mix.Component;
import coldwright.science.mix.Mix;
import coldwright.science.standards.NameVerdict;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A reckoning as a tree of plain maps, lists, numbers and texts: what {@code --json} prints. Each
 * number's key ends in its unit; {@code docs/batch-file.md} explains each key, and they are a
 * promise. What is never reached is null.
 */
public final class BatchAnalysisTree {
    private static final int COLDEST_C = -30;

    private BatchAnalysisTree() {}

    /**
     * The tree of a reckoning.
     *
     * @param batchAnalysis what was reckoned
     * @return the tree, keys in the order of the documentation
     */
    public static Map<String, Object> of(BatchAnalysis batchAnalysis) {
        Mix mix = batchAnalysis.mix();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", batchAnalysis.batch().name());
        tree.put("method", batchAnalysis.batch().method().name().toLowerCase(Locale.ROOT));
        tree.put("mass_g", number(mix.massG()));
        tree.put("composition", composition(mix));
        tree.put("initial_freezing_point_c", number(batchAnalysis.curve().initialFreezingPointC()));
        tree.put(
                "trade_method_initial_freezing_point_c",
                number(batchAnalysis.trade().initialFreezingPointC()));
        tree.put("trade_method_difference", batchAnalysis.trade().why());
        for (int celsius : new int[] {-12, -18}) {
            tree.put(
                    "ice_percent_of_water_at_minus_" + -celsius + "_c",
                    number(batchAnalysis.curve().icePercentAt(celsius)));
        }
        tree.put("ice_curve", iceCurve(batchAnalysis));
        Band sweet = batchAnalysis.sweetness().percentOfSucroseSolution();
        tree.put("sweetness_percent_of_sucrose_solution", number(sweet.middle()));
        tree.put("sweetness_low_percent_of_sucrose_solution", number(sweet.low()));
        tree.put("sweetness_high_percent_of_sucrose_solution", number(sweet.high()));
        tree.put("mix_density_kg_per_l", number(mix.densityKgPerL()));
        tree.put("mix_volume_l", number(mix.volumeL()));
        tree.put("overrun_percent", number(batchAnalysis.air().percent()));
        tree.put("volume_with_air_l", number(batchAnalysis.air().litres(mix)));
        tree.put("freeze_plan", plan(batchAnalysis));
        batchAnalysis
                .batch()
                .stored()
                .ifPresent(storageConditions -> tree.put("stored", stored(storageConditions)));
        tree.put("crystals", crystals(batchAnalysis));
        tree.put(
                "findings",
                batchAnalysis.findings().stream().map(BatchAnalysisTree::finding).toList());
        tree.put("names", batchAnalysis.names().stream().map(NameVerdict::sentence).toList());
        tree.put("declarations", batchAnalysis.declarations());
        tree.put("notes", batchAnalysis.notes());
        return tree;
    }

    /**
     * What is in a mix, as the tree has it.
     *
     * @param mix any mix
     * @return shares in % by mass
     */
    public static Map<String, Object> composition(Mix mix) {
        Map<String, Object> shares = new LinkedHashMap<>();
        shares.put("water_percent", number(mix.waterPercent()));
        shares.put("fat_percent", number(mix.fatPercent()));
        shares.put("milk_fat_percent", number(mix.milkFatPercent()));
        shares.put("milk_solids_not_fat_percent", number(mix.milkSolidsNotFatPercent()));
        shares.put("sugars_percent", number(mix.sugarsPercent()));
        for (Component sugar : Component.values()) {
            if (sugar.kind() == Component.Kind.SUGAR) {
                shares.put(sugar.words() + "_percent", number(mix.composition().percent(sugar)));
            }
        }
        shares.put("total_solids_percent", number(mix.totalSolidsPercent()));
        shares.put("alcohol_percent", number(mix.alcoholPercent()));
        shares.put("salt_percent", number(mix.saltPercent()));
        shares.put("protein_percent", number(mix.proteinPercent()));
        shares.put("stabiliser_percent", number(mix.composition().percent(Component.STABILISER)));
        shares.put("sugars_g_per_100_g_water", number(mix.sugarPer100gWater()));
        shares.put("protein_g_per_100_g_water", number(mix.proteinPer100gWater()));
        return shares;
    }

    private static List<Map<String, Object>> iceCurve(BatchAnalysis batchAnalysis) {
        List<Map<String, Object>> points = new ArrayList<>();
        for (int celsius = 0; celsius >= COLDEST_C; celsius--) {
            Map<String, Object> point = new LinkedHashMap<>();
            point.put("temperature_c", celsius);
            point.put("ice_percent_of_water", number(batchAnalysis.curve().icePercentAt(celsius)));
            points.add(point);
        }
        return points;
    }

    private static Map<String, Object> plan(BatchAnalysis batchAnalysis) {
        FreezePlan plan = batchAnalysis.plan();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("by", plan.freeze().cold().words());
        tree.put("parts", batchAnalysis.parts());
        tree.put("cold_at_start_c", number(batchAnalysis.coldC()));
        for (Stage stage : Stage.values()) {
            String name = stage.name().toLowerCase(Locale.ROOT);
            tree.put("minutes_to_" + name, number(plan.minutesTo(stage)));
            tree.put("minutes_to_" + name + "_least", number(plan.rangeMinutes(stage).least()));
            tree.put("minutes_to_" + name + "_most", number(plan.rangeMinutes(stage).most()));
        }
        tree.put("shake_at_minutes", plan.shakeAtMinutes());
        tree.put("heat_removed_kj", number(plan.heatRemovedKJ()));
        boolean bath =
                batchAnalysis.batch().method() == Recipe.Method.BAG
                        || batchAnalysis.batch().method() == Recipe.Method.CHURN;
        if (bath) {
            tree.put("least_ice_g", number(plan.leastBath().iceG()));
            tree.put("least_salt_g", number(plan.leastBath().saltG()));
        }
        tree.put("remarks", plan.remarks());
        return tree;
    }

    private static Map<String, Object> stored(StorageConditions storageConditions) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("days", number(storageConditions.days()));
        tree.put("swing_c", number(storageConditions.swingC()));
        storageConditions
                .warmed()
                .ifPresent(
                        warmSpell -> {
                            tree.put("warmed_to_c", number(warmSpell.temperatureC()));
                            tree.put("warmed_hours", number(warmSpell.hours()));
                        });
        return tree;
    }

    private static Map<String, Object> crystals(BatchAnalysis batchAnalysis) {
        Map<String, Object> tree = new LinkedHashMap<>();
        if (batchAnalysis.crystals().isEmpty()) {
            tree.put("verdict", "it keeps too little ice to have crystals");
            return tree;
        }
        CrystalsInStorage crystalsInStorage = batchAnalysis.crystals().get();
        put(tree, "drawn", crystalsInStorage.drawn());
        put(tree, "after_a_night", crystalsInStorage.night());
        put(tree, "after_two_weeks", crystalsInStorage.fortnight());
        crystalsInStorage.kept().ifPresent(kept -> put(tree, "as_kept", kept));
        crystalsInStorage.steady().ifPresent(steady -> put(tree, "kept_steady", steady));
        tree.put("smooth_below_micrometres", (int) Texture.SMOOTH.upToUm());
        tree.put("verdict", crystalsInStorage.tasted().verdict());
        return tree;
    }

    private static void put(Map<String, Object> tree, String when, CrystalStory story) {
        Band mean = story.meanUm();
        tree.put(when + "_mean_micrometres", number(mean.middle()));
        tree.put(when + "_low_micrometres", number(mean.low()));
        tree.put(when + "_high_micrometres", number(mean.high()));
    }

    private static Map<String, Object> finding(Finding finding) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("what", finding.what());
        tree.put("why", finding.why());
        tree.put("mend", finding.mend());
        return tree;
    }

    /** Four decimals are beyond every model here; what is no number is null. */
    static Object number(double value) {
        if (!Double.isFinite(value)) {
            return null;
        }
        double rounded = Math.round(value * 1e4) / 1e4;
        return rounded == 0 ? 0.0 : rounded;
    }
}
