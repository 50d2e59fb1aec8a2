package coldwright.batch;

import coldwright.science.Band;
import coldwright.science.crystal.CrystalStory;
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
public final class ReckoningTree {
    private static final int COLDEST_C = -30;

    private ReckoningTree() {}

    /**
     * The tree of a reckoning.
     *
     * @param reckoning what was reckoned
     * @return the tree, keys in the order of the documentation
     */
    public static Map<String, Object> of(Reckoning reckoning) {
        Mix mix = reckoning.mix();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", reckoning.batch().name());
        tree.put("method", reckoning.batch().method().name().toLowerCase(Locale.ROOT));
        tree.put("mass_g", number(mix.massG()));
        tree.put("composition", composition(mix));
        tree.put("initial_freezing_point_c", number(reckoning.curve().initialFreezingPointC()));
        tree.put(
                "trade_method_initial_freezing_point_c",
                number(reckoning.trade().initialFreezingPointC()));
        tree.put("trade_method_difference", reckoning.trade().why());
        for (int celsius : new int[] {-12, -18}) {
            tree.put(
                    "ice_percent_of_water_at_minus_" + -celsius + "_c",
                    number(reckoning.curve().icePercentAt(celsius)));
        }
        tree.put("ice_curve", iceCurve(reckoning));
        Band sweet = reckoning.sweetness().percentOfSucroseSolution();
        tree.put("sweetness_percent_of_sucrose_solution", number(sweet.middle()));
        tree.put("sweetness_low_percent_of_sucrose_solution", number(sweet.low()));
        tree.put("sweetness_high_percent_of_sucrose_solution", number(sweet.high()));
        tree.put("mix_density_kg_per_l", number(mix.densityKgPerL()));
        tree.put("mix_volume_l", number(mix.volumeL()));
        tree.put("overrun_percent", number(reckoning.air().percent()));
        tree.put("volume_with_air_l", number(reckoning.air().litres(mix)));
        tree.put("freeze_plan", plan(reckoning));
        reckoning.batch().stored().ifPresent(stored -> tree.put("stored", stored(stored)));
        tree.put("crystals", crystals(reckoning));
        tree.put("findings", reckoning.findings().stream().map(ReckoningTree::finding).toList());
        tree.put("names", reckoning.names().stream().map(NameVerdict::sentence).toList());
        tree.put("declarations", reckoning.declarations());
        tree.put("notes", reckoning.notes());
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

    private static List<Map<String, Object>> iceCurve(Reckoning reckoning) {
        List<Map<String, Object>> points = new ArrayList<>();
        for (int celsius = 0; celsius >= COLDEST_C; celsius--) {
            Map<String, Object> point = new LinkedHashMap<>();
            point.put("temperature_c", celsius);
            point.put("ice_percent_of_water", number(reckoning.curve().icePercentAt(celsius)));
            points.add(point);
        }
        return points;
    }

    private static Map<String, Object> plan(Reckoning reckoning) {
        FreezePlan plan = reckoning.plan();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("by", plan.freeze().cold().words());
        tree.put("parts", reckoning.parts());
        tree.put("cold_at_start_c", number(reckoning.coldC()));
        for (Stage stage : Stage.values()) {
            String name = stage.name().toLowerCase(Locale.ROOT);
            tree.put("minutes_to_" + name, number(plan.minutesTo(stage)));
            tree.put("minutes_to_" + name + "_least", number(plan.rangeMinutes(stage).least()));
            tree.put("minutes_to_" + name + "_most", number(plan.rangeMinutes(stage).most()));
        }
        tree.put("shake_at_minutes", plan.shakeAtMinutes());
        tree.put("heat_removed_kj", number(plan.heatRemovedKJ()));
        boolean bath =
                reckoning.batch().method() == BatchFile.Method.BAG
                        || reckoning.batch().method() == BatchFile.Method.CHURN;
        if (bath) {
            tree.put("least_ice_g", number(plan.leastBath().iceG()));
            tree.put("least_salt_g", number(plan.leastBath().saltG()));
        }
        tree.put("remarks", plan.remarks());
        return tree;
    }

    private static Map<String, Object> stored(Stored stored) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("days", number(stored.days()));
        tree.put("swing_c", number(stored.swingC()));
        stored.warmed()
                .ifPresent(
                        warmed -> {
                            tree.put("warmed_to_c", number(warmed.temperatureC()));
                            tree.put("warmed_hours", number(warmed.hours()));
                        });
        return tree;
    }

    private static Map<String, Object> crystals(Reckoning reckoning) {
        Map<String, Object> tree = new LinkedHashMap<>();
        if (reckoning.keeping().isEmpty()) {
            tree.put("verdict", "it keeps too little ice to have crystals");
            return tree;
        }
        Keeping keeping = reckoning.keeping().get();
        put(tree, "drawn", keeping.drawn());
        put(tree, "after_a_night", keeping.night());
        put(tree, "after_two_weeks", keeping.fortnight());
        keeping.kept().ifPresent(kept -> put(tree, "as_kept", kept));
        keeping.steady().ifPresent(steady -> put(tree, "kept_steady", steady));
        tree.put("smooth_below_micrometres", 50);
        tree.put("verdict", keeping.tasted().verdict());
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
