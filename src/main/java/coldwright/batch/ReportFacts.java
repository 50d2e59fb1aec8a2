package coldwright.batch;

import coldwright.science.Band;
import coldwright.science.crystal.CrystalStory;
import coldwright.science.crystal.Storage;
import coldwright.science.crystal.Texture;
import coldwright.science.diagnosis.Situation;
import coldwright.science.freezer.Cold;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;
import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Component;
import coldwright.science.mix.Mix;
import coldwright.science.mix.SucroseEquivalentMethod;
import coldwright.science.sensory.Firmness;
import coldwright.science.sensory.Overrun;
import coldwright.science.sensory.Sweetness;
import coldwright.science.style.Style;
import coldwright.words.Phrase;
import coldwright.words.Words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Collects the facts of a report, each calculated once. */
final class ReportFacts {
    private static final int COLDEST_C = -30;

    /** Temperatures of serving and of a home freezer, °C, which have keys of their own. */
    private static final double[] USUAL_C = {Situation.SERVING_C, -18};

    private static final double NOTABLE_PERCENT = 1;
    private static final double HOURS_FROM_MINUTES = 120;

    /** The end of the table of the sucrose-equivalent method, g per 100 g of water. */
    private static final double LEIGHTON_MOST = 180;

    private static final double MOST_OVERRUN_PERCENT = 250;

    private final List<Fact> facts = new ArrayList<>();

    /** The group of the facts that are added. */
    private String group = "";

    List<Fact> all() {
        return facts;
    }

    private Fact fact(String key, Object value, Basis basis) {
        return Fact.of(group, key, value, basis);
    }

    private void add(String key, Object value, Basis basis) {
        facts.add(fact(key, value, basis));
    }

    /** All but times and crystals, which take longest. */
    static List<Fact> quick(Recipe batch, Mix mix, FreezingCurve curve) {
        ReportFacts report = new ReportFacts();
        report.add("mass_g", mix.massG(), Basis.RECIPE);
        report.facts.addAll(composition(mix));
        report.freezing(batch, mix, curve);
        report.taste(mix);
        Overrun air = new Overrun(batch.airPercent());
        report.add("mix_density_kg_per_l", mix.densityKgPerL(), Basis.DENSITY);
        report.add("mix_volume_l", mix.volumeL(), Basis.DENSITY);
        report.add("overrun_percent", air.percent(), Basis.RECIPE);
        double litres = air.litres(mix);
        report.facts.add(
                report.fact("volume_with_air_l", litres, Basis.OVERRUN)
                        .valid(0, MOST_OVERRUN_PERCENT, "%")
                        .said("volume", mix.volumeL(), mix.densityKgPerL(), litres, air.percent()));
        return report.facts;
    }

    /** The composition of a mix, % by mass. */
    static List<Fact> composition(Mix mix) {
        Map<String, Double> shares = new LinkedHashMap<>();
        shares.put("water_percent", mix.waterPercent());
        shares.put("fat_percent", mix.fatPercent());
        shares.put("milk_fat_percent", mix.milkFatPercent());
        shares.put("milk_solids_not_fat_percent", mix.milkSolidsNotFatPercent());
        shares.put("sugars_percent", mix.sugarsPercent());
        for (Component sugar : Component.values()) {
            if (sugar.kind() == Component.Kind.SUGAR) {
                shares.put(sugar.words() + "_percent", mix.composition().percent(sugar));
            }
        }
        shares.put("total_solids_percent", mix.totalSolidsPercent());
        shares.put("alcohol_percent", mix.alcoholPercent());
        shares.put("salt_percent", mix.saltPercent());
        shares.put("protein_percent", mix.proteinPercent());
        shares.put("stabiliser_percent", mix.composition().percent(Component.STABILISER));
        shares.put("sugars_g_per_100_g_water", mix.sugarPer100gWater());
        shares.put("protein_g_per_100_g_water", mix.proteinPer100gWater());
        ReportFacts report = new ReportFacts();
        report.group = "composition";
        shares.forEach((key, value) -> report.add(key, value, Basis.INGREDIENTS));
        return report.facts;
    }

    private void freezing(Recipe batch, Mix mix, FreezingCurve curve) {
        double leastC = curve.iceStopsGrowingC();
        facts.add(
                fact("initial_freezing_point_c", curve.initialFreezingPointC(), Basis.FREEZING)
                        .valid(leastC, 0, "°C"));
        SucroseEquivalentMethod trade = mix.tradeMethod();
        facts.add(
                fact(
                                "trade_method_initial_freezing_point_c",
                                trade.initialFreezingPointC(),
                                Basis.LEIGHTON)
                        .valid(0, LEIGHTON_MOST, "g per 100 g of water"));
        add("trade_method_difference", trade.difference(), Basis.LEIGHTON);
        for (double temperatureC : USUAL_C) {
            String end = "_at_minus_" + Math.round(-temperatureC) + "_c";
            ice("ice_percent_of_water" + end, "firmness" + end, mix, curve, temperatureC);
        }
        List<Map<String, Object>> points =
                IntStream.rangeClosed(0, -COLDEST_C)
                        .mapToObj(
                                c -> {
                                    Map<String, Object> point = new LinkedHashMap<>();
                                    point.put("temperature_c", -c);
                                    point.put("ice_percent_of_water", curve.icePercentAt(-c));
                                    return point;
                                })
                        .toList();
        facts.add(fact("ice_curve", points, Basis.FREEZING).valid(leastC, 0, "°C"));
        BatchKitchen kitchen = new BatchKitchen(batch);
        double servingC = kitchen.making(kitchen.style(mix)).servingC();
        add("serving_c", servingC, Basis.RECIPE);
        ice("serving_ice_percent_of_water", "serving_firmness", mix, curve, servingC);
        double freezerC = batch.freezerC();
        ice("freezer_ice_percent_of_water", "freezer_firmness", mix, curve, freezerC);
        double met = Firmness.spoonIcePercent(mix, freezerC);
        if (curve.icePercentAt(freezerC) - met >= NOTABLE_PERCENT) {
            facts.add(
                    fact("spoon_ice_percent", met, Basis.FIRMNESS)
                            .said("spoon", mix.waterPercent(), freezerC, met));
        }
        scoopable(mix).ifPresent(facts::add);
    }

    private void ice(String key, String firmKey, Mix mix, FreezingCurve curve, double celsius) {
        double percent = curve.icePercentAt(celsius);
        Phrase firmness = Firmness.of(mix, celsius).phrase();
        facts.add(
                fact(key, percent, Basis.FREEZING)
                        .valid(curve.iceStopsGrowingC(), 0, "°C")
                        .said("ice", celsius, percent, Basis.ruleOfThumb(firmness)));
        add(firmKey, firmness, Basis.FIRMNESS);
    }

    /** Temperatures at which a spoon goes in; empty if it stays soft at any cold. */
    private Optional<Fact> scoopable(Mix mix) {
        try {
            Band scoops = Firmness.scoopableC(mix);
            return Optional.of(
                    fact("scoopable_c", scoops.middle(), Basis.FIRMNESS)
                            .between(
                                    "scoopable_low_c",
                                    scoops.low(),
                                    "scoopable_high_c",
                                    scoops.high()));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private void taste(Mix mix) {
        Band band = Sweetness.of(mix).percentOfSucroseSolution();
        boolean alike = Words.decimals(0, band.low()).equals(Words.decimals(0, band.high()));
        facts.add(
                fact("sweetness_percent_of_sucrose_solution", band.middle(), Basis.SWEETNESS)
                        .said(
                                alike ? "sweet-alike" : "sweet",
                                band.middle(),
                                band.low(),
                                band.high())
                        .between(
                                "sweetness_low_percent_of_sucrose_solution",
                                band.low(),
                                "sweetness_high_percent_of_sucrose_solution",
                                band.high()));
        facts.add(
                fact(BatchReport.PAC, mix.pac(), Basis.TRADE_SCALE)
                        .said("pac", mix.pac(), mix.pod()));
        add("pod_g_of_sucrose_per_1000_g", mix.pod(), Basis.SWEETNESS);
    }

    /** Times, heat and bath; what is rounded here is for one part. */
    ReportFacts plan(FreezePlan plan, int parts, double coldC) {
        group = "freeze_plan";
        add("by", plan.freeze().cold().phrase(), Basis.RECIPE);
        add("parts", parts, Basis.RECIPE);
        add("cold_at_start_c", coldC, Basis.BATH);
        for (Stage stage : Stage.values()) {
            facts.add(minutes(plan, stage));
        }
        add("shake_at_minutes", plan.shakeAtMinutes(), Basis.SHAKING);
        add("heat_removed_kj", plan.heatRemovedKJ(), Basis.HEAT);
        if (plan.freeze().cold() instanceof Cold.Bath) {
            add("least_ice_g", plan.leastBath().iceG(), Basis.BATH);
            add("least_salt_g", plan.leastBath().saltG(), Basis.BATH);
        }
        add("remarks", plan.comments(), Basis.TIME);
        return this;
    }

    private Fact minutes(FreezePlan plan, Stage stage) {
        FreezePlan.MinuteRange range = plan.rangeMinutes(stage);
        double likely = plan.minutesTo(stage);
        String key = "minutes_to_" + stage.name().toLowerCase(Locale.ROOT);
        return fact(key, likely, Basis.TIME)
                .said(
                        plan.reaches(stage) ? "stage" : "stage-never",
                        stage.phrase(),
                        time(likely),
                        time(range.least()),
                        time(range.most()))
                .between(key + "_least", range.least(), key + "_most", range.most());
    }

    static Phrase time(double minutes) {
        if (!Double.isFinite(minutes)) {
            return Fact.words("never");
        }
        return minutes < HOURS_FROM_MINUTES
                ? Fact.words("minutes", minutes)
                : Fact.words("hours", minutes / 60);
    }

    ReportFacts stored(Optional<StorageConditions> conditions) {
        group = "stored";
        conditions.ifPresent(
                stored -> {
                    add("days", stored.days(), Basis.RECIPE);
                    add("swing_c", stored.swingC(), Basis.RECIPE);
                });
        conditions
                .flatMap(StorageConditions::warmed)
                .ifPresent(
                        warm -> {
                            add("warmed_to_c", warm.temperatureC(), Basis.RECIPE);
                            add("warmed_hours", warm.hours(), Basis.RECIPE);
                        });
        return this;
    }

    ReportFacts crystals(Optional<CrystalsInStorage> all, Style.Eaten eaten) {
        group = "crystals";
        if (all.isEmpty()) {
            facts.add(
                    fact("verdict", Phrase.of("batch", "fact.no-crystals.json"), Basis.CRYSTALS)
                            .said("no-crystals"));
            return this;
        }
        CrystalsInStorage crystals = all.get();
        Band drawn = crystal("drawn", crystals.drawn(), crystals.drawn().meanUm());
        boolean atOnce = eaten == Style.Eaten.AT_ONCE;
        if (!atOnce) {
            Band night = crystal("after_a_night", crystals.night(), drawn);
            crystals.fortnight().ifPresent(one -> crystal("after_two_weeks", one, night));
        }
        crystals.kept().ifPresent(kept -> crystal("as_kept", kept, drawn));
        crystals.steady().ifPresent(steady -> crystal("kept_steady", steady, drawn));
        add("smooth_below_micrometres", (int) Texture.SMOOTH.upToUm(), Basis.SMOOTH);
        CrystalStory tasted = atOnce ? crystals.drawn() : crystals.tasted();
        Band tastedUm = crystal("tasted", tasted, drawn);
        facts.add(
                fact("verdict", tasted.judgement(tastedUm), Basis.SMOOTH)
                        .said(
                                atOnce
                                        ? "tasted-drawn"
                                        : crystals.kept().isPresent() ? "tasted-kept" : "tasted",
                                size(tastedUm)));
        return this;
    }

    /** A size, which storage never makes smaller than it was before. */
    private Band crystal(String when, CrystalStory story, Band before) {
        Band um = BatchKitchen.grown(before, story.meanUm());
        facts.add(
                fact(when + "_mean_micrometres", um.middle(), Basis.CRYSTALS)
                        .valid(Storage.COLDEST_C, 0, "°C")
                        .said(
                                "crystals-" + when.replace('_', '-'),
                                size(um),
                                story.judgement(um),
                                CrystalsInStorage.USUAL.swingC())
                        .between(
                                when + "_low_micrometres",
                                um.low(),
                                when + "_high_micrometres",
                                um.high()));
        return um;
    }

    /** The mean size of crystals, µm, with its band, in words. */
    static Phrase size(Band um) {
        return Fact.words("size", um.middle(), um.low(), um.high());
    }
}
